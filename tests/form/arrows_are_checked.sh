#!/bin/sh
# The check of includes must find each kind of wrong include, in a copy of the tree, and only that one.
#   arrows_are_checked.sh SOURCE_DIR BUILD_DIR
set -eu
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
cp -r "$1/src" "$1/include" "$scratch"
check() { cmake -DROOT="$scratch" -DRULES="$2/arrows.cmake" -P "$1/tests/form/arrows.cmake" >"$scratch/said" 2>&1; }
check "$1" "$2" || { cat "$scratch/said" >&2; exit 1; }
count=0
while IFS='|' read -r file line reason; do
    cp "$scratch/$file" "$scratch/kept"
    printf '%s\n' "$line" >>"$scratch/$file"
    if check "$1" "$2"; then
        echo "not found: $line in $file" >&2
        exit 1
    fi
    grep -q "^ *$file: .*$reason" "$scratch/said" || { echo "$line in $file:" >&2; cat "$scratch/said" >&2; exit 1; }
    [ "$(grep -c '^ *[a-z]*/.*: ' "$scratch/said")" -eq 1 ] || { cat "$scratch/said" >&2; exit 1; }
    cp "$scratch/kept" "$scratch/$file"
    count=$((count + 1))
done <<CASES
src/core/pitch.cpp|#include "vowelway/plan/plan.hpp"|core does not link plan
include/vowelway/core/pitch.hpp|#include "vowelway/acoustics/tract.hpp"|core does not link acoustics
src/plan/cost.cpp|#include "vowelway/analysis/spectrum.hpp"|plan does not link analysis
src/io/score/archive.cpp|#include "plan/cost.hpp"|io does not link plan
src/plan/cost.cpp|#include <Eigen/Dense>|plan does not link Eigen3::Eigen
src/core/pitch.cpp|  #  include <fmt/format.h>|core does not link fmt::fmt
src/plan/cost.cpp|#include <pugixml.hpp>|plan does not link pugixml::pugixml
src/chart/draw.cpp|#include <cairo.h>|only src/chart/cairo may see
src/diction/words/letters.cpp|#include <espeak-ng/speak_lib.h>|only src/diction/synthesis may see
include/vowelway/core/pitch.hpp|#include "core/utf8.hpp"|a public header includes a private one
include/vowelway/io/score/read_score.hpp|#include <pugixml.hpp>|a public header includes one of
src/plan/cost.cpp|#include <zlib.h>|of no package
CASES
echo "$count wrong includes were found"
