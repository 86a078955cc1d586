#!/bin/sh
# Writes inputs that cost a careless reader minutes or gigabytes, each for the command that its name begins with.
#   make_inputs.sh FOLDER
set -eu
mkdir -p "$1"
cd "$1"

# many N TEXT: the text N times, on one line.
many() { awk -v n="$1" -v text="$2" 'BEGIN { for (i = 0; i < n; ++i) printf "%s", text }'; }
head='<?xml version="1.0" encoding="UTF-8"?><score-partwise version="4.0"><part-list><score-part id="P1"><part-name>Voice</part-name></score-part></part-list><part id="P1">'
tail='</part></score-partwise>'
note='<note><pitch><step>A</step><octave>4</octave></pitch><duration>1</duration><lyric><text>la</text></lyric></note>'
score() { { printf '%s' "$head"; cat; printf '%s' "$tail"; } >"plan-$1.musicxml"; }
bars() { awk -v n="$1" -v note="$note" 'BEGIN { for (i = 1; i <= n; ++i) printf "<measure number=\"%d\">%s</measure>", i, note }'; }
lyric() { printf '<measure number="1"><note><pitch><step>A</step><octave>4</octave></pitch><duration>1</duration><lyric><text>'; cat; printf '</text></lyric></note></measure>'; }

# Scores.
many 20000000 'la ' | lyric | score one-lyric-of-60-MB
many 340 'la ' | lyric | score lyric-over-the-bound
bars 200000 | score 200000-bars
bars 20000 | score 20000-bars
many 400000 '<a>' | score deep
many 4100000 '<a/>' | score elements
{ printf '<measure number="'; many 30000000 7; printf '">%s</measure>' "$note"; } | score long-number
{ printf '<measure number="1"><note><pitch><step>A</step><octave>4</octave></pitch><duration>1</duration></note>'
  many 300000 '<note><chord/><pitch><step>C</step><octave>5</octave></pitch><duration>1</duration></note>'
  printf '</measure>'; } | score chord-of-300000
{ printf '<measure number="1">'; many 5000 "$note"; printf '</measure>'; } | score 5000-notes-in-a-bar
{ printf '<measure number="1"><note><pitch><step>A</step><octave>4</octave></pitch><duration>1</duration>'
  many 500000 '<lyric number="1"><text>la</text></lyric>'; printf '</note></measure>'; } | score 500000-lyrics-on-a-note
{ printf '<measure number="1">'; many 4900 '<note><grace/><pitch><step>A</step><octave>4</octave></pitch></note>'; printf '%s</measure>' "$note"; } | score graces
{ printf '<measure number="1">'; many 100000 '<direction><sound tempo="60"/></direction>'; printf '%s</measure>' "$note"; } | score tempos
{ printf '<measure number="1">'; many 100000 '<attributes><key><fifths>1</fifths></key></attributes>'; printf '%s</measure>' "$note"; } | score keys
{ printf '<?xml version="1.0"?><score-partwise><movement-title>'; many 60000 T; printf '</movement-title><part-list><score-part id="P1"><part-name>V</part-name></score-part></part-list><part id="P1"><measure number="1">%s</measure>%s' "$note" "$tail"; } >plan-title.musicxml
{ printf '<!DOCTYPE score-partwise [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;&a;&a;&a;&a;&a;">]>'; bars 1 | cat; } >plan-entities.musicxml
mkdir -p META-INF
printf '<container><rootfiles><rootfile full-path="s.musicxml"/></rootfiles></container>' >META-INF/container.xml
mv plan-one-lyric-of-60-MB.musicxml s.musicxml
zip -q9 plan-62-kB-with-a-lyric-of-60-MB.mxl META-INF/container.xml s.musicxml
many 30000000 '<!---->' >s.musicxml
zip -q9 plan-200-MB-of-comments.mxl META-INF/container.xml s.musicxml
rm -r s.musicxml META-INF

# Passages, profiles and other YAML.
many 1000000 '[' >plan-brackets.yaml
many 1000000 '{' >plan-braces.yaml
many 500000 '- ' >plan-dashes.yaml
many 500000 '? ' >plan-questions.yaml
many 250000 '&a ' >plan-anchors.yaml
many 500000 '"' >plan-quotes.yaml
many 200000 '"a" ' >plan-texts.yaml
many 1000000 ' ' >plan-blanks.yaml
awk 'BEGIN { for (i = 0; i < 90000; ++i) printf "k%d: 1\n", i }' >plan-keys.yaml
awk 'BEGIN { for (i = 0; i < 100; ++i) { printf "%*sa:\n", i, "" } }' >plan-levels.yaml
{ printf 'vowelway: 1\npassage: long\nnotes:\n'; awk 'BEGIN { for (i = 0; i < 24000; ++i) print "- {pitch: A4, duration: 0.1 s}" }'; } >plan-24000-notes.yaml
{ printf 'vowelway: 1\nsinger: x\nvoice: tenor\nvowels:\n'; awk 'BEGIN { for (i = 0; i < 30000; ++i) printf "  a%d: {fR1: 500, fR2: 1500}\n", i }'; } >profile-vowels.yaml
{ printf 'vowelway: 1\nsinger: '; many 1000000 x; printf '\nvoice: tenor\nvowels: {a: {fR1: 700, fR2: 1200}}\n'; } >profile-name.yaml
{ printf 'vowelway: 1\nsinger: x\nvoice: tenor\nvowels: {a: {fR1: 700, fR2: 1200}}\nhistory:\n'; awk 'BEGIN { for (i = 0; i < 12000; ++i) print "- {date: 2026-01-01, method: creak, vowel: a, fR1: 700, fR2: 1200}" }'; } >profile-history.yaml

# Words.
many 170000 'amore ' >words-1-MB.txt
many 700000 'amore ' >words-4-MB.txt
many 1000000 a >words-one-word.txt
many 500000 "l'" >words-apostrophes.txt
many 250000 'a-b ' >words-hyphens.txt
many 8000 "$(many 16 schwarz) " >words-compounds.txt

# Plans.
many 10000000 '[' >check-brackets.json
{ printf '{"vowelway": 1, "notes": ['; many 15000000 '0, '; printf '0]}'; } >check-numbers.json
{ printf '{"vowelway": 1, "notes": ['; many 10000000 '{},'; printf '{}]}'; } >check-objects.json

# Area functions and cues.
awk 'BEGIN { print "section_length_cm,section_index_from_glottis,area_cm2"; for (i = 0; i < 800000; ++i) print "0.5," i ",1" }' >tract-areas.csv
many 8000000 '",' >tract-quotes.csv
awk 'BEGIN { for (i = 0; i < 60000; ++i) printf "%d %d.5 a\n", i, i }' >cues-60000.txt

# Recordings: 16 bits, one channel, a second of silence at 48 kHz; the header claims something else.
wav() { # NAME RATE(4 bytes) CHANNELS(2 bytes) SIZE(4 bytes)
    { printf 'RIFF\377\377\377\177WAVEfmt \020\000\000\000\001\000'; printf "$3"; printf "$2"; printf "$2"
      printf '\002\000\020\000data'; printf "$4"; head -c 96000 /dev/zero; } >"measure-$1.wav"
}
wav rate-of-2-GHz '\377\377\377\177' '\001\000' '\000\167\001\000'
wav rate-of-100-MHz '\000\341\365\005' '\001\000' '\000\167\001\000'
wav channels '\200\273\000\000' '\000\010' '\000\167\001\000'
wav size-of-4-GB '\200\273\000\000' '\001\000' '\376\377\377\377'
