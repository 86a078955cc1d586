# The text sheet of a song: the poem found, sounds under the words, only the signs that occur.
$ vowelway words data/scores/lieder/brahms_magdalena.mxl --as poem 2>/dev/null | head -6
$ vowelway words "Les amours; les héros" --language fr --as poem
$ vowelway words data/diction/song.txt --language it -o sheet.html -o sheet.pdf -o mine.yaml
$ grep -c "<span class=\"ipa\"" sheet.html; pdfinfo sheet.pdf | grep Tagged
$ cat mine.yaml
# A word list as it is offered gives the same vowels.
$ vowelway words data/diction/song.txt --language it >rules; vowelway words data/diction/song.txt --language it --words mine.yaml | cmp - rules && echo the same
