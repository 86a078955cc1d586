# A bad command line ends with 2, bad input with 3; each says what is wrong and how to mend it.
$ vowelway plan --singer tenor
! a SCORE or --range is required
! ...
-> 2
$ vowelway plan --range C3..A4
! --singer is missing: name a profile (me.yaml) or a voice (tenor)
! ...
-> 2
$ vowelway plan --range C3..A4 --singer tenor -o plan.doc
! --output: plan.doc has no known ending; use one of .txt .csv .json .pdf .svg .png .mxl .musicxml .xml
! ...
-> 2
$ vowelway plan --range C3..A4 --singer tenor -o marked.mxl
! --output: marked.mxl is a score, and there is no SCORE to mark; name one
! ...
-> 2
$ vowelway plan --range A4..C3 --singer tenor
! the range A4..C3 begins with the higher pitch
!   write the lower pitch first: C3..A4
-> 3
$ vowelway plan --range C3..A4 --singer tnor
! no singer "tnor": neither a file nor a built-in voice
!   name a profile file, or one of bass, baritone, tenor, countertenor, alto, mezzo, soprano, treble
-> 3
$ vowelway plan --range C3..A4 --singer tenor --technique bell
! no technique "bell": neither a file nor one that comes with the program
!   name a technique file, or one of belt, choral, classical, covered, tuned-top, tuned
-> 3
$ vowelway plan nothing.mxl --singer tenor
! nothing.mxl: there is no such file
!   check the name and the folder
-> 3
$ vowelway plan --range C3..A4 --singer tenor --vowels "i q"
! "q" is not a vowel
!   "q" is not known; write one symbol of the IPA vowel chart with its diacritics (ɛ, a̝, õ) or X-SAMPA (E, a_r, o~)
-> 3
$ vowelway plan --range C3..A4 --singer tenor --a4 4400
! --a4 4400 is not a tuning of A4
!   give 380 to 500 Hz; the standard is 440 Hz
-> 3
# Nothing is half-written: a folder that is not there.
$ vowelway plan --range C3..A4 --singer tenor --vowels a -o no/such/plan.json
! caution: average voice: measure your own
! no/such/plan.json: cannot write here: No such file or directory
!   check the name, and that the folder exists
-> 3
