#!/usr/bin/env bash
# Installs what is missing, builds Waterwright, and opens the sample job in the desktop. Without a display it does
# the main job there and then: makes the workbook, judges it, and writes the balance report.
#
#   bash app/run.sh                        the sample job
#   bash app/run.sh ARGUMENT...            waterwright ARGUMENT..., for example: bash app/run.sh check job.wwj
#
# Exit status: that of the program; without a display 0 when verdict and report were made, whatever the verdict.
set -euo pipefail
# shellcheck source=app/prepare.sh
source "$(dirname -- "$(readlink -f -- "${BASH_SOURCE[0]}")")/prepare.sh"

build="$ww_root/build"
program="$build/app/waterwright"
samples="$build/samples"
# The small job to begin with; its folder stands in sample_projects/.
first_sample=library_heating

# Whether an X display named in DISPLAY answers, as far as that can be told without an X program.
x_display_answers() {
    local host="${DISPLAY%:*}" number="${DISPLAY##*:}"
    number="${number%%.*}"
    [[ $number =~ ^[0-9]+$ ]] || return 1
    if [[ -z $host || $host == unix ]]; then
        [[ -S /tmp/.X11-unix/X$number ]] || grep -qs "@/tmp/.X11-unix/X$number\$" /proc/net/unix
    else
        timeout 3 bash -c ": <>/dev/tcp/$host/$((6000 + number))" 2>/dev/null
    fi
}

wayland_display_answers() {
    [[ -S $WAYLAND_DISPLAY || -S ${XDG_RUNTIME_DIR:-/run/user/$(id -u)}/$WAYLAND_DISPLAY ]]
}

has_display() {
    { [[ -n ${DISPLAY:-} ]] && x_display_answers; } || { [[ -n ${WAYLAND_DISPLAY:-} ]] && wayland_display_answers; }
}

# Makes the workbook of every sample folder that has none yet. One that is there is kept: somebody may have worked
# in it.
make_samples() {
    local folder workbook
    mkdir -p -- "$samples"
    for folder in "$ww_root"/sample_projects/*/; do
        workbook="$samples/$(basename -- "$folder").wwj"
        [[ -f $workbook ]] || "$program" new "$workbook" --from "$folder" >&2 ||
            ww_stop "no workbook could be made from $folder"
    done
}

# The verdict on the terminal and the report on disk, for the sample workbook.
judge_and_report() {
    local workbook="$1" report="${1%.wwj}.pdf" status=0
    printf 'Workbook: %s\n\n' "$workbook"
    "$program" check "$workbook" || status=$?
    # 1 is a verdict too: judged and not accepted.
    ((status <= 1)) || ww_stop "the sample could not be judged; to have it made afresh, remove $workbook"
    "$program" report "$workbook" --out "$report" || ww_stop "no report could be written to $report"
    printf '\nBalance report: %s\n' "$report"
}

packages=("${ww_packages_to_build[@]}")
# A desktop that speaks nothing but Wayland needs Qt's plugin for it.
[[ -n ${WAYLAND_DISPLAY:-} && -z ${DISPLAY:-} ]] && packages+=(qt6-wayland)
ww_install_missing "${packages[@]}"
ww_configure "$build"
ww_build "$build" waterwright

if (($# > 0)); then
    if [[ $1 == *.wwj ]] && ! has_display; then
        ww_stop "there is no display to open $1 on; to judge it here, run: bash app/run.sh check $1"
    fi
    exec "$program" "$@"
fi

make_samples
workbook="$samples/$first_sample.wwj"
if has_display; then
    exec "$program" "$workbook"
fi
ww_say "there is no display, so the sample job is judged here instead of opened in the desktop"
judge_and_report "$workbook"
