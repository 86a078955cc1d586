#!/bin/sh
# Fuzzes every reader, two at a time, and tells for each how many inputs were tried and what was found.
#   run.sh SECONDS [NAME ..]      seconds for each; the names of sources here, without them all
# What is learned stays in build/fuzz/corpus, what fails in build/fuzz/found: give that file to the program to see it again.
set -eu
[ $# -ge 1 ] || { sed -n '2,5s/^# *//p' "$0" >&2; exit 2; }
seconds=$1
shift
cd "$(dirname "$0")/../.."
here=tests/fuzz
[ $# -gt 0 ] || set -- $(cd $here && ls *.cpp | sed 's/\.cpp$//')
mkdir -p build
cmake --preset fuzz >build/fuzz-configured 2>&1 || { cat build/fuzz-configured >&2; exit 1; }
# shellcheck disable=SC2046
cmake --build build/fuzz -j 2 --target $(printf 'fuzz_%s ' "$@") >build/fuzz-built 2>&1 || { tail -40 build/fuzz-built >&2; exit 1; }

seeds_of() {
    case $1 in
    score | marks) ls tests/data/scores/suite/*.xml charts/demo/*.musicxml 2>/dev/null ;;
    mxl) find tests/data charts -name '*.mxl' -size -64k ;;
    profile) ls profiles/*.yaml tests/data/profiles/*.yaml ;;
    passage) grep -rl '^passage:' tests/data charts docs --include=*.yaml ;;
    technique) ls profiles/techniques/*.yaml ;;
    theme) ls profiles/themes/*.yaml ;;
    wording) ls profiles/wordings/*.yaml ;;
    areas) ls tests/data/measuring/area_functions.csv $here/seeds/areas.csv ;;
    words) ls $here/seeds/words.yaml ;;
    typed) ls $here/seeds/typed.txt ;;
    cues) ls $here/seeds/cues.txt ;;
    plan) ls $here/seeds/plan.json ;;
    esac
}
words_of() {
    case $1 in
    score | marks | mxl) echo xml ;;
    areas | cues | typed) echo text ;;
    plan) echo plan ;;
    *) echo yaml ;;
    esac
}
mkdir -p build/fuzz/found build/fuzz/log
for name in "$@"; do
    mkdir -p "build/fuzz/corpus/$name" "build/fuzz/seeds/$name"
    seeds_of "$name" | while read -r file; do cp "$file" "build/fuzz/seeds/$name/"; done
    ls "build/fuzz/seeds/$name" | grep -q . || { echo "no seeds for $name" >&2; exit 1; }
    # A slow input and a large one are findings too: 10 s and 2 GiB, sanitizers included.
    echo "build/fuzz/tests/fuzz/fuzz_$name build/fuzz/corpus/$name build/fuzz/seeds/$name -dict=$here/$(words_of "$name").dict" \
        "-max_total_time=$seconds -timeout=10 -rss_limit_mb=2048 -max_len=65536 -print_final_stats=1" \
        "-artifact_prefix=build/fuzz/found/$name- >build/fuzz/log/$name 2>&1 || echo \$? >>build/fuzz/log/$name.failed"
done >build/fuzz/commands
rm -f build/fuzz/log/*.failed
tr '\n' '\0' <build/fuzz/commands | xargs -0 -P 2 -I{} sh -c '{}'

status=0
for name in "$@"; do
    log=build/fuzz/log/$name
    tried=$(sed -n 's/^stat::number_of_executed_units: *//p' "$log")
    grown=$(sed -n 's/.*cov: \([0-9]*\).*/\1/p' "$log" | tail -1)
    found=nothing
    [ ! -e "$log.failed" ] || { found=$(sed -n 's/^SUMMARY: //p' "$log" | tail -1); found=${found:-see $log}; status=1; }
    [ "${tried:-0}" -gt 0 ] || { found="${found} (nothing was tried)"; status=1; }
    printf '%-10s %9s inputs, %6s edges: %s\n' "$name" "${tried:-0}" "${grown:-0}" "$found"
done
exit $status
