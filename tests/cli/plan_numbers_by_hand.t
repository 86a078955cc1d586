# fR1 = 700 Hz: 2fo meets it at 350 Hz, F4 and 4 cents; 35 Hz is 84 cents of 700. fR1 = 300 Hz: 150 Hz is D3 + 37 cents,
# 300 Hz D4 + 37 cents; 10 Hz is 57 cents of 300 (ISO 16, equal temperament).
$ vowelway plan --range C3..C5 --singer data/profiles/even_numbers.yaml --draws 0 --as csv | cut -d, -f1-6 | grep -E "^(a,F4|a,E4|a,D4|i,D4|i,D3|i,E4)"
i,D3,146.83,300,2200,turning
i,D4,293.66,300,2200,meeting
i,E4,329.63,300,2200,above
a,D4,293.66,700,1200,open
a,E4,329.63,700,1200,open
a,F4,349.23,700,1200,turning
$ vowelway plan data/profiles/rising_fifth.yaml --singer data/profiles/even_numbers.yaml --draws 0 --as json | grep -A 6 '"turning": {'
   "turning": {
    "harmonic": 2,
    "resonance": 1,
    "hz": 150.0,
    "pitch": "D3",
    "cents": 37.0,
    "sd_cents": 56.8
--
   "turning": {
    "harmonic": 2,
    "resonance": 1,
    "hz": 350.0,
    "pitch": "F4",
    "cents": 3.8,
    "sd_cents": 84.5
$ vowelway plan data/profiles/rising_fifth.yaml --singer data/profiles/even_numbers.yaml --draws 0 --as csv | cut -d, -f1-11
measure,beat,pitch,fo_hz,start_s,duration_s,syllable,vowel,vowel_from,zone,p_turned
1,1,D3,146.83,0,2,,a,typed,open,0
1,3,F4,349.23,2,1,,a,typed,turning,0.482
1,4,A4,440,3,1,,i,typed,above,1
