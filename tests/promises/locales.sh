#!/bin/sh
# The same bytes in any locale: those that the system has, and one with a decimal comma and other sorting, made here.
#   locales.sh PROGRAM SOURCE_DIR
set -eu
program=$1
song=$2/charts/demo/giusto_amor.mxl
recording=$2/tests/data/measuring/creak_e_a_o.ogg
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
mkdir "$work/made"
comma=""
for name in de_DE tr_TR; do
    localedef -i $name -f UTF-8 "$work/made/$name.UTF-8" 2>/dev/null && comma="$comma $name.UTF-8" || true
    localedef -i $name -f ISO-8859-9 "$work/made/$name" 2>/dev/null && comma="$comma $name" || true
done
[ -n "$comma" ] || echo "note: no locale with a decimal comma can be made here (localedef, package locales)"
count=0
for locale in C POSIX C.UTF-8 $comma; do
    mkdir "$work/$locale"
    (
        cd "$work/$locale"
        [ "$locale" = C ] || [ "$locale" = POSIX ] || [ "$locale" = C.UTF-8 ] || export LOCPATH="$work/made"
        export LC_ALL=$locale LANG=$locale TZ=UTC
        "$program" plan "$song" --singer tenor --draws 0 -o p.json -o p.csv -o p.txt -o p.svg -o p.pdf -o p.musicxml
        "$program" measure "$recording" --vowels "e a o" --voice tenor --into me.yaml --date 2026-01-01 -o m.json -o m.txt
        "$program" check "$recording" --vowels "e a o" --singer me.yaml --plan p.json -o k.json
        "$program" words "schloss bingo" --language nl --as json -o w.json
        "$program" tract "$2/tests/data/acoustics/twin_tubes.csv" -o t.json
        "$program" compare me.yaml baritone -o c.csv -o c.json
        "$program" nonsense 2>error || true
    ) >"$work/log" 2>&1 || { echo "$locale:" >&2; cat "$work/log" >&2; exit 1; }
    count=$((count + 1))
    diff -rq "$work/C" "$work/$locale" >&2 || { echo "other bytes in the locale $locale" >&2; exit 1; }
done
[ "$(ls "$work/C" | wc -l)" -ge 14 ] || { echo "too few files" >&2; exit 1; }
echo "$count locales, the same bytes in $(ls "$work/C" | wc -l) files"
