#!/bin/sh
# Installs the built tree into a scratch prefix, then configures, builds and runs the projects of strangers who find it.
#   run.sh BUILD_DIR SOURCE_DIR
set -eu
build=$1
here=$2/tests/consumer
prefix=$(mktemp -d)
trap 'rm -rf "$prefix"' EXIT
fail() {
    echo "$1" >&2
    [ -z "${2:-}" ] || cat "$2" >&2
    exit 1
}
cmake --install "$build" --prefix "$prefix/usr" >"$prefix/install.log"
for file in share/vowelway/profiles/tenor.yaml include/vowelway/core/pitch.hpp; do
    test -e "$prefix/usr/$file" || fail "not installed: $file"
done
test -n "$(find "$prefix/usr" -name formats.md)" || fail "the docs are not installed"
# Built with the flags of the tree it was installed from, sanitizers included.
flags=""
grep -q '^VOWELWAY_SANITIZE:[A-Z]*=ON' "$build/CMakeCache.txt" && flags="-fsanitize=address,undefined"
configure() {
    name=$1; shift
    cmake -G Ninja -S "$here/$name" -B "$prefix/$name" -DCMAKE_PREFIX_PATH="$prefix/usr" -DCMAKE_CXX_FLAGS="$flags" "$@" \
        >"$prefix/configure.log" 2>&1 || fail "$name does not configure" "$prefix/configure.log"
}
make() {
    cmake --build "$prefix/$1" >"$prefix/build.log" 2>&1 || fail "$1 does not build" "$prefix/build.log"
}

# Only to compute: no pkg-config file can be found and no package but Boost may be.
blind=""
for package in Eigen3 yaml-cpp pugixml fmt nlohmann_json CLI11 PkgConfig doctest; do
    blind="$blind -DCMAKE_DISABLE_FIND_PACKAGE_$package=ON"
done
mkdir "$prefix/nothing"
PKG_CONFIG_LIBDIR="$prefix/nothing" PKG_CONFIG_PATH=""
export PKG_CONFIG_LIBDIR PKG_CONFIG_PATH
# shellcheck disable=SC2086
configure small $blind
make small
said=$("$prefix/small/consumer")
test "$said" = "2fo = fR1 at F4 +4 c
a tone of 440 Hz shows" || fail "the small consumer said: $said"

# What cannot be had is refused with its reason.
configure refused "-DASKED=plan;glottis" '-DWHY=there is no component "glottis" .installed: core'
if [ -n "$(find "$prefix/usr" -name libvowelway_chart.a)" ]; then
    rm -rf "$prefix/refused"
    configure refused -DASKED=chart '-DWHY=the component chart needs cairo.*which is not found'
    rm -rf "$prefix/refused"
    configure refused -DASKED=io -DCMAKE_DISABLE_FIND_PACKAGE_pugixml=ON '-DWHY=the component io needs pugixml 1.12, which is not found'
fi
unset PKG_CONFIG_LIBDIR PKG_CONFIG_PATH

# Everything, where everything was built.
if [ -e "$prefix/usr/bin/vowelway" ]; then
    configure all
    make all
    said=$("$prefix/all/consumer" "$prefix/range.pdf")
    test "$said" = "o
{" || fail "the whole consumer said: $said"
    test -s "$prefix/range.pdf" || fail "the whole consumer drew nothing"
    "$prefix/usr/bin/vowelway" --version
fi
