# A whisper and a creak of the same vowels: the singer's own shift is learned, the profile begun, and a new creak compared with it.
$ vowelway measure data/measuring/creak_e_a_o.ogg data/measuring/whisper_e_a_o.m4a --vowels "e a o" --voice tenor --into me.yaml --date 2026-11-01
the noise of the whisper is dull, 7 ± 3 dB short of height: it is made too far back; try: let the
    tongue lie forward and the breath flow more lightly
vowel  probe    takes   F1    F2    F3       fR1              fR2              fR3
...
F: peaks in the sound, Hz. fR: resonances of the tract, the probe's shift subtracted, Hz ± one SD.
...
! assumed: the resonances are expected near those of the Average tenor
! caution: data/measuring/creak_e_a_o.ogg: its peaks are all alike, as where a phone evens out the level; the deviations are wider for it; if it does, switch off automatic level and voice enhancement
! caution: whisper or creak softly and briefly; stop if it tires you; this is not medical advice
! me.yaml: 6 measurements written, 2026-11-01
$ grep -c "date: 2026-11-01, method: creak" me.yaml
3
# Each vowel's numbers are from the creak, the surer of the two, and the profile says so.
$ vowelway profile show me.yaml 2>/dev/null | grep -c " st  *creak, 2026-11-01$"
3
$ vowelway check data/measuring/creak_e_a_o.ogg --vowels "e a o" --singer me.yaml --date 2026-11-08
as last time, within 0 cents
vowel  probe  against     F1 Hz  semitones   SD  F2 Hz  semitones   SD  verdict
e      creak  last probe    420        0.0  0.0   2090        0.0  0.0  there
...
! caution: data/measuring/creak_e_a_o.ogg: its peaks are all alike, as where a phone evens out the level; the deviations are wider for it; if it does, switch off automatic level and voice enhancement
