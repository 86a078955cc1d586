#!/bin/sh
# Each public header of the layers that compute says what it promises to threads, in a line that begins with "Threads".
#   threads_told.sh SOURCE_DIR
set -eu
cd "$1/include/vowelway"
layers="acoustics plan sound analysis diction report chart"
for layer in $layers; do
    [ -n "$(find $layer -name '*.hpp')" ] || { echo "no header of $layer was found" >&2; exit 1; }
done
# shellcheck disable=SC2086
silent=$(find $layers -name '*.hpp' -exec grep -LE '^ *//+.*\bThreads(:|  )' {} +)
[ -z "$silent" ] || { echo "these say nothing of threads:" "$silent"; exit 1; }
