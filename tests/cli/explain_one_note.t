# fo = 440 Hz lies above fR1 = 300 Hz: nothing but a change brings a resonance to a harmonic. Harmonics are 440 n Hz, eleven of
# them up to 5 kHz. What is decided is the plan's own.
$ vowelway explain data/profiles/rising_fifth.yaml --singer data/profiles/even_numbers.yaml --measure 1 --beat 4 --draws 20
Rising fifth
singer: Even numbers; technique: classical
bar 1, beat 4: A4, fo 440 Hz, 1 s, vowel i
...
cost of                         kept  changed
...
$ vowelway explain data/profiles/rising_fifth.yaml --singer data/profiles/even_numbers.yaml --measure 1 --beat 4 --draws 0 | grep -oE '^advice: [a-z]+|^fR1 Hz +300 ±10'
advice: modify
fR1 Hz   300 ±10
$ vowelway explain data/profiles/rising_fifth.yaml --singer data/profiles/even_numbers.yaml --measure 1 --beat 4 --draws 0 | awk '/^[0-9]*fo / {print $1, $2}'
fo 440
2fo 880
3fo 1320
4fo 1760
5fo 2200
6fo 2640
7fo 3080
8fo 3520
9fo 3960
10fo 4400
11fo 4840
$ vowelway explain data/profiles/rising_fifth.yaml --singer data/profiles/even_numbers.yaml --measure 1 --beat 4 --as json | grep '"why"' | sed 's/^ *//; s/,$//' > explained
$ vowelway plan data/profiles/rising_fifth.yaml --singer data/profiles/even_numbers.yaml --as json | grep '"why"' | sed 's/^ *//; s/,$//' | tail -1 | diff - explained
# Without --beat the first note of the bar: 2fo = 294 Hz is below fR1 = 700 Hz, nothing is changed.
$ vowelway explain data/profiles/rising_fifth.yaml --singer data/profiles/even_numbers.yaml --measure 1 --as json | grep -E '"advice"|"changed"'
  "advice": "hold",
 "changed": null,
# Where nothing is sung, the nearest notes are named.
$ vowelway explain data/profiles/rising_fifth.yaml --singer data/profiles/even_numbers.yaml --measure 1 --beat 2
! data/profiles/rising_fifth.yaml: no note with a vowel begins at bar 1, beat 2
!   the nearest are bar 1, beat 1 (D3) and bar 1, beat 3 (F4)
-> 3
$ vowelway explain data/profiles/rising_fifth.yaml --singer data/profiles/even_numbers.yaml --measure 9
! data/profiles/rising_fifth.yaml: no note with a vowel begins at bar 9
!   there is no such bar; the sung notes go from bar 1, beat 1 (D3) to bar 1, beat 4 (A4)
-> 3
$ vowelway explain data/profiles/rising_fifth.yaml --singer data/profiles/even_numbers.yaml --measure 1 -o note.csv
! --output: note.csv has no known ending; use one of .txt .json .pdf .svg .png
! ...
-> 2
