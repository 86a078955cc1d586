# What means nothing for what is asked is refused (2); what is not in the score too (3).
$ vowelway hear --singer tenor
! a SCORE or --vowel is required
! ...
-> 2
$ vowelway hear --singer tenor --vowel qq
! ...
-> 3
$ vowelway hear --singer tenor --vowel i --tempo 60
! --tempo: has a meaning only with a SCORE as a whole, without --measure
! ...
-> 2
$ vowelway hear --singer tenor --vowel i -o line.mid
! --output: line.mid would hold a line of notes, and one note or vowel is heard; use .wav or .flac
! ...
-> 2
$ vowelway hear --singer tenor --vowel i -o i.mp3
! --output: i.mp3 has no known ending; use one of .txt .wav .flac .mid
! ...
-> 2
$ vowelway hear --singer tenor --vowel i --only kept
! --only: a vowel is heard as low, high, tones, noise or whisper
! ...
-> 2
$ vowelway hear data/profiles/rising_fifth.yaml --singer tenor --tempo 0
! --tempo: Value 0 not in range 10.000000 to 400.000000
! ...
-> 2
$ vowelway hear data/profiles/rising_fifth.yaml --singer tenor --tempo nan
! --tempo: nan is not a number
! ...
-> 2
$ vowelway hear --singer tenor --vowel i --seconds nan
! --seconds: nan is not a number
! ...
-> 2
$ vowelway hear data/profiles/rising_fifth.yaml --singer tenor -o line.foo
! --output: line.foo has no known ending; use one of .txt .wav .flac .mid
! ...
-> 2
$ vowelway hear data/profiles/rising_fifth.yaml --singer tenor --from 1 --to 7
! data/profiles/rising_fifth.yaml: there is no bar 7
!   the bars go from 1 to 1; the notes sung from 1 to 1
-> 3
$ vowelway hear data/profiles/rising_fifth.yaml --singer tenor --from 7
! data/profiles/rising_fifth.yaml: there is no bar 7
!   the bars go from 1 to 1; the notes sung from 1 to 1
-> 3
$ vowelway hear data/profiles/rising_fifth.yaml --singer tenor --measure 9
! data/profiles/rising_fifth.yaml: no note with a vowel begins at bar 9
!   there is no such bar; the sung notes go from bar 1, beat 1 (D3) to bar 1, beat 4 (A4)
-> 3
# A slide that turns nowhere in the range.
$ vowelway hear --singer tenor --vowel i --glide --range C5..D5 --draws 0
! caution: average voice: measure your own
! /i/ neither turns nor meets within the range planned
!   give a wider one, such as --range F♯2..A♭4
-> 3
# A disk that is full is said, whether it is standard output or a file.
$ vowelway hear --singer tenor --vowel i --only low --seconds 1 --as wav -o - 2>&1 >/dev/full | tail -2
cannot write to standard output
  check the disk, or the program that reads the output
$ vowelway hear --singer tenor --vowel i --only low --seconds 1 -o nowhere/i.wav 2>&1 | grep -c nowhere/i.wav
1
$ ln -s /dev/full full.flac; vowelway hear --singer tenor --vowel i --only low --seconds 1 -o full.flac 2>&1 | tail -2
full.flac: is a device or a pipe, not a file
  name a file, or - for standard output
# A file that may not grow: what was begun is not left behind.
$ (ulimit -f 20; vowelway hear --singer tenor --vowel i -o i.wav 2>&1 | tail -2); ls -a | grep -c wav
i.wav: cannot write: File too large
  choose another disk, or raise the limit on file size
0
-> 1
