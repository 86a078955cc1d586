# A song without a score, typed as syllables and pitches; and what is no score is named, with what to do.
$ printf 'title: A song\nlanguage: it\ntempo: 60\nmi- C4 2 ra E4\nsol G4 3\n' >a.song; vowelway words a.song
syllables  sung
mi-ra      i a
sol        o
$ printf 'mi- C4 2\nra E4 F4\n2 G4\n' >b.song; vowelway words b.song
! b.song:3:1: a length stands where a syllable or a pitch should
!   write the length behind its pitch: mi- C4 2
-> 3
$ printf 'MThd\0\0\0\6' >c.xml; vowelway plan c.xml --singer tenor
! ...
! c.xml: this is a MIDI file
!   MIDI seldom has the words: open it in a notation program, see that the syllables stand under their notes, and export MusicXML (.mxl or .musicxml)
-> 3
