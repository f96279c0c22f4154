#!/usr/bin/env bash
# Installs what is missing, builds everything, and runs every test; the last line is ctest's.
#
#   bash tests/run.sh                  all tests, those of core under the sanitizers
#   bash tests/run.sh --quick          all tests, without the sanitizers
#   bash tests/run.sh --sanitize       all tests, built with AddressSanitizer and UndefinedBehaviorSanitizer
#   bash tests/run.sh --tidy[=COMMIT]  no tests: clang-tidy and clang-format on what changed since COMMIT; without
#                                      COMMIT since this branch left main, on main since the last commit but one
#
# Any other argument goes to ctest: bash tests/run.sh --quick -R Decimal
# Exit status: 0 all passed, 1 something failed or did not build, 2 packages could not be installed.
set -euo pipefail
# shellcheck source=app/prepare.sh
source "$(dirname -- "$(readlink -f -- "${BASH_SOURCE[0]}")")/../app/prepare.sh"

mode=all
tidy_from=
ctest_arguments=()
while (($# > 0)); do
    case "$1" in
        --quick) mode=quick ;;
        --sanitize) mode=sanitize ;;
        --tidy) mode=tidy ;;
        --tidy=*) mode=tidy tidy_from="${1#--tidy=}" ;;
        -h | --help)
            sed -n '2,/^set /{/^# \{0,1\}/{s///;p}}' "${BASH_SOURCE[0]}"
            exit 0
            ;;
        *) ctest_arguments+=("$1") ;;
    esac
    shift
done

# Tests draw without a screen, read no locale and no time zone of the machine, and print in English.
export QT_QPA_PLATFORM=offscreen LC_ALL=C.UTF-8 TZ=UTC LANGUAGE=
export ASAN_OPTIONS="${ASAN_OPTIONS:-detect_leaks=1:strict_string_checks=1}"
export UBSAN_OPTIONS="${UBSAN_OPTIONS:-print_stacktrace=1}"

run_ctest() {
    ctest --test-dir "$1" --output-on-failure --parallel "$(nproc)" "${ctest_arguments[@]}" || exit 1
}

# The programs that test core, with the sanitizers in them.
build_core_sanitized() {
    ww_configure "$ww_root/build-asan" WW_TESTS=ON WW_SANITIZE=ON
    ww_build "$ww_root/build-asan" core_programs || exit 1
}

# The C++ files that differ from commit $1, in the working tree too.
changed_files() {
    git -C "$ww_root" diff --name-only --diff-filter=d "$1" -- '*.cpp' '*.h'
}

# Each .cpp among the named files, and the .cpp beside each header: what clang-tidy can be run on.
sources_of() {
    local file
    for file in "$@"; do
        file="$ww_root/${file%.*}.cpp"
        [[ ! -f $file ]] || printf '%s\n' "$file"
    done | sort -u
}

tidy() {
    ww_install_missing "${ww_packages_to_test[@]}" "${ww_packages_to_tidy[@]}"
    ww_configure "$ww_root/build" WW_TESTS=ON
    # Files that the build makes (moc, translations) must be there.
    ww_build "$ww_root/build" || exit 1
    local from="$tidy_from"
    if [[ -z $from ]]; then
        from="$(git -C "$ww_root" merge-base HEAD main 2>/dev/null || true)"
        # On main itself: what the last commit and the working tree changed.
        [[ -n $from && $from != "$(git -C "$ww_root" rev-parse HEAD)" ]] || from=HEAD~1
    fi
    local files sources
    mapfile -t files < <(changed_files "$from")
    if ((${#files[@]} == 0)); then
        ww_say "no C++ file has changed since $from"
        return 0
    fi
    (cd "$ww_root" && clang-format --dry-run --Werror "${files[@]}") || exit 1
    mapfile -t sources < <(sources_of "${files[@]}")
    ww_say "clang-tidy on ${#sources[@]} files changed since $from"
    # Standard error only counts the warnings of other people's headers.
    printf '%s\0' "${sources[@]}" |
        xargs -0 -r -n 1 -P "$(nproc)" clang-tidy -p "$ww_root/build" --quiet --warnings-as-errors='*' 2>/dev/null || exit 1
    ww_say "clang-format and clang-tidy have nothing to say"
}

case "$mode" in
    tidy)
        tidy
        exit 0
        ;;
    sanitize)
        ww_install_missing "${ww_packages_to_test[@]}"
        ww_configure "$ww_root/build-asan" WW_TESTS=ON WW_SANITIZE=ON
        ww_build "$ww_root/build-asan" || exit 1
        run_ctest "$ww_root/build-asan"
        ;;
    *)
        ww_install_missing "${ww_packages_to_test[@]}"
        sanitized=OFF
        if [[ $mode == all ]]; then
            build_core_sanitized
            sanitized=ON
        fi
        ww_configure "$ww_root/build" WW_TESTS=ON WW_CORE_TESTS_SANITIZED=$sanitized
        ww_build "$ww_root/build" || exit 1
        run_ctest "$ww_root/build"
        ;;
esac
