# Every word syllable by syllable; without --language the guess is said with its evidence.
$ vowelway words "dolce sospiro" --language it
syllables  sung
dol-ce     o e
so-spi-ro  o i o
$ vowelway words data/diction/song.txt
syllables  sung
Ca-ro      a o
mi-o       i o
ben        ɛ
cre-di-mi  ɛ i i
al-men     a e
! guessed: the language is taken to be Italian (3 of 5 words speak for it: caro, mio, ben)
$ echo "Pange lingua gloriosi" | vowelway words - --language la
syllables    sung
Pan-ge       a ɛ
lin-gua      i u̯a
glo-ri-o-si  ɔ i ɔ i
$ vowelway words "La belle étoile luit" --language fr
syllables  sung
La         a
bel-le     ɛ (œ)
é-toi-le   e u̯a (œ)
luit       y̯i
$ vowelway words "Ich liebe dich" --language German
syllables  sung
Ich        ɪ
lie-be     iː ə
dich       ɪ
