#!/bin/sh
# clang-tidy with .clang-tidy over sources: those named, else those that differ from BASE (default: the commit before this
# one, with what is not committed), or all with "all".
#   tidy.sh BUILD_DIR [all | FILE ..]        BASE=main tidy.sh BUILD_DIR
set -eu
cd "$(dirname "$0")/../.."
build=${1:?BUILD_DIR}; shift
program=$(command -v clang-tidy-14 || command -v clang-tidy) || { echo "there is no clang-tidy: install the Debian package clang-tidy-14" >&2; exit 1; }
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
# The compiler's own warnings are those of GCC: clang knows some of them by no name.
cmake -DCMAKE_EXPORT_COMPILE_COMMANDS=ON "$build" >/dev/null
sed 's/ -Wduplicated-cond//g; s/ -Wlogical-op//g; s/ -Wno-restrict//g' "$build/compile_commands.json" >"$scratch/compile_commands.json"
case "${1:-changed}" in
    all) find src -name '*.cpp' | sort ;;
    changed) git diff --name-only --diff-filter=d "${BASE:-HEAD~1}" -- 'src/*.cpp' ;;
    *) printf '%s\n' "$@" ;;
esac >"$scratch/files"
count=$(wc -l <"$scratch/files")
[ "$count" -gt 0 ] || { echo "no source has changed"; exit 0; }
xargs -P 2 -n 1 "$program" --quiet -p "$scratch" <"$scratch/files" 2>"$scratch/counts" || { cat "$scratch/counts" >&2; exit 1; }
echo "$count sources are tidy"
