#!/usr/bin/env bash
# What the program does while nobody touches it, and whom it talks to: how often it wakes during a rest on the place
# Adjust, its processor time (less than half a second a minute), and no network socket in a whole session.
#
#   quiet_test.sh PROGRAM SOURCE_FOLDER [SECONDS]
seconds="${3:-20}"
source="$2"
source "$source/tests/desktop_x/screen.sh" "$1"
start_screen
"$program" new "$work/job.wwj" --from "$source/sample_projects/clinic_cooling" >/dev/null || fail "no job was made"

start_program "$program" "$work/job.wwj"
xdotool key alt+4
used() { awk '{ print $14 + $15 }' "/proc/$pid/stat"; }
# How often the threads have woken; the blinking cursor takes about six a second.
wakes() { awk '/^voluntary_ctxt_switches/ { n += $2 } END { print n + 0 }' "/proc/$pid"/task/*/status; }
# Learning what the job's readings teach runs beside the screen and ends by itself.
quiet=0
for _ in $(seq 30); do
    before="$(wakes)"
    sleep 2
    (($(wakes) - before < 40)) && quiet=$((quiet + 1)) || quiet=0
    ((quiet < 2)) || break
done
ticks="$(used)"
woken="$(wakes)"
sleep "$seconds"
awk -v t="$(($(used) - ticks))" -v hz="$(getconf CLK_TCK)" -v s="$seconds" \
    'BEGIN { used = t / hz * 60 / s
             printf "idle on Adjust: %.3f s of processor time a minute\n", used; exit used >= 0.5 }' ||
    fail "at rest it takes half a second of processor time a minute or more"
if grep -q '^voluntary_ctxt_switches' "/proc/$pid/status"; then
    woken="$(($(wakes) - woken))"
    echo "idle on Adjust: awake $woken times in $seconds s"
    ((woken < 20 * seconds)) || fail "something does not come to rest"
else
    echo "this system does not count how often a program wakes"
fi
xdotool key ctrl+q
wait "$pid" || fail "the program did not end well"

# A socket of the X server is none of the network.
start_program strace -f -qq -e trace=connect,bind,sendto -o "$work/calls" "$program" "$work/job.wwj"
pgrep -P "$pid" -x waterwright >/dev/null || fail "the program is not there"
xdotool key alt+4
sleep 1
xdotool key alt+3
sleep 1
xdotool key ctrl+shift+n
sleep 1
xdotool key Return
sleep 1
xdotool key 1 2 Return 1 3 Return
sleep 1
xdotool key ctrl+q
wait "$pid" || fail "the program did not end well"
if grep -E 'sa_family=AF_INET' "$work/calls"; then
    fail "a network socket was used"
fi
echo "no network socket was used"
