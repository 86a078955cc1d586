# The text sheet of a song: the poem found, its sounds under the words.
$ vowelway words data/scores/lieder/brahms_magdalena.mxl --as poem 2>/dev/null | head -6
Magdalena · Johannes Brahms

An  dem   österlichen  Tag
an  deːm  ˈøːstɐlɪçən  taːk
Maria    Magdalena    ging  zu    dem   Grab;
maˈriːa  maɡdaˈleːna  ɡɪŋ   tsuː  deːm  ɡraːp
# Liaison, what keeps words apart, and only the signs that occur.
$ vowelway words "Les amours; les héros" --language fr --as poem
Les   amours;  les  héros
lez‿  amur     le   ero

sign  stands for                                     as in
e     closed e, near i                               Les
a     bright a                                       amours
o     closed o, near u                               héros
u     as in English moon                             amours
r     r rolled or tapped with the tip of the tongue  amours
z     s with voice, as in English zeal               Les
‿     the words are sung into one another            Les‿amours

Only the liaisons that are always made are marked; others are a matter of style.
$ vowelway words data/diction/song.txt --language it -o sheet.html -o sheet.pdf -o mine.yaml
! wrote sheet.html
! wrote sheet.pdf
! wrote mine.yaml
$ grep -c 'lang="it-fonipa"' sheet.html; pdfinfo sheet.pdf | grep Tagged; pdftotext sheet.pdf - | grep -c "ˈkrɛdimi"
2
Tagged:          yes
1
$ sed -n 2,5p mine.yaml
vowelway: 1
words:
  "caro": "ˈka.ro"
  "mio": "ˈmi.o"
# A word list as it is offered gives the same vowels.
$ vowelway words data/diction/song.txt --language it >rules; vowelway words data/diction/song.txt --language it --words mine.yaml | cmp - rules && echo the same
the same
