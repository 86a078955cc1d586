#!/bin/sh
# resume.sh PROGRAM FOLDER_OF_SCORES: a survey is killed again and again while it works; no record is lost, none is computed
# twice, and in the end it is, byte for byte, the one that was never stopped.
set -eu
program=$1 songs=$2
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
cd "$folder"
options="--singers tenor soprano --keys -6..6 --draws 30 --threads 1"
rows() { "$program" survey show "$1" --as csv 2>/dev/null | tail -n +2 | wc -l; }

"$program" survey "$songs" $options -o whole.db 2>/dev/null
before=0 kills=0
while [ $kills -lt 4 ]; do
    "$program" survey "$songs" $options -o stopped.db 2>/dev/null &
    job=$!
    # until it has done something since it was begun
    tries=0
    while [ "$(rows stopped.db 2>/dev/null || echo 0)" -le "$before" ] && [ $tries -lt 200 ]; do
        sleep 0.05
        tries=$((tries + 1))
    done
    kill -9 $job 2>/dev/null || break # it was done already
    wait $job 2>/dev/null || true
    after=$(rows stopped.db)
    [ "$after" -ge "$before" ] || { echo "records were lost: $before, then $after"; exit 1; }
    before=$after
    kills=$((kills + 1))
done
[ $kills -ge 1 ] || { echo "it was never stopped"; exit 1; }
"$program" survey "$songs" $options -o stopped.db 2>said
grep -q " $before of them were there" said || { echo "$before records were there, but:"; cat said; exit 1; }
"$program" survey show whole.db -o whole.csv 2>/dev/null
"$program" survey show stopped.db -o stopped.csv 2>/dev/null
cmp whole.csv stopped.csv
echo "killed $kills times, $before records kept, the same in the end"
