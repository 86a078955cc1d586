# All parts of a hymn: each by the voice of its name, words lent where a part has none.
$ vowelway plan data/scores/own/old_hundredth.musicxml --all --draws 0 -o all.json 2>errors; grep -E '"(part|voice|words_from)":' all.json | grep -B1 -A1 -E '^   "voice"' | tr -d '\n -'; echo; grep -c "taken to be sung by" errors; grep "no words" errors
"part":"Soprano","voice":"soprano","words_from":null,"part":"Alto","voice":"alto","words_from":"Soprano","part":"Tenor","voice":"tenor","words_from":"Soprano","part":"Bass","voice":"bass","words_from":null,
4
assumed: Alto: it has no words of its own here; those of Soprano, which it sings with, are taken
assumed: Tenor: it has no words of its own here; those of Soprano, which it sings with, are taken
# For the director first: where the vowels part, and whom to ask for what.
$ vowelway plan data/scores/own/old_hundredth.musicxml --all --draws 0 2>errors | head -9; grep choir errors
For the director
32 syllables begin together; at 19 the vowels part, and for 17 of them there is one that all can
    sing.

To rehearse first
 1. bar 6: Come /ʌ/
    Soprano: jaw a little open /a/
    Soprano, Alto: turned over; Tenor, Bass: as spoken. Tune on D5: Soprano fo, Bass 3fo on its fR1.
        These rub: Alto 2fo on its fR1, Tenor 3fo on its fR1.
assumed: 4 parts: planned as a choir, in the technique choral (--technique chooses)
# Nobody is asked for more than twice a clear loss of the vowel (docs/choir.md).
$ vowelway plan data/scores/own/old_hundredth.musicxml --all --draws 0 --as json 2>/dev/null | grep -cE '"extra_cost": ([2-9]|[0-9]{2})'
0
-> 1
# The caution and the key stand once, under all parts.
$ vowelway plan data/scores/own/old_hundredth.musicxml --all --draws 0 2>/dev/null | grep -cE "^(leave|zone|advice|Never push)"
4
# Who sings may be said; the marks of all parts stand in one score.
$ vowelway plan data/scores/own/old_hundredth.musicxml --all --draws 0 --marks vowels --voices "S=charts/demo/serafina_quill.yaml, a=mezzo, Ten=tenor, 4=baritone" -o all.json -o all.musicxml 2>errors; grep -c "taken to be sung" errors; grep '^    "singer"' all.json; grep -c 'name="vowelway"' all.musicxml
0
    "singer": "Serafina Quill (invented)",
    "singer": "Average mezzo as sung",
    "singer": "Average tenor as sung",
    "singer": "Average baritone as sung",
128
# Marking the alto again leaves the marks of the others.
$ vowelway plan all.musicxml --singer mezzo --part Tenor --draws 0 --marks vowels -o again.musicxml 2>/dev/null; grep -c 'name="vowelway"' again.musicxml
96
$ vowelway plan data/scores/own/old_hundredth.musicxml --all --singer tenor
! --singer: with --all --voices says who sings
! ...
-> 2
$ vowelway plan data/scores/own/old_hundredth.musicxml --all --voices "X=tenor"
! --voices: no part begins with "X"; there are Soprano, Alto, Tenor, Bass
! ...
-> 2
$ vowelway plan data/scores/own/old_hundredth.musicxml --all --voices tenor
! --voices: "tenor" names no part and singer; write S=soprano, A=alto
! ...
-> 2
$ vowelway plan data/scores/own/old_hundredth.musicxml --all --part Alto -o alto.pdf
! --part: with --all every part is planned
! ...
-> 2
$ vowelway plan data/scores/own/old_hundredth.musicxml --singer alto --chart choir -o alto.pdf
! --chart: the choir sheet goes with --all
! ...
-> 2
