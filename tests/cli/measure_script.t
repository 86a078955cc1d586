# What the student is to do.
$ vowelway measure --script --vowels "i a u" --repeat 2
Recording your vowels
...
The vowels, in this order, 2 times:   i  a  u
...
# As a card to print, in another language too; it has no numbers.
$ vowelway measure --script --vowels "i a u" -o card.pdf --say de
! geschrieben: card.pdf
$ head -c 5 card.pdf
%PDF-
$ vowelway measure --script -o card.json
! --script: is a text or a page to print: .txt, .pdf, .svg or .png
! ...
-> 2
$ vowelway measure --voice tenor --vowels a
! AUDIO is required
! ...
-> 2
# The reasons are on the screen, also with -o.
$ vowelway measure data/measuring/sung_high_a.ogg --vowels a --voice tenor -o high.json
! ...
! data/measuring/sung_high_a.ogg 0.78-1.39 s /a/: no result: sung at 441 Hz: above 310 Hz the harmonics lie too far apart to show the resonances between them; creak, or sing lower
! no take gives a result
!   see the reason of each above, and record again: softly and briefly, never when hoarse
-> 3
# A forced kind that the sound contradicts.
$ vowelway measure data/measuring/creak_e_a_o.ogg --vowels "e a o" --voice tenor --probe whisper
data/measuring/creak_e_a_o.ogg: creak (sure)
...
! ...
! no take gives a result
!   see the reason of each above, and record again: softly and briefly, never when hoarse
-> 3
# A wrong order is named.
$ vowelway measure data/measuring/whisper_e_a_o.m4a --vowels "o a e" --voice tenor
...
! ...
! caution: data/measuring/whisper_e_a_o.m4a: the sounds fit the order "e a o" better than the one listed (9999 to 1)
! ...
-> 3
