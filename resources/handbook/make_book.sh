#!/usr/bin/env bash
# Makes the handbook as one HTML file and as a PDF, for readers without the program; the program itself shows the
# chapters as they are. Needs pandoc, and weasyprint for the PDF.
#
#   bash resources/handbook/make_book.sh FOLDER      writes FOLDER/handbook.html and FOLDER/handbook.pdf
#
# Exit status: 0 both were made; 2 a tool is missing, which is said.
set -euo pipefail
here="$(dirname -- "$(readlink -f -- "${BASH_SOURCE[0]}")")"
out="${1:?give the folder to write to}"
for tool in pandoc weasyprint; do
    command -v "$tool" >/dev/null || {
        printf 'there is no %s on this machine; install the package %s\n' "$tool" "$tool" >&2
        exit 2
    }
done
mkdir -p -- "$out"
out="$(cd -- "$out" && pwd -P)"

# The chapters in the order of the contents. One file has one list of anchors: a link to a chapter leads to its title,
# whose anchor is the name of its file.
mapfile -t chapters < <(sed -n 's/^- \[[^]]*\](\([a-z_]*\.md\))$/\1/p' "$here/index.md")
work="$(mktemp -d)"
trap 'rm -rf -- "$work"' EXIT
for chapter in "${chapters[@]}"; do
    sed -e "1s/\$/ {#${chapter%.md}}/" -e 's/](\([a-z_]*\)\.md)/](#\1)/g' \
        -e 's/](\([a-z_]*\)\.md#\([^)]*\))/](#\2)/g' "$here/$chapter" >"$work/$chapter"
    printf '\n' >>"$work/$chapter"
done
cat >"$work/style.css" <<'CSS'
@page { size: A4; margin: 20mm 18mm; @bottom-center { content: counter(page); } }
body { font-family: "DejaVu Sans", sans-serif; font-size: 10pt; line-height: 1.45; max-width: 60em; margin: 2em auto;
       padding: 0 1em; color: #10181f; }
h1 { break-before: page; border-bottom: 2px solid #707c85; }
h1, h2 { break-after: avoid; }
img { max-width: 100%; border: 1px solid #707c85; }
table { border-collapse: collapse; width: 100%; break-inside: auto; }
td, th { border: 1px solid #707c85; padding: 0.25em 0.5em; text-align: left; vertical-align: top; }
figcaption { font-size: 90%; color: #414f5a; }
pre { background: #eef2f5; padding: 0.6em; white-space: pre-wrap; }
a { color: #3043bc; }
@media print { body { margin: 0; padding: 0; max-width: none; } }
CSS
cd -- "$work"
pandoc --from markdown-smart --to html5 --standalone --self-contained --toc --toc-depth 2 --css style.css \
    --resource-path "$here" --metadata title="Waterwright handbook" --metadata lang=en \
    --output "$out/handbook.html" "${chapters[@]}"
weasyprint --quiet "$out/handbook.html" "$out/handbook.pdf"
