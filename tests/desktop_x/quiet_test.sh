#!/usr/bin/env bash
# What the program does while nobody touches it, and whom it talks to: how often it wakes during a rest on the place
# Adjust, its processor time (less than half a second a minute), and no network socket in a whole session.
#
#   quiet_test.sh PROGRAM SOURCE_FOLDER [SECONDS]
seconds="${3:-60}"
source="$2"
source "$source/tests/desktop_x/screen.sh" "$1"
start_screen
"$program" new "$work/job.wwj" --from "$source/sample_projects/clinic_cooling" >/dev/null || fail "no job was made"

start_program "$program" "$work/job.wwj"
xdotool key alt+4
used() { awk '{ print $14 + $15 }' "/proc/$pid/stat"; }
# How often the threads have woken; the blinking cursor takes about six a second.
wakes() { awk '/^voluntary_ctxt_switches/ { n += $2 } END { print n + 0 }' "/proc/$pid"/task/*/status; }
# The same as "thread count" lines, and how much has come to $1 since; a thread may have ended meanwhile.
wakes_by_thread() { awk '/^Pid:/ { p = $2 } /^voluntary_ctxt_switches/ { print p, $2 }' "/proc/$pid"/task/*/status; }
wakes_since() { awk 'NR == FNR { was[$1] = $2; next } { n += $2 - was[$1] } END { print n + 0 }' <(echo "$1") <(wakes_by_thread); }
# Learning what the job's readings teach runs beside the screen and ends by itself.
quiet=0
for _ in $(seq 30); do
    before="$(wakes)"
    sleep 2
    (($(wakes) - before < 40)) && quiet=$((quiet + 1)) || quiet=0
    ((quiet < 2)) || break
done
ticks="$(used)"
woken="$(wakes_by_thread)"
sleep "$seconds"
awk -v t="$(($(used) - ticks))" -v hz="$(getconf CLK_TCK)" -v s="$seconds" \
    'BEGIN { used = t / hz * 60 / s
             printf "idle on Adjust: %.3f s of processor time a minute\n", used; exit used >= 0.5 }' ||
    fail "at rest it takes half a second of processor time a minute or more"
if grep -q '^voluntary_ctxt_switches' "/proc/$pid/status"; then
    woken="$(wakes_since "$woken")"
    echo "idle on Adjust: awake $woken times in $seconds s"
    ((woken < 20 * seconds)) || fail "something does not come to rest"
else
    echo "this system does not count how often a program wakes"
fi
xdotool key ctrl+q
expect_end

# A whole walk under the eyes of strace: a round is opened, every valve read, the round closed, the places looked at. A
# socket of the X server is none of the network.
make_job "$work/walk.wwj"
valves="$(($(wc -l <"$source/sample_projects/clinic_cooling/branches.csv") - 1))"
start_program strace -f -qq -e trace=connect,bind,sendto,socket -o "$work/calls" "$program" "$work/walk.wwj"
pgrep -P "$pid" -x waterwright >/dev/null || fail "the program is not there"
xdotool key alt+3
sleep 1
press ctrl+shift+n
press Return
keys=()
for ((i = 1; i <= valves; ++i)); do
    keys+=(1 $((i % 10)) period 5 Return)
done
xdotool key --delay 30 "${keys[@]}"
sleep 2
for place in 4 5 6 7 3; do
    xdotool key "alt+$place"
    sleep 1
done
xdotool key ctrl+q
expect_end
rm -rf "$work/tables"
"$program" export "$work/walk.wwj" --csv "$work/tables" >/dev/null || fail "no export"
stored="$(($(wc -l <"$work/tables/readings.csv") - 1))"
((stored >= valves)) || fail "the walk was not whole: $stored readings of $valves valves"
if grep -E 'AF_INET' "$work/calls"; then
    fail "a network socket was used"
fi
echo "no network socket was used in a walk of $valves valves"
