# shellcheck shell=bash
# A screen of its own for a test that drives the program with keys: an X server without a monitor, a window
# manager, a home folder of nobody. Sourced by the tests beside it; ends what it started, by its number.
set -euo pipefail

program="$1"
screen_size="${screen_size:-1366x768}"
work="$(mktemp -d)"
export HOME="$work" XDG_RUNTIME_DIR="$work/run" XDG_CONFIG_HOME="$work/config" LC_ALL=C.UTF-8 TZ=UTC
export QT_QPA_PLATFORM=xcb QT_ACCESSIBILITY=0
unset DISPLAY WAYLAND_DISPLAY
mkdir -m 700 "$XDG_RUNTIME_DIR"
started=()

leave() {
    local number
    for number in "${started[@]}"; do
        kill "$number" 2>/dev/null || true
    done
    wait 2>/dev/null || true
    rm -rf "$work"
}
trap leave EXIT

fail() {
    printf '%s\n' "$*" >&2
    exit 1
}

# Takes a program that has ended out of those that are ended at the end: its number may be another's by then.
forget() {
    local number left=()
    for number in "${started[@]}"; do
        [[ $number == "$1" ]] || left+=("$number")
    done
    started=("${left[@]}")
}

start_screen() {
    mkfifo "$work/display"
    Xvfb -displayfd 3 -screen 0 "${screen_size}x24" -nolisten tcp 3>"$work/display" 2>/dev/null &
    started+=($!)
    read -r -t 20 number <"$work/display" || fail "no X server"
    export DISPLAY=":$number"
    openbox >/dev/null 2>&1 &
    started+=($!)
}

# A job of thirty valves without any reading in file $1.
make_job() {
    local tables="$work/tables_in"
    rm -rf "$tables"
    cp -r "$source/sample_projects/clinic_cooling" "$tables"
    local table
    for table in "$tables"/*readings.csv; do
        sed -i '2,$d' "$table"
    done
    "$program" new "$1" --from "$tables" >/dev/null || fail "no job was made"
}

# The pixels of the window, into file $1. Those of a program that is stopped stay on the screen.
picture() { import -window "$window" -depth 8 "rgb:$1"; }

# How many bytes of two pictures differ. A cursor that blinks makes less than $cursor_bytes.
cursor_bytes=300
differing() { { cmp -l "$1" "$2" || true; } | wc -l; }

# Waits until the window stays as it is and, where a picture is given, looks otherwise than there.
come_to_rest() {
    local i same=0
    picture "$work/rest.rgb"
    for ((i = 0; i < 100; ++i)); do
        sleep 0.05
        picture "$work/now.rgb"
        (($(differing "$work/rest.rgb" "$work/now.rgb") < cursor_bytes)) && same=$((same + 1)) || same=0
        if ((same >= 2)) && { [[ -z ${1:-} ]] || (($(differing "$1" "$work/now.rgb") >= cursor_bytes)); }; then
            return
        fi
        mv "$work/now.rgb" "$work/rest.rgb"
    done
    fail "the window does not come to rest"
}

# Presses keys that change what the window shows, and waits until it does.
press() {
    picture "$work/before.rgb"
    xdotool key --delay 20 "$@"
    come_to_rest "$work/before.rgb"
}

# Ends the program from one moment to the next.
kill_program() {
    kill -9 "$pid"
    wait "$pid" 2>/dev/null || true
    forget "$pid"
}

# Waits for the end of the program that was asked to quit.
expect_end() {
    local i
    for ((i = 0; i < 600; ++i)); do
        kill -0 "$pid" 2>/dev/null || break
        sleep 0.1
    done
    ! kill -0 "$pid" 2>/dev/null || fail "the program does not end"
    wait "$pid" || fail "the program did not end well"
    forget "$pid"
}

# Starts the program with the arguments given, filling the screen; its window is $window, its number $pid.
start_program() {
    "$@" >"$work/out" 2>&1 &
    pid=$!
    started+=("$pid")
    local i
    for i in $(seq 200); do
        window="$(xdotool search --onlyvisible --class waterwright 2>/dev/null | head -1 || true)"
        [[ -z $window ]] || break
        sleep 0.1
    done
    [[ -n $window ]] || fail "no window: $(cat "$work/out")"
    xdotool windowactivate --sync "$window"
    come_to_rest
}

# The dp values of the first round of file $1, in the order they were read, on one line.
readings() {
    rm -rf "$work/tables"
    "$program" export "$1" --csv "$work/tables" >/dev/null || fail "no export"
    awk -F, 'NR == 1 { for (i = 1; i <= NF; ++i) if ($i ~ /^dp/) d = i; next }
             $d != "" { printf "%s%s", n++ ? " " : "", $d }' "$work/tables/readings.csv"
}

# Types one reading after the other, each with Enter.
read_valves() {
    local value keys=()
    for value in "$@"; do
        # shellcheck disable=SC2207
        keys+=($(sed 's/./& /g; s/[.]/period/' <<<"$value") Return)
    done
    xdotool key --delay 20 "${keys[@]}"
}

# Expects the job on the screen, alone: no dialog, no second window.
expect_job() {
    local name windows
    name="$(xdotool getwindowname "$window")"
    [[ $name == *"Round 1"* ]] || fail "$1: the window is called '$name'"
    windows="$(xdotool search --onlyvisible --class waterwright | wc -l)"
    ((windows == 1)) || fail "$1: $windows windows instead of one"
}
