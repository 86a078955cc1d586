#!/bin/sh
# Plans every score of a folder with several voices: each must give a plan (exit code 0) or a message (exit code 3); a crash, a
# hang, another exit code or an unreadable JSON fails.
#   run.sh FOLDER BUILD_DIR
set -u
program="$2/src/cli/vowelway"
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
planned=0; refused=0; failed=0
find "$1" -name '*.mxl' -o -name '*.xml' -o -name '*.musicxml' | sort >"$scratch/files"
while IFS= read -r file; do
    case "$file" in */META-INF/*) continue ;; esac
    timeout 120 "$program" plan "$file" --singer mezzo --draws 2 -o "$scratch/plan.json" -o "$scratch/plan.pdf" >"$scratch/out" 2>"$scratch/err"
    code=$?
    if [ $code -eq 0 ] && head -c 1 "$scratch/plan.json" | grep -q '{' && head -c 5 "$scratch/plan.pdf" | grep -q '%PDF-'; then
        planned=$((planned + 1))
    elif [ $code -eq 3 ] && [ -s "$scratch/err" ]; then
        refused=$((refused + 1))
        echo "refused: $(head -1 "$scratch/err" | sed "s|$1/||")"
    else
        failed=$((failed + 1))
        echo "FAILED (exit code $code): $file" >&2
        tail -5 "$scratch/err" >&2
    fi
    rm -f "$scratch"/plan*
done <"$scratch/files"
echo "$planned planned, $refused refused with a message, $failed failed"
[ $failed -eq 0 ] && [ $planned -gt 0 ] || exit 1
# The charts of the songs, by their boxes (the test suite of the format has no words worth a chart).
songs="$1/lieder"
[ -d "$songs" ] || songs="$1"
"$2/tests/wide/chart_boxes" "$songs" || exit 1
# Every score read, marked and given back; the marked ones validated and engraved by others.
sh "$(dirname "$0")/scores.sh" "$1" "$2"
