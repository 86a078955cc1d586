# Exit code 0 means that all of it arrived: every command against a device that takes nothing.
$ vowelway --version >/dev/full
! cannot write to standard output
!   check the disk, or the program that reads the output
-> 3
$ vowelway --help >/dev/full
! cannot write to standard output
!   check the disk, or the program that reads the output
-> 3
$ vowelway words --help >/dev/full
! cannot write to standard output
!   check the disk, or the program that reads the output
-> 3
$ vowelway words amore --language it >/dev/full
! cannot write to standard output
!   check the disk, or the program that reads the output
-> 3
$ vowelway words amore --language it --as json -o - >/dev/full
! cannot write to standard output
!   check the disk, or the program that reads the output
-> 3
$ vowelway profile show tenor >/dev/full
! caution: average voice: measure your own
! cannot write to standard output
!   check the disk, or the program that reads the output
-> 3
$ vowelway profile history data/profiles/demo_tenor.yaml >/dev/full
! cannot write to standard output
!   check the disk, or the program that reads the output
-> 3
$ vowelway tract data/acoustics/twin_tubes.csv >/dev/full
! assumed: columns ignored: remark
! cannot write to standard output
!   check the disk, or the program that reads the output
-> 3
$ vowelway plan --range C4..E4 --vowels a --singer tenor --draws 0 >/dev/full
! caution: average voice: measure your own
! cannot write to standard output
!   check the disk, or the program that reads the output
-> 3
$ vowelway explain data/profiles/rising_fifth.yaml --measure 1 --singer tenor --draws 0 >/dev/full
! ...
! cannot write to standard output
!   check the disk, or the program that reads the output
-> 3
$ vowelway compare tenor bass >/dev/full
! ...
! cannot write to standard output
!   check the disk, or the program that reads the output
-> 3
$ vowelway measure data/measuring/creak_e_a_o.ogg --vowels "e a o" --voice tenor --into new.yaml >/dev/full
! ...
! cannot write to standard output
!   check the disk, or the program that reads the output
-> 3
$ vowelway check data/measuring/creak_e_a_o.ogg --vowels "e a o" --singer tenor >/dev/full
! ...
! cannot write to standard output
!   check the disk, or the program that reads the output
-> 3
# A closed standard output is no better.
$ vowelway words amore --language it >&-
! cannot write to standard output
!   check the disk, or the program that reads the output
-> 3
$ vowelway hear --vowel i --singer tenor --only low --seconds 1 >/dev/full
! ...
! cannot write to standard output
!   check the disk, or the program that reads the output
-> 3
$ vowelway profile new --voice tenor >/dev/full
! cannot write to standard output
!   check the disk, or the program that reads the output
-> 3
$ vowelway keys data/profiles/rising_fifth.yaml --singer tenor --draws 0 >/dev/full
! ...
! cannot write to standard output
!   check the disk, or the program that reads the output
-> 3
$ vowelway survey data/profiles/rising_fifth.yaml --singer tenor --keys 0..0 >/dev/full
! ...
! cannot write to standard output
!   check the disk, or the program that reads the output
-> 3
$ vowelway studio charts/demo >/dev/full
! cannot write to standard output
!   check the disk, or the program that reads the output
-> 3
