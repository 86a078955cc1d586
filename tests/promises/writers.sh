#!/bin/sh
# Twelve programs extend one profile at once, some begin it: no measurement is lost, and the profile can be read.
#   writers.sh PROGRAM SOURCE_DIR
set -eu
program=$1
recording=$2/tests/data/measuring/creak_e_a_o.ogg
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cd "$work"
writers=12
waited=""
for n in $(seq $writers); do
    "$program" measure "$recording" --vowels "e a o" --voice tenor --into me.yaml --date 2026-01-01 --note "writer $n" >"out$n" 2>"err$n" &
    waited="$waited $!"
done
for one in $waited; do wait "$one" || { cat err* >&2; exit 1; }; done
"$program" profile history me.yaml --as json >history.json
for n in $(seq $writers); do
    found=$(grep -c "\"writer $n\"" history.json || true)
    [ "$found" -eq 3 ] || { echo "writer $n left $found measurements of 3" >&2; exit 1; }
done
ls -A | grep '\.vowelway-' && { echo "a temporary is left" >&2; exit 1; }
echo "$writers writers at once, nothing lost"
