# What is wrong, where, and how to mend it.
$ vowelway words "amor" --language it --words data/diction/bad_words.yaml
! data/diction/bad_words.yaml:4:10: the pronunciation of "amore" has no vowel
!   write it in IPA: amore: amore
-> 3
$ vowelway words "amor" --language it --words none.yaml
! none.yaml: there is no such file
!   check the name and the folder
-> 3
$ vowelway words none.txt
! none.txt: there is no such file
!   check the name
-> 3
$ vowelway words "amor" --language klingon
! the language "klingon" is unknown
!   give a tag such as it, la, de, fr, en or es
-> 3
$ vowelway words "..."
! guessed: the language is taken to be Italian (there are no words)
! the text has no words
!   write some words, a file or - for the standard input
-> 3
$ printf "\377\376" | vowelway words - --language it
! standard input:1:1: is not UTF-8
!   save it as UTF-8 text
-> 3
$ vowelway words "pst Jazz" --language it
syllables  sung
pst              guessed: no vowel was found
Jazz       a
$ vowelway words "amor" --as prose
! --as: prose not in {table,poem,json,html,corrections}
! Run with --help for more information.
-> 2
