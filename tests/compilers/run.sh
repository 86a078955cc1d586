#!/bin/sh
# Every source is read by the other compiler and by the next standard, with our warnings as errors: clang with
# C++20, GCC with C++23. Nothing is built: about two minutes of one processor each.
#   sh tests/compilers/run.sh [clang|gcc]
set -eu
cd "$(dirname "$0")/../.."
libraries="cairo cairo-pdf cairo-png pangocairo pangoft2 fontconfig libzip espeak-ng libavformat libavcodec libavutil libswresample"
# shellcheck disable=SC2086
foreign="$(pkg-config --cflags $libraries | sed 's/-I/-isystem /g') -isystem /usr/include/eigen3"
warnings="-Wall -Wextra -Wpedantic -Wshadow -Wconversion -Wno-sign-conversion -Wnon-virtual-dtor -Woverloaded-virtual -Werror"
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT

# The vocabulary of every layer is read once, not two hundred times.
for header in include/vowelway/core/*.hpp; do
    echo "#include \"${header#include/}\""
done >"$scratch/vocabulary.hpp"
cat >>"$scratch/vocabulary.hpp" <<'END'
#include <algorithm>
#include <cmath>
#include <filesystem>
#include <functional>
#include <map>
#include <sstream>
END

# read_all COMPILER FLAGS..: each source of src; prints what is wrong, and fails if anything is.
read_all() {
    find src -name '*.cpp' ! -path 'src/page/*' | sort |
        xargs -P "$(nproc)" -n 8 sh -c 'compiler=$1; shift; flags=$1; shift; bad=0
            for source in "$@"; do $compiler $flags "$source" || { echo "fails: $source"; bad=1; }; done
            exit $bad' _ "$@"
}
# xargs appends the sources to what read_all was given: COMPILER, "FLAGS".
common="-Iinclude -Isrc $foreign $warnings -DVOWELWAY_VERSION=\"x\""

if [ "${1:-clang}" = clang ]; then
    # shellcheck disable=SC2086
    clang++ -std=c++20 $common -x c++-header "$scratch/vocabulary.hpp" -o "$scratch/vocabulary.pch"
    read_all clang++ "-std=c++20 -fsyntax-only -include-pch $scratch/vocabulary.pch $common"
    echo "clang++, C++20: no warnings"
fi
if [ "${1:-gcc}" = gcc ]; then
    common="$common -Wduplicated-cond -Wlogical-op -Wno-restrict"
    # shellcheck disable=SC2086
    g++ -std=c++23 $common -x c++-header "$scratch/vocabulary.hpp" -o "$scratch/vocabulary.hpp.gch"
    read_all g++ "-std=c++23 -fsyntax-only -include $scratch/vocabulary.hpp $common"
    echo "g++, C++23: no warnings"
fi
