# Two singers, one song: where their plans differ. The certainties come from draws with a fixed seed.
$ printf 'vowelway: 1\npassage: Steps\nnotes:\n  - {pitch: C4, duration: 1 s, vowel: a}\n  - {pitch: G4, duration: 2 s, vowel: e}\n  - {pitch: A4, duration: 2 s, vowel: i}\n' > steps.yaml
$ vowelway compare bass tenor --song steps.yaml
Steps: Average bass as sung and Average tenor as sung, technique classical

Left out here, being less certain than 50 %: 1 (the JSON has all).
They differ for 40 % of the time sung, certainly (at least 75 %) for 0 %.
+5: fR1 five semitones above the singer's own vowel. ?: uncertain.

of the time sung       hold  migrate  modify
Average bass as sung   20 %      0 %    80 %
Average tenor as sung  60 %      0 %    40 %
! assumed: the passage gives no tempo; 72 beats a minute are assumed
! caution: average voice: measure your own
# What is certain is listed.
$ vowelway compare charts/demo/serafina_quill.yaml mezzo --song charts/demo/giusto_amor.mxl 2>/dev/null | head -8
Poesia di Metastasio [I]: Serafina Quill (invented) and Average mezzo as sung, technique classical

bar  beat  syllable  pitch  vowel  Serafina Quill (invented)  Average mezzo as sung  certain
8       1  -ri-      G♭5    i      above, modify ɛ +11        above, modify ɛ +12      100 %
27      1  -ri-      G♭5    i      above, modify ɛ +11        above, modify ɛ +12      100 %
35      3  -ro       F4     o      close, migrate             close, hold              75 %?
35      4            G4     o      close, migrate             meeting, hold            56 %?
36      3  con-      G♭4    o      close, migrate             close, hold              67 %?
$ vowelway compare bass tenor --song steps.yaml -o both.json -o both.csv -o both.pdf 2>/dev/null; ls both*
both.csv
both.json
both.pdf
$ grep -c '"differ_in": null' both.json
2
# Three are too many for one sheet, and a song says its own vowels.
$ vowelway compare bass tenor alto --song steps.yaml
! --song: compares two singers at a time
! ...
-> 2
$ vowelway compare bass tenor --song steps.yaml --vowels "i a"
! --vowels: cannot be used with --song: the vowels come from the words of the song
! ...
-> 2
