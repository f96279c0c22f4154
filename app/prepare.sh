# shellcheck shell=bash disable=SC2034
# What app/run.sh and tests/run.sh share: the Debian packages Waterwright needs, putting the missing ones on the
# machine, and configuring a build folder. Sourced by both; does nothing by itself.

# The one list of packages. With --no-install-recommends each stands for something that CMake asks for by name.
ww_packages_to_build=(
    g++ cmake ninja-build ccache lld pkgconf
    qt6-base-dev qt6-charts-dev libqt6opengl6-dev qt6-svg-dev qt6-tools-dev qt6-tools-dev-tools qt6-l10n-tools
    qt6-translations-l10n
    libsqlite3-dev libssl-dev zlib1g-dev libeigen3-dev libxlsxwriter-dev libzip-dev libexpat1-dev libcli11-dev nlohmann-json3-dev
    fonts-dejavu-core
)
# The tests need these too: the desktop is driven on a screen of its own, report pages are read back, the package
# is made and judged.
ww_packages_to_test=(
    "${ww_packages_to_build[@]}"
    libgtest-dev libgmock-dev libbenchmark-dev
    xvfb xauth xdotool openbox strace imagemagick poppler-utils openssl
    desktop-file-utils appstream shared-mime-info libglib2.0-bin file librsvg2-bin groff-base man-db bash-completion
    dpkg-dev lintian
)
ww_packages_to_tidy=(clang-tidy clang-format git)

ww_root="$(cd -- "$(dirname -- "${BASH_SOURCE[0]}")/.." && pwd -P)"

ww_say() { printf 'waterwright: %s\n' "$*" >&2; }
ww_stop() {
    ww_say "$*"
    exit 2
}

# Prints those of the named packages that are not installed, one a line.
ww_missing_packages() {
    local status package
    local -A installed=()
    while read -r status package; do
        [[ $status == installed ]] && installed[$package]=yes
    done < <(dpkg-query --show --showformat '${db:Status-Status} ${Package}\n' "$@" 2>/dev/null)
    for package in "$@"; do
        [[ -n ${installed[$package]:-} ]] || printf '%s\n' "$package"
    done
}

# Installs those of the named packages that are missing; as root directly, else through sudo. Costs one look at
# the package database where nothing is missing. Stops the script, saying what to do, where it cannot install.
ww_install_missing() {
    if ! command -v dpkg-query >/dev/null; then
        ww_say "this system has no dpkg, so packages are not looked up; the build names what it misses"
        return 0
    fi
    local missing
    mapfile -t missing < <(ww_missing_packages "$@")
    ((${#missing[@]} == 0)) && return 0

    local by_hand="apt-get install --no-install-recommends ${missing[*]}"
    command -v apt-get >/dev/null ||
        ww_stop "these packages are missing and there is no apt-get to install them; install by hand: ${missing[*]}"
    local as_root=()
    if (($(id -u) != 0)); then
        command -v sudo >/dev/null ||
            ww_stop "these packages are missing: ${missing[*]}; there is no sudo here, so run as root: $by_hand"
        as_root=(sudo)
        # Without a terminal nobody can type a password.
        [[ -t 0 ]] || as_root=(sudo -n)
        "${as_root[@]}" true 2>/dev/null ||
            ww_stop "these packages are missing: ${missing[*]}; sudo is refused to $(id -un), so run as root: $by_hand"
    fi
    ww_say "installing ${#missing[@]} missing packages: ${missing[*]}"
    local apt=("${as_root[@]}" env DEBIAN_FRONTEND=noninteractive apt-get -q -o DPkg::Lock::Timeout=120)
    "${apt[@]}" update >&2 ||
        ww_say "the package lists could not be fetched; trying with those that are here"
    "${apt[@]}" install --yes --no-install-recommends "${missing[@]}" >&2 ||
        ww_stop "apt-get could not install the packages; check the network and /etc/apt/sources.list, then run as root: $by_hand"
}

# Configures build folder $1 unless it is configured already for this source folder with all of the cache
# settings NAME=VALUE that follow. Ninja itself configures again when a CMakeLists.txt changes.
ww_configure() {
    local folder="$1"
    shift
    local cache="$folder/CMakeCache.txt"
    local arguments=(-S "$ww_root" -B "$folder" -G Ninja)
    if [[ -f "$folder/build.ninja" ]] && grep -qxF "CMAKE_HOME_DIRECTORY:INTERNAL=$ww_root" "$cache" 2>/dev/null; then
        local setting differs=no
        for setting in "$@"; do
            grep -qxF "${setting%%=*}:BOOL=${setting#*=}" "$cache" || differs=yes
        done
        [[ $differs == no ]] && return 0
    else
        # Half configured, made by another generator, or the source folder was moved: start over.
        arguments+=(--fresh)
    fi
    local setting
    for setting in "$@"; do
        arguments+=("-D${setting%%=*}:BOOL=${setting#*=}")
    done
    cmake "${arguments[@]}" >&2
}

# Builds targets (all without one) of build folder $1; what the build prints goes to standard error.
ww_build() {
    local folder="$1"
    shift
    local arguments=(-C "$folder" -j "$(nproc)")
    ninja "${arguments[@]}" "$@" >&2
}
