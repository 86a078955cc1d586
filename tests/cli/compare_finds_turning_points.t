# 2fo = fR1: 300 Hz turns at 150 Hz, D3 +37 c; an average voice says so.
$ vowelway compare data/profiles/demo_tenor.yaml bass --vowels "i a"
Where each vowel turns (2fo = fR1)

vowel  Demo tenor  Average bass
i      D3 ±1.1 st  C♯3 ±1.8 st
a      F4 ±0.5 st  E4 ±1.3 st

Where the voice meets the resonance (fo = fR1), an octave higher

vowel  Demo tenor  Average bass
i      D4 ±1.1 st  C♯4 ±1.8 st
a      F5 ±0.5 st  E5 ±1.3 st

Semitones from Demo tenor

vowel  Average bass
i            -1.8
a            -1.0
* further apart than the uncertainty of both: 95 % sure which is higher

Passaggio in the handbooks: generic, from memory (R. Miller 1986, 2000); no singer was measured
  lyric tenor: D4 and G4
  lyric bass: A♭3 and D♭4

Average bass: average voice: measure your own
! assumed: the profile gives no deviation for /a/: the usual one for the method "creak" is assumed
! caution: Average bass: average voice: measure your own
$ vowelway compare tenor bass --vowels a --as csv
vowel,singer,voice,average,estimated,fR1_hz,fR1_sd_hz,fR2_hz,fR2_sd_hz,turning_hz,turning_pitch,turning_cents,meeting_hz,meeting_pitch,meeting_cents,sd_cents,cents_from_first,sd_of_interval_cents,p_higher,clear
a,Average tenor,tenor,true,false,720,55,1310,120,360,F♯4,-47.4,720,F♯5,-47.4,127.4,,,,
a,Average bass,bass,true,false,665,50,1210,110,332.5,E4,15,665,E5,15,125.5,-137.6,178.9,0.2209,false
! caution: Average tenor: average voice: measure your own
! caution: Average bass: average voice: measure your own
$ vowelway compare tenor
! two singers, or --voices is required
! Run with --help for more information.
-> 2
$ vowelway compare tenor bass -o x.docx
! --output: x.docx has no known ending; use one of .txt .csv .json .pdf .svg .png
! Run with --help for more information.
-> 2
