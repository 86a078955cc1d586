#!/bin/sh
# Every hostile input is answered or refused within bounds of time and memory, and never ends the program otherwise. The
# bounds are in docs/limits.md.
#   run.sh PROGRAM     a program without sanitizers: they take memory and time of their own
set -eu
here=$(cd "$(dirname "$0")" && pwd)
recording=$here/../data/measuring/creak_e_a_o.ogg
seconds=20           # of processor time
kilobytes=1536000    # of memory, that of the libraries and of two threads included

# ask FILE PROGRAM FOLDER: every form of it; one line "FILE as FORM: well" or what was wrong.
ask() {
    file=$1 program=$2 work=$3
    name=$(basename "$file")
    case $name in
    plan-*) set -- plan "$file" --singer tenor --draws 0 --language it ;;
    profile-*) set -- profile show "$file" ;;
    words-*) set -- words "$file" --language de ;;
    check-*) set -- check "$recording" --vowels "e a o" --singer tenor --plan "$file" ;;
    tract-*) set -- tract "$file" ;;
    cues-*) set -- measure "$recording" --cues "$file" --voice tenor ;;
    measure-*) set -- measure "$file" --vowels a --voice tenor ;;
    esac
    for form in table json pdf; do
        case $form-$1 in
        pdf-words | pdf-tract | pdf-profile) continue ;;
        pdf-*) output=$work/$name.pdf ;;
        *) output=- ;;
        esac
        as=json
        [ $form = json ] || as=table
        code=0
        (
            ulimit -t $seconds
            ulimit -v $kilobytes
            exec "$program" "$@" --as $as -o "$output"
        ) >"$work/$name.out" 2>"$work/$name.err" </dev/null || code=$?
        case $code in
        0 | 3) echo "$name as $form: well" ;;
        *) echo "$name as $form ended with $code: $(head -c 300 "$work/$name.err" | head -2 | tr '\n' ' ')" ;;
        esac
        # A refusal is the same in every form.
        [ $code -ne 3 ] || break
    done
}
if [ "$1" = --ask ]; then
    shift
    ask "$@"
    exit
fi

program=$(cd "$(dirname "$1")" && pwd)/$(basename "$1")
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
sh "$here/make_inputs.sh" "$work/in"
find "$work/in" -type f -print0 | xargs -0 -P 2 -I{} sh "$0" --ask {} "$program" "$work" >"$work/told"
count=$(wc -l <"$work/told")
if grep -v ': well$' "$work/told" >&2; then exit 1; fi
[ "$count" -gt 40 ] || { echo "hostile: only $count runs" >&2; exit 1; }
echo "hostile: $count runs, each within $seconds s and $kilobytes kB"
