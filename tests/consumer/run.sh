#!/bin/sh
# Installs the built tree into a scratch prefix, then configures, builds and runs a project that finds it.
#   run.sh BUILD_DIR SOURCE_DIR
set -eu
prefix=$(mktemp -d)
trap 'rm -rf "$prefix"' EXIT
cmake --install "$1" --prefix "$prefix/usr" >"$prefix/install.log"
for file in bin/vowelway share/vowelway/profiles/tenor.yaml include/vowelway/core/pitch.hpp; do
    test -e "$prefix/usr/$file" || { echo "not installed: $file" >&2; exit 1; }
done
test -n "$(find "$prefix/usr" -name formats.md)" || { echo "the docs are not installed" >&2; exit 1; }
# Built with the flags of the tree it was installed from, sanitizers included.
flags=""
grep -q '^VOWELWAY_SANITIZE:BOOL=ON' "$1/CMakeCache.txt" && flags="-fsanitize=address,undefined"
cmake -S "$2/tests/consumer" -B "$prefix/build" -DCMAKE_PREFIX_PATH="$prefix/usr" -DCMAKE_CXX_FLAGS="$flags" >"$prefix/configure.log"
cmake --build "$prefix/build" >"$prefix/build.log" || { cat "$prefix/build.log" >&2; exit 1; }
said=$("$prefix/build/consumer")
test "$said" = "2fo = fR1 at F4 +4 c" || { echo "the consumer said: $said" >&2; exit 1; }
"$prefix/usr/bin/vowelway" --version
