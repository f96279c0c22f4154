#!/usr/bin/env bash
# Kills the program within a tenth of a second of Enter, twenty times running, each time a little later: a reading that
# the screen had taken (another valve is in hand) is there when the job is opened again, whole, and so is every one
# before it; nothing is asked.
#
#   killed_at_enter_test.sh PROGRAM SOURCE_FOLDER
runs=20
longest_ms=100
source="$2"
source "$source/tests/desktop_x/screen.sh" "$1"
start_screen

# Whether the pictures of before and after Enter differ by another valve in hand.
is_acknowledged() { (($(differing "$work/typed.rgb" "$work/entered.rgb") > 2000)); }

job="$work/job.wwj"
make_job "$job"
start_program "$program" "$job"
press ctrl+shift+n
press Return
stored=()
acknowledged=0
for ((run = 0; run < runs; ++run)); do
    value="$((20 + run)).5"
    # shellcheck disable=SC2046
    press $(sed 's/./& /g; s/[.]/period/' <<<"$value")
    picture "$work/typed.rgb"
    xdotool key Return
    sleep "$(awk -v r="$run" -v n="$runs" -v ms="$longest_ms" 'BEGIN { print r * ms / (n - 1) / 1000 }')"
    kill -STOP "$pid"
    picture "$work/entered.rgb"
    kill_program
    start_program "$program" "$job"
    expect_job "run $run"
    before="${stored[*]}"
    with="${before:+$before }$value"
    if is_acknowledged; then
        acknowledged=$((acknowledged + 1))
        [[ $(readings "$job") == "$with" ]] || fail "run $run: the screen had taken $value; stored: $(readings "$job")"
        stored+=("$value")
    else
        case "$(readings "$job")" in
            "$before") ;;
            "$with") stored+=("$value") ;;
            *) fail "run $run: killed before $value was taken; stored: $(readings "$job")" ;;
        esac
    fi
    xdotool key alt+3
    # What was typed and not taken stands in its cell.
    xdotool key Escape
    come_to_rest
done
((acknowledged >= 5)) || fail "only $acknowledged of $runs readings were taken within $longest_ms ms"
xdotool key ctrl+q
expect_end
[[ $(readings "$job") == "${stored[*]}" ]] || fail "at the end: $(readings "$job")"
echo "$acknowledged of $runs readings had been taken when the program was killed, and all of them are there"
