#!/bin/sh
# Remakes each picture of charts/README.md by the command printed there, in a folder of its own, and compares it with the one in
# charts/: byte by byte where libraries and fonts are those it was made with (charts/made_with.txt), else the JSON and the words.
#   run.sh PROGRAM SOURCE_DIR
set -eu
source=$2
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
mkdir "$work/bin" "$work/charts"
ln -s "$1" "$work/bin/vowelway"
cp -r "$source/charts/demo" "$work/charts/demo" # sounds are made beside the songs
rm -f "$work/charts/demo/"*.flac
ln -s "$source/tests" "$work/tests"
PATH="$work/bin:$PATH"
export PATH
cd "$work"
sed -n 's/^    \(vowelway .*\)$/\1/p' "$source/charts/README.md" >commands
while IFS= read -r command; do
    sh -c "$command" </dev/null >/dev/null 2>err || { echo "fails as printed: $command" >&2; cat err >&2; exit 1; }
    for made in charts/*.* charts/demo/*.flac; do
        [ -e "$made" ] || continue
        grep -q "^$made " makers 2>/dev/null || echo "$made $command" >>makers
    done
done <commands

# What of a file does not depend on the libraries.
words() {
    case $1 in
    *.pdf) pdftotext "$1" - ;;
    *.svg) sed -n 's|.*<text [^>]*>\(.*\)</text>.*|\1|p' "$1" ;;
    *.json) cat "$1" ;;
    *.flac) ffmpeg -nostdin -v error -i "$1" -f md5 - ;; # the samples
    *.png) head -c 24 "$1" | tail -c 8 | od -A n -t u1 ;; # width and height
    esac
}
[ -s "$source/charts/made_with.txt" ] || { echo "charts/made_with.txt is missing: run sh charts/make.sh" >&2; exit 1; }
sh "$source/tests/gallery/versions.sh" >versions
bytes=yes
if ! cmp -s versions "$source/charts/made_with.txt"; then
    bytes=no
    echo "other libraries or fonts than the gallery was made with: the drawing is not compared, only JSON, words and sizes"
    diff "$source/charts/made_with.txt" versions || true
fi

stale=0
while read -r made command; do
    if [ $bytes = yes ]; then
        same=$(cmp -s "$made" "$source/$made" && echo yes || echo no)
    else
        words "$made" >a
        words "$source/$made" >b 2>/dev/null || true
        same=$(cmp -s a b && echo yes || echo no)
    fi
    [ "$same" = yes ] && continue
    echo "stale: $made, made by: $command" >&2
    stale=$((stale + 1))
done <makers
for kept in "$source"/charts/*.* "$source"/charts/demo/*.flac; do # pictures that no command makes
    name=charts/${kept#"$source"/charts/}
    case $name in charts/README.md | charts/make.sh | charts/made_with.txt) continue ;; esac
    [ -e "$name" ] && continue
    echo "stale: no command of charts/README.md makes $name" >&2
    stale=$((stale + 1))
done
[ -s makers ] || { echo "charts/README.md shows no command" >&2; exit 1; }
if [ $stale -gt 0 ]; then
    echo "$stale pictures are stale: run sh charts/make.sh, look at the difference, keep it or mend the code" >&2
    exit 1
fi
echo "$(wc -l <makers) files of the gallery are what their commands make"
