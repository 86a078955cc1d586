# The teacher's own list wins over the rules, in any case of letters.
$ vowelway words "Sospiro, Gethsemane" --language it --words data/diction/words.yaml
syllables      sung
So-spi-ro      ɔ i ɔ
Geth-se-ma-ne  ɛ ɛ a ɛ
