# English of the American stage and Latin in German use are languages of their own; no text is guessed to be in them.
$ vowelway words "dance hot" --language en-US
syllables  sung
dance      æ
hot        ɑː
! guessed: the rules for American English are rough: of a hundred vowels of a word list 79 were right; read the vowels over
$ vowelway words "dance hot" --language en
syllables  sung
dance      ɑː
hot        ɒ
$ vowelway words "caeli qui" --language la-DE
syllables  sung
cae-li     ɛː i
qui        i
! guessed: the rules for Latin in German use were never compared with a dictionary: read the vowels over
# What is rough, or has no rules, says so; what was measured and is good does not.
$ vowelway words "morgen" --language da
syllables  sung
mor-gen    ɔ ə
! guessed: the rules for Danish are rough: of a hundred vowels of a word list 89 were right; read the vowels over
$ vowelway words "morgen" --language nl
syllables  sung
mor-gen    ɔ ə   guessed: there are no diction rules for this language: vowels from the synthesiser
! guessed: there are no diction rules for Dutch yet: every vowel comes from the speech synthesiser
$ vowelway words "stjärna" --language sv
syllables  sung
stjär-na   æː a
# The sheet has their signs and says whose pronunciation it is.
$ vowelway words "Mae hen wlad" --language cy --as poem
Mae  hen   wlad
maɨ  heːn  wlaːd

sign  stands for                        as in
e     closed e, near i                  hen
a     bright a                          Mae
ɨ     between i and u, the lips spread  Mae
w     as in English we                  wlad
ː     the vowel before it is long       hen

Welsh of the north: in the south ɨ is sung as i.
