# Control characters and overrides of direction in words, titles, names and files come out written out; JSON escapes for itself.
$ printf '<score-partwise><movement-title>Lied\342\200\256 gnal</movement-title><part-list><score-part id="P1"><part-name>Voice</part-name></score-part></part-list><part id="P1"><measure number="1"><note><pitch><step>A</step><octave>3</octave></pitch><duration>1</duration><lyric><text>la\302\233\033[2J\342\200\256</text></lyric></note></measure></part></score-partwise>' >s.musicxml
$ vowelway plan s.musicxml --singer tenor --draws 0 --language it 2>err | grep -o 'la.u{9b}.*202e}'; LC_ALL=C grep -c "$(printf '\033\|\302\233\|\342\200\256')" err || true
la\u{9b}\u{1b}[2J\u{202e}
0
$ vowelway plan s.musicxml --singer tenor --draws 0 --language it -o p.txt -o p.csv -o p.json -o p.pdf -o p.svg 2>err; LC_ALL=C grep -c "$(printf '\033\|\302\233\|\342\200\256')" p.txt p.csv p-1.svg
p.txt:0
p.csv:0
p-1.svg:0
-> 1
$ grep -q 'u001b\[2J' p.json
$ vowelway plan "$(printf 'no\033[31m\342\200\256file.mxl')" --singer tenor
! no\u{1b}[31m\u{202e}file.mxl: there is no such file
!   check the name and the folder
-> 3
$ vowelway "$(printf 'pl\033[2Jan')"
! there is no command "pl\u{1b}[2Jan"
! ...
-> 2
# The name of a recording need not be UTF-8, and charts show it all the same.
$ cp data/measuring/creak_e_a_o.ogg "$(printf 'na\377me.ogg')"; vowelway measure "$(printf 'na\377me.ogg')" --vowels "e a o" --voice tenor -o map.pdf -o map.svg
! ...
! wrote map.pdf
! wrote map.svg
$ grep -c 'na.xffme' map.svg
1
# A syllable that a spreadsheet would take for a formula.
$ sed 's/la.*<.text>/=1+1<\/text>/' s.musicxml >f.musicxml; vowelway plan f.musicxml --singer tenor --draws 0 --language it --as csv 2>err | grep -o "'=1.1"
'=1+1
