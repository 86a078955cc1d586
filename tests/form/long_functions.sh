#!/bin/sh
# No function is longer than 60 lines, from its name to its closing brace.
#   long_functions.sh SOURCE_DIR
set -eu
here=$(cd "$(dirname "$0")" && pwd)
cd "$1"
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
find src include tests bench profiles -name '*.cpp' -o -name '*.hpp' | sort >"$scratch/files"
[ -s "$scratch/files" ] || { echo "no source file was found" >&2; exit 1; }
xargs awk -f "$here/long_functions.awk" <"$scratch/files" >"$scratch/found"
[ ! -s "$scratch/found" ] && exit 0
awk -F'\t' '{ print "longer than 60 lines: " $1 " " $3 }' "$scratch/found" | sort -u
exit 1
