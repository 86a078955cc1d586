#!/bin/sh
# Whole process against whole process: the program measures a minute with 40 vowels of each kind, start and decoding included, and
# numpy and scipy do the whisper's analysis (bench/measure_speed.py) on the same file. Processor time (user and system), the median
# and the least of RUNS, the two in turn, so that what else the machine does meets both alike.
#   sh bench/whole_measuring.sh [BUILD_DIR] [RUNS]
# Needs BUILD_DIR/bench/measure_speed, the ffmpeg program, and the Debian packages python3-numpy and python3-scipy.
set -eu
cd "$(dirname "$0")/.."
build="${1:-build/release}"
runs="${2:-11}"
python="${PYTHON:-/usr/bin/python3}"
export OPENBLAS_NUM_THREADS=1 OMP_NUM_THREADS=1
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
"$build/bench/measure_speed" --make "$scratch"
for kind in whisper creak sung; do
    ffmpeg -nostdin -loglevel error -y -i "$scratch/$kind.wav" -b:a 64k "$scratch/$kind.m4a"
done
timed() {
    name=$1; shift
    "$python" -c 'import resource, subprocess, sys
none = subprocess.DEVNULL
subprocess.run(sys.argv[1:], stdout=none, stderr=none, check=True)
used = resource.getrusage(resource.RUSAGE_CHILDREN)
print(used.ru_utime + used.ru_stime)' "$@" >>"$scratch/$name.times"
}
ours() {
    "$@" "$build/src/cli/vowelway" measure "$scratch/$kind.$form" --voice tenor --vowels "i e a o u" --repeat 8
}
for _ in $(seq "$runs"); do
    timed start "$build/src/cli/vowelway" --version
    for kind in whisper creak sung; do
        for form in wav m4a; do ours timed "$kind.$form"; done
    done
    timed numpy "$python" bench/measure_speed.py "$scratch/whisper.wav" --once
done
# The numpy process reads, computes once and ends; its start-up is counted as ours is.
for name in start whisper.wav whisper.m4a creak.wav creak.m4a sung.wav sung.m4a numpy; do
    sort -n "$scratch/$name.times" | awk -v name="$name" '{ t[NR] = $1 }
        END { m = t[int((NR + 1) / 2)]; l = t[1]; printf "%-12s median %6.1f ms (%4.0f times real time), least %6.1f ms (%4.0f)\n",
              name, 1000 * m, 60.5 / m, 1000 * l, 60.5 / l }'
done
