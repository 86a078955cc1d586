#!/bin/sh
# Decoders, the synthesiser, archives and the database are loaded when they are used: the program does not link them, and when they cannot be
# loaded everything else still works and the message names the library and the package.
#   late_libraries.sh PROGRAM SOURCE_DIR
set -eu
program=$1
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
if ldd "$program" | grep -E 'libav|libsw|libsndfile|libespeak|libzip|libcrypto|libsqlite'; then
    echo "these are loaded at every start" >&2
    exit 1
fi
# Without them: files of their names that are no libraries.
for name in libavutil libavcodec libavformat libswresample libespeak-ng libzip libsqlite3; do
    for version in $(seq 0 99); do : >"$scratch/$name.so.$version"; done
done
fails() { # WHAT_IT_SAYS COMMAND ..
    said=$1; shift
    code=0
    LD_LIBRARY_PATH="$scratch" "$program" "$@" >"$scratch/out" 2>"$scratch/err" || code=$?
    if [ "$code" -ne 3 ] || ! grep -q "$said" "$scratch/err"; then
        echo "$*: exit code $code" >&2
        cat "$scratch/err" >&2
        exit 1
    fi
}
fails 'libavutil.so.* cannot be loaded.*' measure "$2/tests/data/measuring/tone.wav" --vowels a --probe sung --voice tenor
grep -q 'Debian: the package libavutil' "$scratch/err"
fails 'libespeak-ng.so.1 cannot be loaded' words --language de Nacht
grep -q 'Debian: the package libespeak-ng1' "$scratch/err"
fails 'libzip.so.4 cannot be loaded' plan "$2/charts/demo/giusto_amor.mxl" --singer tenor
grep -q 'Debian: the package libzip4' "$scratch/err"
fails 'libsqlite3.so.0 cannot be loaded' survey "$2/charts/demo" --singer tenor --keys 0..0 -o "$scratch/survey.db"
LD_LIBRARY_PATH="$scratch" "$program" plan --range C4..E4 --singer tenor --draws 0 >"$scratch/out"
test -s "$scratch/out"
echo "loaded late, and missed by name"
