#!/bin/sh
# The check of lengths finds functions of 61 lines, free ones and those in a class, and none of 60.
#   long_functions_are_found.sh FOLDER_OF_THE_CHECK
set -eu
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
mkdir -p "$scratch/src" "$scratch/include" "$scratch/tests" "$scratch/bench" "$scratch/profiles"
lines() { i=2; while [ $i -lt "$1" ]; do echo "$2    x = $i;"; i=$((i + 1)); done; }
{
    echo "void short_one(int& x) {"; lines 60 ""; echo "}"
    echo "void long_one(int& x) {"; lines 61 ""; echo "}"
    echo "class Box {"; echo "    void lid(int& x) {"; lines 61 "    "; echo "    }"
    echo "    void base(int& x) {"; lines 60 "    "; echo "    }"; echo "};"
} >"$scratch/src/box.cpp"
found=$(sh "$1/long_functions.sh" "$scratch" || true)
test "$found" = "longer than 60 lines: src/box.cpp lid
longer than 60 lines: src/box.cpp long_one" || { echo "found: $found" >&2; exit 1; }
