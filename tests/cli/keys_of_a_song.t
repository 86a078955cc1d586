# The demo in every key. Two singers, and the key they can share; the proposed key is marked.
$ vowelway keys charts/demo/giusto_amor.mxl --singer charts/demo/serafina_quill.yaml --keys -2..2 2>/dev/null | head -12
Poesia di Metastasio [I]: which key, technique classical

Serafina Quill (invented): 2 semitones lower (C♯4..E5). Against the key as written: changes of
    shape, lies high, level missing.

 key  signs  from  to   mostly    change  long  against  by what
  +2  3♭     F4    A♭5  C5..E♭5     55 %     1     0.69  lies high, changes of shape
  +1  2♯     E4    G5   B4..D5      49 %     3     0.55  lies high, changes of shape
   0  5♭     E♭4   G♭5  B♭4..D♭5    45 %     0     0.42  changes of shape, lies high
  -1  -      D4    F5   A4..C5      38 %     0     0.35  changes of shape, lies high
* -2  5♯     C♯4   E5   G♯4..B4     26 %     0     0.30

$ vowelway keys charts/demo/giusto_amor.mxl --singers charts/demo 2>/dev/null | grep -E "^(Ottavio|Serafina|One key)" | cut -c1-24
Ottavio Brandt: a semito
Serafina Quill (invented
One key for all: 3 semit
$ vowelway keys charts/demo/giusto_amor.mxl --singer tenor --keys 0..1 --as csv 2>/dev/null | cut -d, -f1-6
singer,semitones,fifths,low,high,quartile1
Average tenor as sung,0,-5,E♭3,G♭4,B♭3
Average tenor as sung,1,2,E3,G4,B3
$ vowelway keys charts/demo/giusto_amor.mxl
! ...
-> 2
$ vowelway keys charts/demo/giusto_amor.mxl --singer tenor --keys 3..1
! --keys: 3..1: the lower comes first, within two octaves up and down
! ...
-> 2
$ vowelway keys charts/demo/giusto_amor.mxl --singer tenor --keys many
! --keys: many is not a range of semitones; write -6..6
! ...
-> 2
$ mkdir empty; vowelway keys charts/demo/giusto_amor.mxl --singer empty
! empty: there is no profile in this folder
! ...
-> 3
