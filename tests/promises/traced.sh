#!/bin/sh
# Every command under strace: no network, no sound server, nothing written but the named files, nothing read but these and
# what the system keeps for programs; the home stays empty.
#   traced.sh PROGRAM SOURCE_DIR
set -eu
program=$1
source=$2
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
mkdir "$work/home" "$work/here"
cd "$work/here"
strace -o "$work/probe" true 2>/dev/null || { echo "skipped: strace is missing, or may not trace here"; exit 77; }
cp "$source/charts/demo/giusto_amor.mxl" song.mxl
cp "$source/tests/data/measuring/creak_e_a_o.ogg" take.ogg
cp "$source/tests/data/acoustics/twin_tubes.csv" areas.csv

status=0
named() { # FILE: one of those it may write; a page of a chart has a number
    page=$(echo "${1#./}" | sed 's/-[0-9]*\././')
    for one in $may; do [ "$page" != "$one" ] || return 0; done
    return 1
}
# traced "FILES IT MAY WRITE" ARGUMENTS ..
traced() {
    may=$1
    shift
    env HOME="$work/home" XDG_RUNTIME_DIR="$work/home" PULSE_SERVER= strace -f -o "$work/trace" -e trace=%file,%network,ftruncate \
        "$program" "$@" >"$work/out" 2>"$work/err" </dev/null || { cat "$work/err" >&2; exit 1; }
    sed 's/^[0-9]* *//' "$work/trace" >"$work/calls"
    if grep -E '^(socket|connect|bind|sendto|sendmsg)\(' "$work/calls" >&2; then echo "traced: $1 uses the network or a server" >&2; status=1; fi
    # What changes the disk: creating, replacing, removing.
    grep -E 'O_WRONLY|O_RDWR|O_CREAT|^(mkdir|mkdirat|rename|renameat|renameat2|unlink|unlinkat|link|linkat|symlink|symlinkat|chmod|truncate|rmdir)\(' "$work/calls" |
        grep -v ' = -1 ' | grep -o '"[^"]*"' | tr -d '"' | sort -u >"$work/changed"
    while read -r file; do
        case $file in
        /dev/null | /dev/tty) continue ;;
        ./.vowelway-*.part | .vowelway-*.part) continue ;;
        esac
        named "$file" && continue
        echo "traced: $1 writes $file" >&2
        status=1
    done <"$work/changed"
    # What is read: the working folder, what is named, and what programs may find everywhere.
    grep -E '^(open|openat)\(' "$work/calls" | grep -v ' = -1 ' | grep -o '"[^"]*"' | tr -d '"' | sort -u >"$work/read"
    while read -r file; do
        case $file in
        /usr/* | /lib/* | /lib64/* | /etc/* | /proc/* | /sys/* | /dev/null | /dev/tty | /dev/urandom) continue ;;
        /var/cache/fontconfig*) continue ;;
        . | ./* | song.mxl | take.ogg | areas.csv | me.yaml | p.json | .vowelway-*) continue ;;
        esac
        named "$file" && continue
        echo "traced: $1 reads $file" >&2
        status=1
    done <"$work/read"
    if [ -n "$(ls -A "$work/home")" ]; then ls -A "$work/home" >&2; echo "traced: $1 leaves something in the home" >&2; status=1; rm -rf "$work/home"; mkdir "$work/home"; fi
}
traced "" --version
traced "" words "dolce sospiro" --language it
traced "" words "schloss bingo" --language nl
traced "p.pdf p.svg p.json p.csv p.txt p.mxl p.musicxml" plan song.mxl --singer tenor --draws 0 -o p.pdf -o p.svg -o p.json -o p.csv -o p.txt -o p.mxl -o p.musicxml
traced "e.pdf" explain song.mxl --measure 3 --singer tenor --draws 0 -o e.pdf
traced "c.pdf c.csv" compare tenor baritone -o c.pdf -o c.csv
traced "me.yaml m.pdf" measure take.ogg --vowels "e a o" --voice tenor --into me.yaml -o m.pdf
traced "me.yaml" measure take.ogg --vowels "e a o" --into me.yaml
traced "k.pdf" check take.ogg --vowels "e a o" --singer me.yaml --plan p.json -o k.pdf
traced "" profile show me.yaml
traced "" profile history me.yaml
traced "" tract areas.csv
traced "h.wav" hear --singer tenor --vowel a --seconds 0.2 -o h.wav
[ $status -ne 0 ] || echo "13 runs traced: nothing but the named files"
exit $status
