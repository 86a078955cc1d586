#!/bin/sh
# Plans every score of a folder: each must give a plan (exit code 0) or a message (exit code 3); a crash, a hang, another
# exit code or an unreadable JSON fails. Two scores at a time.
#   run.sh FOLDER BUILD_DIR [--all]     --all: the charts for every voice, paper and size, which takes minutes
set -u
program="$2/src/cli/vowelway"
few=--few
[ "${3:-}" != --all ] || few=
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
find "$1" \( -name '*.mxl' -o -name '*.xml' -o -name '*.musicxml' \) ! -path '*/META-INF/*' | sort >"$scratch/files"
# plan_one PROGRAM FOLDER FILE: one line, "planned", "refused: .." or "FAILED ..".
cat >"$scratch/plan_one" <<'END'
own=$(mktemp -d)
timeout 120 "$1" plan "$3" --singer mezzo --draws 2 -o "$own/plan.json" -o "$own/plan.pdf" >"$own/out" 2>"$own/err"
code=$?
if [ $code -eq 0 ] && head -c 1 "$own/plan.json" | grep -q '{' && head -c 5 "$own/plan.pdf" | grep -q '%PDF-'; then
    echo planned
elif [ $code -eq 3 ] && [ -s "$own/err" ]; then
    echo "refused: $(head -1 "$own/err" | sed "s|$2/||")"
else
    echo "FAILED (exit code $code): $3: $(tail -5 "$own/err" | tr '\n' ' ')"
fi
rm -rf "$own"
END
tr '\n' '\0' <"$scratch/files" | xargs -0 -P 2 -I{} sh "$scratch/plan_one" "$program" "$1" {} | sort >"$scratch/told"
grep -v '^planned' "$scratch/told"
planned=$(grep -c '^planned' "$scratch/told"); refused=$(grep -c '^refused' "$scratch/told"); failed=$(grep -c '^FAILED' "$scratch/told")
echo "$planned planned, $refused refused with a message, $failed failed"
[ "$failed" -eq 0 ] && [ "$planned" -gt 0 ] && [ $((planned + refused)) -eq "$(wc -l <"$scratch/files")" ] || exit 1
# The charts of the songs, by their boxes (the test suite of the format has no words worth a chart).
songs="$1/lieder"
[ -d "$songs" ] || songs="$1"
# shellcheck disable=SC2086
"$2/tests/wide/chart_boxes" $few "$songs" || exit 1
# Every score read, marked and given back; the marked ones validated and engraved by others.
sh "$(dirname "$0")/scores.sh" "$1" "$2"
