#!/bin/sh
# Every command under ever less memory: it is done, or it is told that memory ran out, and nothing is half-written.
#   memory.sh PROGRAM
set -eu
program=$(cd "$(dirname "$1")" && pwd)/$(basename "$1")
here=$(cd "$(dirname "$0")" && pwd)
song=$here/../../charts/demo/giusto_amor.mxl
recording=$here/../data/measuring/creak_e_a_o.ogg
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

status=0 short=0 enough=0
# under OUTPUT ARGUMENT..: from 24 to 600 MB.
under() {
    output=$1
    shift
    for megabytes in 24 34 40 46 52 58 64 80 100 130 160 200 260 300 340 400 600; do
        rm -f "$output"
        code=0
        (
            ulimit -v $((megabytes * 1024))
            exec "$program" "$@"
        ) >"$work/out" 2>"$work/err" </dev/null || code=$?
        case $code in
        0)
            enough=$((enough + 1))
            [ -s "$output" ] || { status=1; echo "memory: $1 within $megabytes MB wrote nothing" >&2; }
            ;;
        127) short=$((short + 1)) ;; # the system could not load the program
        3)
            short=$((short + 1))
            grep -Eq 'not enough memory|cannot be loaded' "$work/err" ||
                { status=1; echo "memory: $1 within $megabytes MB says: $(head -2 "$work/err" | tr '\n' ' ')" >&2; }
            [ ! -e "$output" ] || { status=1; echo "memory: $1 within $megabytes MB left something behind" >&2; }
            ;;
        *)
            status=1
            echo "memory: $1 -o $(basename "$output") within $megabytes MB ended with $code: $(tail -1 "$work/err")" >&2
            ;;
        esac
    done
}
for form in json pdf musicxml; do
    under "$work/plan.$form" plan "$song" --singer tenor -o "$work/plan.$form"
done
under "$work/line.flac" hear "$song" --singer tenor --to 2 -o "$work/line.flac"
under "$work/takes.json" measure "$recording" --vowels "e a o" --voice tenor -o "$work/takes.json"
under "$work/voices.pdf" compare tenor bass -o "$work/voices.pdf"
[ $short -gt 7 ] && [ $enough -gt 20 ] || { echo "memory: $enough runs done, $short short: nothing was tried" >&2; exit 1; }
[ $status -ne 0 ] || echo "memory: $enough runs done, $short told that memory ran out"
exit $status
