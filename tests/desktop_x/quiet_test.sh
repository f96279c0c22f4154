#!/usr/bin/env bash
# What the program does while nobody touches it, and whom it talks to: processor time of a rest on the place
# Adjust, and no network socket in the whole time.
#
#   quiet_test.sh PROGRAM SOURCE_FOLDER [SECONDS]
seconds="${3:-20}"
source="$2"
source "$source/tests/desktop_x/screen.sh" "$1"
start_screen
"$program" new "$work/job.wwj" --from "$source/sample_projects/clinic_cooling" >/dev/null || fail "no job was made"
# A socket of the X server is none of the network.
start_program strace -f -qq -e trace=connect,bind,sendto -o "$work/calls" "$program" "$work/job.wwj"
pid="$(pgrep -P "$pid" -x waterwright)" || fail "the program is not there"
xdotool key alt+4
used() { awk '{ print $14 + $15 }' "/proc/$pid/stat"; }
# Learning what the job's readings teach runs beside the screen and ends by itself.
quiet=0
for _ in $(seq 30); do
    before="$(used)"
    sleep 2
    (($(used) - before < 4)) && quiet=$((quiet + 1)) || quiet=0
    ((quiet < 2)) || break
done

before="$(used)"
sleep "$seconds"
after="$(used)"
ticks="$((after - before))"
per_minute="$(awk -v t="$ticks" -v hz="$(getconf CLK_TCK)" -v s="$seconds" 'BEGIN { printf "%.3f", t / hz * 60 / s }')"
echo "idle on Adjust: $per_minute s of processor time a minute"
awk -v used="$per_minute" 'BEGIN { exit !(used < 0.5) }' || fail "that is 0.5 s or more"

xdotool key alt+3
sleep 1
xdotool key ctrl+shift+n
sleep 1
xdotool key Return
sleep 1
xdotool key 1 2 Return 1 3 Return
sleep 1
xdotool key ctrl+q
sleep 2
if grep -E 'sa_family=AF_INET' "$work/calls"; then
    fail "a network socket was used"
fi
echo "no network socket was used"
