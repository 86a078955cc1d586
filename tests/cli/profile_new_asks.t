# Questions and answers: nothing takes what stands in brackets, a wrong answer is told and asked for again.
$ printf 'Ada Rossa\nH3..A4\nC3..A4\n\ncreak\n\ni a\n330 Hz ± 20\n2400 Hz ± 70\n10 Hz\n720 Hz\nF6\n' | vowelway profile new ask.yaml --voice tenor --ask 2>told; cat ask.yaml; grep -A2 -E 'H3|10 Hz' told | cut -c1-60
vowelway: 1
singer: "Ada Rossa"
voice: tenor
range: C3..A4
a4: 440 Hz
source: {method: creak}
vowels:
  i: {fR1: 330 Hz ± 20, fR2: 2400 Hz ± 70}
  a: {fR1: 720 Hz, fR2: F6}
...
# The template filled in with the same values reads as the same profile.
$ vowelway profile new filled.yaml --voice tenor --name 'Ada Rossa' 2>/dev/null; sed -i -e 's/^#range:.*/range: C3..A4/' -e 's/^#a4:.*/a4: 440 Hz/' -e 's/^#source:.*/source: {method: creak}/' -e 's/^#  i:.*/  i: {fR1: 330 Hz ± 20, fR2: 2400 Hz ± 70}/' -e 's/^#  a:.*/  a: {fR1: 720 Hz, fR2: F6}/' filled.yaml; vowelway profile show filled.yaml --as json >filled.json 2>filled.told; vowelway profile show ask.yaml --as json >ask.json 2>ask.told; cmp filled.json ask.json && cmp filled.told ask.told && grep -c '"ipa"' ask.json
2
# Answers that end too early write nothing.
$ printf 'Ada Rossa\n' | vowelway profile new none.yaml --voice tenor --ask 2>&1 | tail -2; ls none.yaml 2>&1 | grep -c 'No such'
  > the answers end before the profile is complete
  nothing was written; answer each question, or fill in the template instead
1
$ vowelway profile new ask.yaml --voice tenor --ask </dev/null
! ask.yaml is there already
!   name a new file
-> 3
