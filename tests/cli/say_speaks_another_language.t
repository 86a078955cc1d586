# What is told comes from a table; --say and VOWELWAY_SAY choose it, before or after the command, and nothing else does.
$ vowelway plan --range C3..E3 --singer tenor --vowels i --draws 0 2>/dev/null | head -4
Plan of the range C3..E3
singer: Average tenor as sung; technique: classical; A4 = 440 Hz
average voice: measure your own

$ vowelway --say de plan --range C3..E3 --singer tenor --vowels i --draws 0 2>/dev/null | head -4
Plan für den Umfang C3..E3
Stimme: Durchschnittstenor (gesungen); Technik: classical; A4 = 440 Hz
Durchschnittsstimme: die eigene messen

$ LC_ALL=C LANG=de_DE.UTF-8 LANGUAGE=de vowelway plan --range C3..E3 --singer tenor --vowels i --draws 0 2>/dev/null | head -1
Plan of the range C3..E3
$ VOWELWAY_SAY=de vowelway plan --range C3..E3 --singer tenor --vowels i --draws 0 2>/dev/null | head -1
Plan für den Umfang C3..E3
$ VOWELWAY_SAY=de vowelway plan --say=en --range C3..E3 --singer tenor --vowels i --draws 0 2>/dev/null | head -1
Plan of the range C3..E3
$ vowelway nix --say de
! es gibt keinen Befehl "nix"
!   die Befehle sind check, compare, explain, hear, keys, lesson, measure, open, page, plan, profile, studio, survey, tract, words
!   vowelway --help sagt, was sie tun
-> 2
$ vowelway --say xx plan --range C3..E3 --singer tenor
! "xx" is no language that the program speaks
!   name one of en, de, or a file of your own
-> 3
$ printf 'language: xy\nsentences:\n  "Plan of the range {0}": "{0}: P"\n' > xy.yaml; vowelway plan --say xy.yaml --range C3..E3 --singer tenor --vowels i --draws 0 2>/dev/null | head -2
C3..E3: P
singer: Average tenor as sung; technique: classical; A4 = 440 Hz
$ printf 'language: xy\nsentences:\n  "Plan of the range {0}": "P"\n' > xy.yaml; vowelway plan --say xy.yaml --range C3..E3 --singer tenor
! xy.yaml:3:28: the places {0}, {1} .. are not those of the English sentence
!   use each place of "Plan of the range {0}", in any order
-> 3
# Keys and kinds of the JSON stay as they are; sentences are said.
$ vowelway plan --range C3..E3 --singer tenor --vowels i --draws 0 --as json --say de 2>/dev/null | grep -E '"(advice|why|technique)"' | head -3 | cut -c1-60
 "technique": "classical",
     "advice": "hold",
     "why": "2fo bei 262 Hz liegt unter fR1 bei 290 Hz: man 
# A refusal too, of a reader, of a file and of the command line.
$ vowelway plan --say de nirgends.mxl --singer tenor
! nirgends.mxl: diese Datei gibt es nicht
!   Namen und Ordner prüfen
-> 3
$ vowelway plan --say de --range C4..C3 --singer tenor
! der Umfang C4..C3 beginnt mit dem höheren Ton
!   den tieferen Ton zuerst schreiben: C3..C4
-> 3
$ printf 'vowelway: 1\nvoice: tenor\nvowels:\n  i: {fR1: 300 Hz}\n' > arm.yaml; vowelway profile show arm.yaml --say de
! arm.yaml:4:6: /i/ hat kein fR2
!   beide angeben: {fR1: 540 Hz ± 25, fR2: 1780 Hz ± 60}
-> 3
$ vowelway plan --say de --range C3..E3 --singer tenor --draws viele
! --draws: viele liegt nicht zwischen 0 und 10000
! Mehr dazu mit --help.
-> 2
$ vowelway plan --say de --range C3..E3 --singer tenor --draws 100000
! --draws: 100000 liegt nicht zwischen 0 und 10000
! Mehr dazu mit --help.
-> 2
$ vowelway plan --say de --range C3..E3
! --singer fehlt: ein Profil (ich.yaml) oder ein Fach (tenor) nennen
! Mehr dazu mit --help.
-> 2
$ vowelway plan --say de --range C3..E3 --singer tenor --chart kreis
! --chart: kreis gehört nicht zu {pencil,sheet,vowels,map,choir}
! Mehr dazu mit --help.
-> 2
$ vowelway plan --say de --range C3..E3 --singer tenor --unbekannt
! unerwartet: --unbekannt
! Mehr dazu mit --help.
-> 2
$ vowelway --say de
! ein Befehl fehlt
! Mehr dazu mit --help.
-> 2
