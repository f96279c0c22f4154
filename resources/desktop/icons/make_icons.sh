#!/usr/bin/env bash
# Draws the icons of the sizes that desktops look for from their SVG files; run it after changing one of them.
# Needs rsvg-convert (librsvg2-bin).
#
#   bash resources/desktop/icons/make_icons.sh [FOLDER]     writes FOLDER/SIZE/NAME.png; without one, beside this file
set -euo pipefail
here="$(dirname -- "$(readlink -f -- "${BASH_SOURCE[0]}")")"
out="${1:-$here}"
for size in 16 22 24 32 48 64 128 256; do
    mkdir -p -- "$out/$size"
    for name in org.waterwright.Waterwright application-x-waterwright-workbook; do
        rsvg-convert --width "$size" --height "$size" --output "$out/$size/$name.png" "$here/$name.svg"
    done
done
