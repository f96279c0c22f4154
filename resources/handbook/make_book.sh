#!/usr/bin/env bash
# Makes the handbook as one HTML file and as a PDF in each of its languages, for readers without the program; the
# program itself shows the chapters as they are. Needs pandoc, weasyprint for the PDF, and for broken words in it the
# packages hyphen-CODE; a language without one is not broken.
#
#   bash resources/handbook/make_book.sh FOLDER      writes handbook.html and handbook.pdf to FOLDER, and in each
#                                                    other language handbook_CODE.html and handbook_CODE.pdf
#
# Exit status: 0 all were made; 2 a tool is missing, which is said.
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
work="$(mktemp -d)"
trap 'rm -rf -- "$work"' EXIT
# Words are broken by the rules of the language that the book says it is in.
cat >"$work/style.css" <<'CSS'
@page { size: A4; margin: 20mm 18mm; @bottom-center { content: counter(page); } }
body { font-family: "DejaVu Sans", sans-serif; font-size: 10pt; line-height: 1.45; max-width: 60em; margin: 2em auto;
       padding: 0 1em; color: #10181f; hyphens: auto; hyphenate-limit-chars: 9 4 4; }
h1 { break-before: page; border-bottom: 2px solid #707c85; }
h1, h2 { break-after: avoid; hyphens: manual; }
img { max-width: 100%; border: 1px solid #707c85; }
table { border-collapse: collapse; width: 100%; break-inside: auto; }
tr { break-inside: avoid; }
col { width: auto !important; }
td, th { border: 1px solid #707c85; padding: 0.25em 0.5em; text-align: left; vertical-align: top; }
figcaption { font-size: 90%; color: #414f5a; }
pre { background: #eef2f5; padding: 0.6em; white-space: pre-wrap; }
pre, code, strong { hyphens: manual; }
a { color: #3043bc; }
@media print { body { margin: 0; padding: 0; max-width: none; } }
CSS

# The file of a language, or the English one where the language does not have it.
of_language() {
    if [[ -e $here/$1/$2 ]]; then printf '%s' "$here/$1/$2"; else printf '%s' "$here/$2"; fi
}

# make_book LANGUAGE NAME: writes NAME.html and NAME.pdf.
make_book() {
    local language="$1" name="$2" chapter chapters index
    index="$(of_language "$language" index.md)"
    # The chapters in the order of the contents. One file has one list of anchors: a link to a chapter leads to its
    # title, whose anchor is the name of its file.
    mapfile -t chapters < <(sed -n 's/^- \[[^]]*\](\([a-z_]*\.md\))$/\1/p' "$index")
    mkdir -- "$work/$language"
    for chapter in "${chapters[@]}"; do
        sed -e "1s/\$/ {#${chapter%.md}}/" -e 's/](\([a-z_]*\)\.md)/](#\1)/g' \
            -e 's/](\([a-z_]*\)\.md#\([^)]*\))/](#\2)/g' "$(of_language "$language" "$chapter")" \
            >"$work/$language/$chapter"
        printf '\n' >>"$work/$language/$chapter"
    done
    cd -- "$work/$language"
    pandoc --from markdown-smart --to html5 --standalone --self-contained --toc --toc-depth 2 --css "$work/style.css" \
        --resource-path "$here/$language:$here" --metadata title="$(sed -n '1s/^# *//p' "$index")" \
        --metadata lang="$language" --output "$out/$name.html" "${chapters[@]}"
    weasyprint --quiet "$out/$name.html" "$out/$name.pdf"
}

make_book en handbook
for index in "$here"/*/index.md; do
    [[ -e $index ]] || continue
    language="$(basename -- "$(dirname -- "$index")")"
    make_book "$language" "handbook_$language"
done
