# There is no chart of a measurement yet: an ending that promises one is refused before any work.
$ vowelway check take.wav --vowels a --singer tenor -o check.pdf
! --output: check.pdf has no known ending; use .json or .txt, or - for standard output
! ...
-> 2
$ vowelway measure take.wav --vowels a --voice tenor -o report.pdf
! --output: report.pdf has no known ending; use .json or .txt, or - for standard output
! ...
-> 2
