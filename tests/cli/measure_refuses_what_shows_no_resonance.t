# A number is given only where the sound shows it.
$ vowelway measure data/measuring/sung_high_a.ogg --vowels a --voice tenor
data/measuring/sung_high_a.ogg: sung (96 %)
data/measuring/sung_high_a.ogg 0.78-1.39 s /a/: no result: sung at 441 Hz: above 310 Hz the
    harmonics lie too far apart to show the resonances between them; creak, or sing lower
! assumed: the resonances are expected near those of the Average tenor
! caution: whisper or creak softly and briefly; stop if it tires you; this is not medical advice
! no take gives a result
!   see the reason of each above, and record again: softly and briefly, never when hoarse
-> 3
# Whose resonances?
$ vowelway measure data/measuring/whisper_e_a_o.m4a --vowels "e a o"
! there is nothing to say where this singer's resonances should be
!   name the voice (--voice tenor), a profile (--singer me.yaml), or --into an existing profile
-> 3
# Three sounds, five vowels.
$ vowelway measure data/measuring/whisper_e_a_o.m4a --vowels "i e a o u" --voice tenor
! data/measuring/whisper_e_a_o.m4a: has 3 sounds, but 5 vowels are listed: 0.8-1.6 s, 2.0-2.8 s, 3.2-4.0 s
!   give --repeat if the list is said more than once, leave pauses between the vowels, or give the times in a cue file (--cues: start, end, vowel)
-> 3
$ printf '0.8 1.6 e\n3.2 9.0 o\n' > cues.txt; vowelway measure data/measuring/whisper_e_a_o.m4a --cues cues.txt --voice tenor
! cues.txt: the cues go on to 0:09.0 but the recording ends at 0:04.9
!   use the cues of this recording
-> 3
$ vowelway measure data/measuring/tone.csv --vowels a --voice tenor
! data/measuring/tone.csv: there is no such file
!   check the name and the folder
-> 3
