# A resonance is a frequency and a pitch: F5 +20 c is 706.6 Hz; 300 Hz is D4 +37 c (293.66 Hz in equal temperament).
$ vowelway profile show data/profiles/demo_tenor.yaml
Demo tenor
voice: tenor; range: B2..C5; A4 = 440 Hz
source: creak, 2026-10-03 (third lesson)
vocal tract: 17.0 cm ±0.8, estimated from the upper resonances of 4 vowels, as for a tube

vowel   fR1 Hz  as a pitch     fR2 Hz  as a pitch       fR3 Hz  as a pitch   known by
i      300 ±20  D4 ±1.1 st   2200 ±70  C♯7 ±0.5 st    2950 ±90  F♯7 ±0.5 st  creak, 2026-10-03
ɛ      560 ±25  C♯5 ±0.8 st  1800 ±60  A6 ±0.6 st     2550 ±90  E♭7 ±0.6 st
a      705 ±20  F5 ±0.5 st   1250 ±60  E♭6 ±0.8 st  2500 ±125*  E♭7 ±0.8 st  creak, 2026-10-03
u      330 ±20  E4 ±1 st      780 ±60  G5 ±1.3 st     2350 ±90  D7 ±0.7 st
* deviation assumed, not measured

Against the average voices: semitones above them, mean over the vowels both have

voice          fR1   fR2   fR3  vowels  distance
tenor         +0.5  -0.5  +0.1       4       0.3
countertenor  +0.5  -0.5  +0.1       4       0.3
baritone      +1.2  +0.1  +0.7       4       0.5
bass          +1.8  +0.8  +1.3       4       0.9
alto          -0.9  -1.9  -1.2       4       1.0
mezzo         -1.4  -2.5  -1.7       4       1.3
soprano       -1.9  -3.0  -2.1       4       1.7
treble        -3.6  -4.7  -3.8       4       2.5
distance: 1 is how far apart voices of one type usually lie; resonances show a voice type only
    roughly
! assumed: the profile gives no deviation for /a/: the usual one for the method "creak" is assumed
