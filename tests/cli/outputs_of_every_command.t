# One way for every command: several files by their endings, standard output beside them.
$ vowelway words amore --language it -o words.json -o words.txt -o -
syllables  sung
a-mo-re    a o e
! wrote words.json
! wrote words.txt
$ head -2 words.txt
amore
aˈmore
$ vowelway tract data/acoustics/twin_tubes.csv --as json -o tract.txt -o -
{
  "vowelway": 1,
...
! assumed: columns ignored: remark
! wrote tract.txt
$ vowelway profile show data/profiles/demo_tenor.yaml -o singer.json
! ...
! wrote singer.json
# An unknown ending is refused before any work: there is no such profile.
$ vowelway profile show nobody.yaml -o singer.doc
! --output: singer.doc has no known ending; use one of .txt .json .pdf .svg .png
! ...
-> 2
$ vowelway profile history nobody.yaml -o history.pdf
! --output: history.pdf has no known ending; use one of .txt .json
! ...
-> 2
$ vowelway tract nothing.csv -o tract.csv
! --output: tract.csv has no known ending; use one of .txt .json
! ...
-> 2
$ vowelway words amore -o words.
! --output: words. has no known ending; use one of .txt .json .html .yaml .pdf .svg .png
! ...
-> 2
