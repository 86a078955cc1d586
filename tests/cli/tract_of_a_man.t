# Story, Titze & Hoffman 1996, Table III; their simulation (Table IV): /i/ 337 2340 3158 Hz, /ɑ/ 738 1093 2757 Hz, with side
# branches that the table of areas leaves out.
$ vowelway tract data/acoustics/story1996_male.csv
i, 16.7 cm
resonance    Hz  bandwidth Hz
fR1         292            45
fR2        2462            60
fR3        3137           264
...
compliant load, Hz: 292..499, 2466..2645, 3836..4244, 4631..5000
...
ɑ, 17.5 cm
resonance    Hz  bandwidth Hz
fR1         781            40
fR2        1118            57
...
! assumed: columns ignored: n_sections, tract_length_cm
