#!/usr/bin/env bash
# Kills the program in the middle of a round, twice running: what was read is back each time, with and without a file
# argument and without a dialog. What was typed and not entered is offered in its cell and is no reading until Enter. What
# was closed in order is not opened by itself.
#
#   killed_test.sh PROGRAM SOURCE_FOLDER
source="$2"
source "$source/tests/desktop_x/screen.sh" "$1"
start_screen

# Kills twice; starts again with the arguments that follow the name $1 of the file. Key $2 answers the value that was
# typed and not entered when the second kill came; $3 is that value where it is to be stored.
kill_twice() {
    local file="$1" answer="$2" entered="$3"
    shift 3
    make_job "$file"
    start_program "$program" "$file"
    press ctrl+shift+n
    press Return
    read_valves 11.1 12.2 13.3
    come_to_rest
    kill_program
    start_program "$program" "$@"
    expect_job "after the first kill"
    # The cells of the places take the keys where the walk stopped.
    xdotool key alt+3
    come_to_rest
    read_valves 14.4 15.5 16.6
    xdotool key --delay 20 1 7 period 7
    # The desk keeps what is typed for longer than a second.
    sleep 3
    kill_program
    start_program "$program" "$@"
    expect_job "after the second kill"
    xdotool key alt+3
    come_to_rest
    press "$answer"
    xdotool key ctrl+q
    expect_end
    [[ $(readings "$file") == "11.1 12.2 13.3 14.4 15.5 16.6${entered:+ $entered}" ]] || fail "stored: $(readings "$file")"
}

kill_twice "$work/named.wwj" Escape "" "$work/named.wwj"
echo "with a file argument: all six readings are there, and the text that was given up is not"
kill_twice "$work/last.wwj" Return 17.7
echo "without a file argument: all six readings are there, and the one that was entered after the kill"

start_program "$program"
name="$(xdotool getwindowname "$window")"
[[ $name != *Round* ]] || fail "a job that was closed in order was opened: '$name'"
xdotool key ctrl+q
expect_end
