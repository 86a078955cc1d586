#!/bin/sh
# Runs every command that the README and docs/cli.md show: lines of code that begin with "vowelway". Files they name as
# the reader's own (me.yaml, song.mxl, take.wav ..) stand for those of the demo.
#   documented_commands.sh PROGRAM SOURCE_DIR
set -eu
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
mkdir "$work/bin"
ln -s "$1" "$work/bin/vowelway"
PATH="$work/bin:$PATH"
mkdir "$work/page"
printf '<script type="application/json" id="lesson"></script>' >"$work/page/vowelway.html" # the page is built elsewhere
VOWELWAY_PAGE=$work/page
export PATH VOWELWAY_PAGE
cp -r "$2/charts" "$work/charts"
cp "$2/charts/demo/giusto_amor.mxl" "$work/song.mxl"
cp "$2/charts/demo/serafina_quill.yaml" "$work/me.yaml"
mkdir "$work/pupils" "$work/songs"
cp "$2"/charts/demo/*.yaml "$2/charts/demo/giusto_amor.mxl" "$work/pupils"
cp "$2/charts/demo/giusto_amor.mxl" "$2/tests/data/scores/lieder/satie_omnibus.mxl" "$work/songs"
cp "$2/tests/data/scores/own/old_hundredth.musicxml" "$work/hymn.musicxml"
ln -s "$2/tests/data" "$work/data"
mkdir "$work/tests"
ln -s "$2/tests/data" "$work/tests/data"
cd "$work"
count=0
sed -n 's/^    \(vowelway [^#]*\).*$/\1/p' "$2/README.md" "$2/docs/cli.md" >commands
while IFS= read -r command; do
    sh -c "$command" </dev/null >out 2>err || { echo "fails as documented: $command" >&2; cat err >&2; exit 1; }
    count=$((count + 1))
done <commands
[ "$count" -ge 8 ] || { echo "only $count commands found in the documents" >&2; exit 1; }
echo "$count documented commands run"
