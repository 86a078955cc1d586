#!/bin/sh
# scores.sh FOLDER BUILD: every score below the folder is read and marked; what was valid stays valid; the marked
# songs are engraved by an independent library where npm can install it.
set -eu
scores=$1
build=$2
here=$(cd "$(dirname "$0")" && pwd)
schema=$here/../data/musicxml_schema
out=$build/wide-scores
rm -rf "$out"
"$build/tests/wide/mark_every_score" "$scores" "$out"

# Every note, syllable and tempo as another reader has it.
for verse in 0 -1 parts; do # as printed, as sung, every line of it
    python3 "$here/../independent/read_scores.py" "$build/tests/independent/read_back" $verse "$here/../independent/explained.txt" "$scores"
done

XML_CATALOG_FILES=$schema/catalog.xml
export XML_CATALOG_FILES
# xmllint names each file it finds valid; a marked score must be among them where its source was.
validate() {
    find "$1" -maxdepth 1 -name '*.musicxml' -exec \
        xmllint --nonet --noout --schema "$schema/musicxml.xsd" {} + 2>&1 | sed -n 's|.*/\(.*\) validates$|\1|p' | sort
}
validate "$out/plain" > "$out/valid_before"
validate "$out" > "$out/valid_after"
spoilt=$(comm -23 "$out/valid_before" "$out/valid_after")
if [ -n "$spoilt" ] || [ ! -s "$out/valid_before" ]; then
    echo "no longer valid when marked: $spoilt" >&2
    exit 1
fi
echo "$(wc -l < "$out/valid_before") scores were valid MusicXML 4.0 and still are"

mkdir -p "$build/engraver"
if (cd "$build/engraver" && npm install --no-save --no-audit --no-fund verovio@6.3.0 > install.log 2>&1); then
    cd "$build/engraver"
    find ../wide-scores -maxdepth 1 -name '*__*.musicxml' -print0 | sort -z | xargs -0 node "$here/engrave.mjs" engraved
else
    echo "the engraving library could not be installed; see $build/engraver/install.log" >&2
fi
