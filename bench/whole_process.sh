#!/bin/sh
# Whole-process figures of the main job: wall time and peak memory, median of RUNS, beside a process that only starts.
#   sh bench/whole_process.sh [BUILD_DIR] [RUNS]      (needs the Debian package `time`)
set -eu
cd "$(dirname "$0")/.."
program="${1:-build/release}/src/cli/vowelway"
runs="${2:-11}"
song=charts/demo/giusto_amor.mxl
singer=charts/demo/serafina_quill.yaml
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
measure() {
    name=$1; shift
    : >"$scratch/runs"
    for _ in $(seq "$runs"); do
        /usr/bin/time -a -o "$scratch/runs" -f '%e %U %M' "$@" >/dev/null 2>&1
    done
    sort -n "$scratch/runs" | awk -v name="$name" '{ wall[NR] = $1; user[NR] = $2; kib[NR] = $3 }
        END { m = int((NR + 1) / 2); printf "%-34s wall %5.0f ms   cpu %5.0f ms   peak %5.1f MB\n", name, wall[m] * 1000, user[m] * 1000, kib[m] / 1024 }'
}
measure "only starts (--version)" "$program" --version
measure "song to JSON" "$program" plan "$song" --singer "$singer" -o "$scratch/plan.json"
measure "song to JSON, no draws" "$program" plan "$song" --singer "$singer" --draws 0 -o "$scratch/plan.json"
measure "song to PDF" "$program" plan "$song" --singer "$singer" -o "$scratch/plan.pdf"
measure "range to JSON" "$program" plan --range C3..A4 --singer baritone -o "$scratch/range.json"
