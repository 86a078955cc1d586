# From 250 to 300 Hz is 12 log2(1.2) = 3.2 semitones, more than twice the deviations (68 and 112 cents); from 650 to 707 Hz is not.
$ vowelway profile history data/profiles/demo_tenor.yaml
vowel  date        method   probes   fR1 Hz  as a pitch  change    fR2 Hz  as a pitch  change  note
i      2026-09-01  creak         3  250 ±10  B3 +21 c            2200 ±70  C♯7 -14 c
       2026-10-03  creak         3  300 ±20  D4 +37 c    +3.2 !  2200 ±70  C♯7 -14 c    0.0
a      2026-09-01  whisper       2  650 ±60  E5 -24 c            1300 ±90  E6 -24 c
       2026-10-03  creak         3  707 ±20  F5 +20 c    +1.4    1250 ±60  E♭6 +8 c    -0.7
change: semitones since the previous measurement; ! more than twice the combined deviation
the singer's own shift for a whisper: fR1 +230 ±60 Hz fR2 +100 ±70 Hz; from 1 vowel
$ vowelway profile history tenor
! the average tenor has no history
!   name the profile of a singer
-> 3
$ vowelway profile history data/profiles/demo_tenor.yaml --vowels y
no measurements in this profile
