# A word that is no command: which one, what was probably meant, and what there is.
$ vowelway plam
! there is no command "plam"; did you mean plan?
!   the commands are check, compare, explain, hear, keys, lesson, measure, open, page, plan, profile, studio, survey, tract, words
!   vowelway --help tells what they do
-> 2
$ vowelway xylophone
! there is no command "xylophone"
! ...
-> 2
