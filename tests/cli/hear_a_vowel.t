# fR1 and fR2 as tones, bands of noise and a whisper: /i/ of the invented singer with even numbers lies at 300 and 2200 Hz.
# D4 is 293.66 Hz at A4 = 440 Hz.
$ vowelway hear --singer data/profiles/even_numbers.yaml --vowel i --only low
 0:00.1  fR1 of /i/, 300 Hz (D4 +37 c), a tone
...
! caution: whisper softly and briefly; a loud whisper strains the voice
! caution: begin with the volume low, above all on headphones; this is a model and no voice to imitate
$ vowelway hear --singer data/profiles/even_numbers.yaml --vowel i --seconds 1 2>/dev/null | grep -c "^ *0:0"
6
# The two faults stand between whispers as they should be.
$ vowelway hear --singer data/profiles/even_numbers.yaml --vowel i --only whisper --faults 2>/dev/null | grep -c whispered
4
$ vowelway hear --singer data/profiles/even_numbers.yaml --vowel i --only whisper --faults 2>/dev/null | grep -o "a fault, exaggerated: [a-z ]*"
a fault, exaggerated: larynx raised
a fault, exaggerated: tongue drawn back
# The same bytes each time, in both forms, and as WAV on standard output.
$ for n in 1 2; do vowelway hear --singer data/profiles/even_numbers.yaml --vowel i --seconds 0.5 -o $n.wav -o $n.flac 2>/dev/null; done; cmp 1.wav 2.wav && cmp 1.flac 2.flac && vowelway hear --singer data/profiles/even_numbers.yaml --vowel i --seconds 0.5 --as wav -o - 2>/dev/null | cmp - 1.wav && head -c 4 1.flac
fLaC
# A vowel that the profile lacks is estimated, and that is said.
$ vowelway hear --singer data/profiles/even_numbers.yaml --vowel y --only low 2>&1 >/dev/null | grep -o "guessed: /y/ is not measured"
guessed: /y/ is not measured
# Slides: kept through the turning point and the meeting point, and changed.
$ vowelway hear --singer tenor --vowel e --glide --seconds 3 --draws 0 2>/dev/null | tr -s ' \n' ' ' | grep -oE "the shape kept|changed as planned"
the shape kept
the shape kept
changed as planned
