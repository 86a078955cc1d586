# Wrong profiles: place, what is wrong, how to mend it.
$ vowelway profile show data/profiles/swapped.yaml
! data/profiles/swapped.yaml:4:12: fR1 of /i/ is 900 Hz, not below its fR2 (450 Hz)
!   are they swapped, or is there a digit too many?
-> 3
$ vowelway profile show tenner
! no singer "tenner": neither a file nor a built-in voice
!   name a profile file, or one of bass, baritone, tenor, countertenor, alto, mezzo, soprano, treble
-> 3
$ vowelway profile show data
! data: is a folder, not a file
!   name a file in it
-> 3
$ vowelway profile
! a command is missing
! Run with --help for more information.
-> 2
