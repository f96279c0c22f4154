#!/usr/bin/env bash
# Takes the handbook's pictures from the real program: the practice job and both sample jobs are walked through with
# the keys that the handbook names. Needs the build, and xvfb, xdotool, openbox and imagemagick.
#
#   bash resources/handbook/make_screenshots.sh [PROGRAM [LANGUAGE ...]]     by default build/app/waterwright and all
#                                                                            languages of the handbook
#
# The English ones go to pictures/ beside this file, those of another language to its folder.
set -euo pipefail
here="$(dirname -- "$(readlink -f -- "${BASH_SOURCE[0]}")")"
root="$(cd -- "$here/../.." && pwd -P)"
program="$(readlink -f -- "${1:-$root/build/app/waterwright}")"
languages=("${@:2}")
[[ ${#languages[@]} -gt 0 ]] || languages=(en de es fr)

# A desk of its own: screen, home and settings.
home="$(mktemp -d)"
unset QT_QPA_PLATFORM WAYLAND_DISPLAY
unset LC_ALL LANGUAGE
export HOME="$home" XDG_CONFIG_HOME="$home" XDG_RUNTIME_DIR="$home" USER="R. Hale" LANG=C.UTF-8 TZ=UTC
number=90
while [[ -e /tmp/.X11-unix/X$number ]]; do number=$((number + 1)); done
export DISPLAY=":$number"
Xvfb "$DISPLAY" -screen 0 1366x768x24 >/dev/null 2>&1 &
screen=$!
desk=
trap '[[ -z $desk ]] || kill "$desk" 2>/dev/null || true; kill "$screen"; rm -rf -- "$home"' EXIT
until xdotool getdisplaygeometry >/dev/null 2>&1; do sleep 0.1; done
openbox >/dev/null 2>&1 &
sleep 0.5

keys() {
    xdotool key --delay 80 "$@"
    sleep 0.3
}
text() {
    xdotool type --delay 40 -- "$1"
    sleep 0.3
}
# Keys whose answer is learned beside the screen.
learned() {
    keys "$@"
    sleep 1.5
}
# Presses one key so many times.
times() {
    local i
    for ((i = 0; i < $1; ++i)); do keys "$2"; done
}
# The window in front, without its frame, in as few colors as text needs.
picture() {
    import -window "$(xdotool getactivewindow)" png:- |
        convert png:- +dither -colors 48 -strip -define png:compression-level=9 "$out/$1.png"
    printf '%s\n' "$1" >&2
}
open_desk() {
    (cd -- "$home" && exec "$program" "$@") >/dev/null 2>&1 &
    desk=$!
    xdotool search --sync --onlyvisible --pid "$desk" --name . >/dev/null
    sleep 1.5
    xdotool windowsize --sync "$(xdotool getactivewindow)" 1240 690
    sleep 0.5
}
close_desk() {
    kill "$desk"
    wait "$desk" 2>/dev/null || true
}

practice_job() {
    open_desk
    keys ctrl+shift+p
    text "First steps"
    keys Tab Tab ctrl+a
    text 7
    picture practice_new
    keys Return
    sleep 0.5
    keys Return
    sleep 0.5
    keys ctrl+shift+n
    keys Return
    times 15 ctrl+l
    learned ctrl+alt+l
    picture practice_survey
    keys ctrl+shift+w Return
    learned alt+4
    picture practice_adjust
    local valve
    for valve in {1..15}; do
        keys ctrl+shift+t
        learned ctrl+l
        [[ $valve -ne 1 ]] || picture practice_hold
        learned ctrl+Return
    done
    keys alt+3
    keys ctrl+g
    picture practice_convergence
    keys ctrl+g
    local open
    for open in {1..4}; do
        keys ctrl+shift+Down
        keys ctrl+l
    done
    keys ctrl+shift+w Return
    keys ctrl+shift+n
    keys shift+Tab shift+Tab shift+Tab shift+Tab End Up
    picture practice_round
    keys Tab Tab Tab Tab Return
    times 15 ctrl+l
    learned ctrl+alt+l
    keys ctrl+shift+w Return
    picture practice_final
    keys ctrl+shift+u
    sleep 1
    picture practice_truth
    close_desk
}

library_job() {
    "$program" new "$home/library.wwj" --from "$root/sample_projects/library_heating" >/dev/null
    open_desk library.wwj
    learned alt+3
    picture library_walk
    keys ctrl+g
    sleep 0.5
    picture library_convergence
    keys ctrl+g
    keys alt+1
    picture library_job
    learned alt+5
    sleep 2
    picture library_curves
    learned ctrl+alt+4
    picture library_decision
    keys alt+6
    sleep 0.5
    picture library_review
    keys alt+7
    sleep 2
    picture library_report
    close_desk
}

clinic_job() {
    "$program" new "$home/clinic.wwj" --from "$root/sample_projects/clinic_cooling" >/dev/null
    open_desk clinic.wwj
    learned alt+2
    picture clinic_system
    learned alt+3
    picture clinic_walk
    learned alt+4
    picture clinic_adjust
    keys alt+3
    keys ctrl+alt+h
    sleep 1
    picture handbook
    close_desk
}

for language in "${languages[@]}"; do
    out="$here/pictures"
    [[ $language == en ]] || out="$here/$language/pictures"
    mkdir -p -- "$out"
    rm -f -- "$out"/*.png
    rm -rf -- "${home:?}"/*
    export LC_MESSAGES="${language}_${language^^}.UTF-8"
    practice_job
    library_job
    clinic_job
done
