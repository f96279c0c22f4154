#!/usr/bin/env bash
# Runs the tests of a full disk on one: four megabytes in memory, seen by them alone. Exit status 77 where the system
# lets nobody mount it.
#
#   full_disk_test.sh UI_TESTS FAULTS_TESTS
set -euo pipefail
own=(unshare --mount)
((EUID == 0)) || own=(unshare --user --map-root-user --mount)
disk="$(mktemp -d)"
trap 'rmdir "$disk"' EXIT
mounted='mount -t tmpfs -o size=4m none "$0" && exec "$@"'
"${own[@]}" bash -c "$mounted" "$disk" true 2>/dev/null || {
    echo "no disk can be mounted here"
    exit 77
}
WW_OTHER_DISK="$(dirname "$disk")" WW_SMALL_DISK="$disk" TMPDIR="$disk" "${own[@]}" bash -c "$mounted" "$disk" \
    bash -c '"$0" --gtest_filter="FullDisk.*" && "$1" --gtest_filter="Disk.full*:*ullDisk*:*FullDisk*"' "$1" "$2"
