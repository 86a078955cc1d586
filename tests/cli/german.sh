#!/bin/sh
# german.sh PROGRAM SOURCE_DIR: what is written with --say de has no word that only the English sentences know. The words
# are those of the table itself: a word of an English sentence that no German one has. A song's own words, names and what
# is typed (options, kinds, techniques) are left out below. What readers of files refuse is not in the table yet.
set -u
program=$1 source=$2
cd "$source" || exit 1
work=$(mktemp -d) || exit 1
trap 'rm -rf "$work"' EXIT
table=profiles/wordings/de.yaml
words() { tr -cs 'A-Za-zÄÖÜäöüß' '\n' | grep -E '^.{3,}$' | sort -u; }
grep '^  "' "$table" | sed 's/": ".*//' | words >"$work/english"
grep '^  "' "$table" | sed 's/.*": "//' | words >"$work/german"
comm -23 "$work/english" "$work/german" | sort -u >"$work/suspects"
[ "$(wc -l <"$work/suspects")" -gt 300 ] || { echo "the table has too few words to tell"; exit 1; }

bad=0
# german WHAT ALLOWED COMMAND..: runs the program; ALLOWED are words of the input.
german() {
    what=$1 allowed=$2
    shift 2
    "$program" --say de "$@" >"$work/out" 2>"$work/err" || { echo "$what: failed"; cat "$work/err"; bad=1; return; }
    for file in "$work"/*.svg "$work/out" "$work/err"; do
        [ -f "$file" ] && sed -e 's/<[^>]*>/ /g' "$file"
    done | words >"$work/said"
    rm -f "$work"/*.svg
    [ "$(wc -l <"$work/said")" -gt 1 ] || { echo "$what: says next to nothing"; bad=1; }
    printf '%s\n' $allowed classical vowelway | sort -u >"$work/allowed"
    found=$(comm -12 "$work/said" "$work/suspects" | comm -23 - "$work/allowed" | tr '\n' ' ')
    [ -z "$found" ] || { echo "$what: English in German: $found"; bad=1; }
}

song=charts/demo/giusto_amor.mxl singer=charts/demo/serafina_quill.yaml
invented="invented bar before the third lesson" # the song sings "barbaro"
german "plan as text" "$invented" plan $song --singer $singer --draws 10
german "plan with numbers" "$invented" plan $song --singer $singer --draws 10 --numbers
german "plan in lines" "$invented" plan $song --singer tenor --draws 0 --linear
german "plan of a range" "" plan --range C3..A4 --singer tenor --draws 0
german "pencil view" "$invented" plan $song --singer $singer --draws 10 --chart pencil -o "$work/p.svg"
german "passage sheet" "$invented" plan $song --singer $singer --draws 10 --chart sheet --numbers -o "$work/s.svg"
german "vowels by pitch" "$invented" plan $song --singer $singer --draws 10 --chart vowels -o "$work/v.svg"
german "resonance map" "$invented" plan $song --singer $singer --draws 10 --chart map -o "$work/m.svg"
german "lesson" "$invented" lesson $song --singer $singer --draws 10
german "lesson sheet" "$invented" lesson $song --singer $singer --draws 10 -o "$work/l.svg"
german "singer's sheet" "$invented" profile show $singer -o "$work/i.svg"
german "profile" "$invented" profile show $singer
german "history" "$invented" profile history $singer
german "a new profile" "creak typed sung whisper method note source singer voice range voice vowels take into new tenor measure date" profile new --voice tenor
german "one note" "$invented" explain $song --singer $singer --measure 8 --beat 1 --draws 20
german "one note drawn" "$invented" explain $song --singer $singer --measure 8 --beat 1 --draws 20 -o "$work/e.svg"
german "voices compared" "" compare tenor baritone --vowels "i a u"
german "voices compared, drawn" "" compare tenor baritone --vowels "i a u" -o "$work/c.svg"
german "two plans" "$invented" compare $singer mezzo --song $song --draws 10
german "two plans drawn" "$invented" compare $singer mezzo --song $song --draws 10 -o "$work/b.svg"
german "what to record" "" measure --script --vowels "i a"
take=tests/data/measuring/creak_e_a_o.ogg
german "measured" "" measure $take --vowels "e a o" --voice tenor
german "measured, drawn" "" measure $take --vowels "e a o" --voice tenor -o "$work/t.svg"
german "checked" "" check $take --vowels "e a o" --singer tenor
german "checked, drawn" "" check $take --vowels "e a o" --singer tenor -o "$work/k.svg"
german "heard" "" hear --singer tenor --vowel e --seconds 0.3
german "words" "" words "dolce sospiro" --language it
exit $bad
