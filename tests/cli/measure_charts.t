# A map of what was measured, and a wrong ending refused before any work.
$ vowelway measure data/measuring/creak_e_a_o.ogg --vowels "e a o" --voice tenor --date 2026-11-01 -o map.svg -o report.json
! ...
! wrote map.svg
! wrote report.json
$ grep -o "<title>[^<]*</title>" map.svg
<title>Vowels measured: Average tenor</title>
$ vowelway check data/measuring/creak_e_a_o.ogg --vowels "e a o" --singer tenor --size tablet --grey -o check.pdf -o check.png
! ...
! wrote check.pdf
! wrote check.png
$ head -c 5 check.pdf
%PDF-
$ vowelway check take.wav --vowels a --singer tenor -o check.doc
! --output: check.doc has no known ending; use one of .txt .json .pdf .svg .png
! ...
-> 2
