#!/bin/sh
# The sources are read by another compiler and by the next standard, with our warnings as errors; nothing is built.
#   sh tests/compilers/run.sh            every source by clang with C++20, every header by GCC with C++23: 3 minutes
#                                        of processor time
#   sh tests/compilers/run.sh gcc        every source by GCC with C++23: 5 minutes
set -eu
cd "$(dirname "$0")/../.."
libraries="cairo cairo-pdf cairo-png pangocairo pangoft2 fontconfig libzip espeak-ng libavformat libavcodec libavutil libswresample"
# shellcheck disable=SC2086
foreign="$(pkg-config --cflags $libraries | sed 's/-I/-isystem /g') -isystem /usr/include/eigen3"
warnings="-Wall -Wextra -Wpedantic -Wshadow -Wconversion -Wno-sign-conversion -Wnon-virtual-dtor -Woverloaded-virtual -Werror"
gcc_warnings="-Wduplicated-cond -Wlogical-op -Wno-restrict"
common="-Iinclude -Isrc -Itests $foreign $warnings -DVOWELWAY_VERSION=\"x\""
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT

# all_headers FOLDER: includes of every header in it, on standard output.
all_headers() {
    (cd "$1" && find . -name '*.hpp' ! -path './page/*' | sort | sed 's|^\./\(.*\)|#include "\1"|')
}
# read_all COMPILER "FLAGS": each source of src, and of bench, which CI does not build; prints what is wrong, and fails if anything is.
read_all() {
    # shellcheck disable=SC2016
    find src bench -name '*.cpp' ! -path 'src/page/*' | sort |
        xargs -P "$(nproc)" -n 8 sh -c 'compiler=$1; flags=$2; shift 2; bad=0
            for source in "$@"; do $compiler $flags "$source" || { echo "fails: $source"; bad=1; }; done
            exit $bad' _ "$1" "$2"
}
# The vocabulary of every layer is read once, not two hundred times.
{
    all_headers include | grep 'vowelway/core/'
    printf '#include <%s>\n' algorithm cmath filesystem functional map sstream
} >"$scratch/vocabulary.hpp"

if [ "${1:-}" = gcc ]; then
    # shellcheck disable=SC2086
    g++ -std=c++23 $common $gcc_warnings -x c++-header "$scratch/vocabulary.hpp" -o "$scratch/vocabulary.hpp.gch"
    read_all g++ "-std=c++23 -fsyntax-only -include $scratch/vocabulary.hpp $common $gcc_warnings"
    echo "g++, C++23, every source: no warnings"
    exit 0
fi
{ all_headers include; all_headers src; } >"$scratch/headers.cpp"
# shellcheck disable=SC2086
g++ -std=c++23 -fsyntax-only $common $gcc_warnings "$scratch/headers.cpp"
echo "g++, C++23, every header: no warnings"
# shellcheck disable=SC2086
clang++ -std=c++20 $common -x c++-header "$scratch/vocabulary.hpp" -o "$scratch/vocabulary.pch"
read_all clang++ "-std=c++20 -fsyntax-only -include-pch $scratch/vocabulary.pch $common"
echo "clang++, C++20, every source: no warnings"
