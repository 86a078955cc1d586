# Numbers that are none, empty values, days that are none, a folder for a file: told before any work.
$ vowelway explain data/profiles/rising_fifth.yaml --singer tenor --measure 1 --beat nan
! --beat: nan is not a number
! ...
-> 2
$ vowelway plan data/profiles/rising_fifth.yaml --singer tenor --transpose nan
! --transpose: nan is not a number
! ...
-> 2
$ vowelway measure data/measuring/creak_e_a_o.ogg --vowels "" --voice tenor
! --vowels: is empty; leave it out or name a value
! ...
-> 2
$ vowelway compare tenor baritone --vowels ""
! --vowels: is empty; leave it out or name a value
! ...
-> 2
$ vowelway check data/measuring/creak_e_a_o.ogg --vowels "e a o" --singer tenor --date x
! --date: x is not a day; write it as 2026-10-03
! ...
-> 2
$ vowelway measure data/measuring/creak_e_a_o.ogg --vowels "e a o" --voice tenor --into new.yaml --date "2026-01-01, note: x"
! --date: 2026-01-01, note: x is not a day; write it as 2026-10-03
! ...
-> 2
$ vowelway measure data/measuring/creak_e_a_o.ogg --vowels "e a o" --voice tenor --into new.yaml --date 2026-02-30
! --date: 2026-02-30 is not a day; write it as 2026-10-03
! ...
-> 2
$ vowelway measure data/measuring/creak_e_a_o.ogg --vowels "e a o" --voice tenor --into new.yaml --note "$(printf 'two\nlines')"
! --note: is not plain text: it has control characters, or is not UTF-8
! ...
-> 2
$ vowelway measure data/measuring/creak_e_a_o.ogg --vowels "e a o" --voice tenor --into new.yaml --name "$(printf 'a\377')"
! --name: is not plain text: it has control characters, or is not UTF-8
! ...
-> 2
$ vowelway measure data/measuring/creak_e_a_o.ogg --cues . --voice tenor
! .: is a folder, not a file
!   name a file in it
-> 3
$ ls new.yaml 2>&1 | grep -c "No such file"
1
