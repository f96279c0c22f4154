#!/usr/bin/env bash
# Types a whole round into the program on a screen of its own: first as a burst without any pause, then on the
# numeric pad, then on the one-valve card of a small window. Digits and Enter alone; no mouse.
#
#   walk_keys_test.sh PROGRAM SOURCE_FOLDER
source="$2"
source "$source/tests/desktop_x/screen.sh" "$1"
start_screen

# The readings of the last round of file $1, as "tag dp" lines.
last_round() {
    rm -rf "$work/tables"
    "$program" export "$1" --csv "$work/tables" >/dev/null || fail "no export"
    awk -F, 'NR == 1 { for (i = 1; i <= NF; ++i) { if ($i ~ /^tag/) t = i; if ($i ~ /^dp/) d = i; if ($i ~ /^round/) r = i } next }
             $d != "" { if ($r > last) { last = $r; n = 0 } if ($r == last) line[++n] = $t " " $d }
             END { for (i = 1; i <= n; ++i) print line[i] }' "$work/tables/readings.csv"
}

# Reads a round with keys of the prefix $1 ("" or "KP_") in a window of size $2, expects every value stored.
walk() {
    local prefix="$1" size="$2" file="$work/walk$1$2.wwj"
    make_job "$file"
    local valves
    valves="$(($(wc -l <"$source/sample_projects/clinic_cooling/branches.csv") - 1))"
    start_program "$program" "$file"
    # shellcheck disable=SC2086
    [[ -z $size ]] || xdotool windowsize --sync "$window" ${size/x/ }
    come_to_rest
    press ctrl+shift+n
    press Return
    local keys=() expected=() i digit
    for ((i = 1; i <= valves; ++i)); do
        # Two digits, point, one digit.
        local value="$((10 + i)).$((i % 10))"
        expected+=("$value")
        for digit in $(sed 's/./& /g' <<<"$value"); do
            case "$digit" in
                .) keys+=("$([[ -n $prefix ]] && echo KP_Decimal || echo period)") ;;
                *) keys+=("$prefix$digit") ;;
            esac
        done
        keys+=("$([[ -n $prefix ]] && echo KP_Enter || echo Return)")
    done
    xdotool key --delay 0 "${keys[@]}"
    xdotool key ctrl+q
    expect_end
    local stored
    stored="$(last_round "$file" | awk '{ print $2 }')"
    [[ $stored == "$(printf '%s\n' "${expected[@]}")" ]] ||
        fail "keys '$prefix' in a window of '$size' stored:"$'\n'"$stored"
    echo "keys '$prefix', window '${size:-whole screen}': $valves readings, ${#keys[@]} keys, $valves beside the digits"
}

walk "" ""
walk KP_ ""
walk "" 683x354
