# One word on a line; a falling glide is in the nucleus and apart.
$ vowelway words "aura, l'alma" --language it --as json
{"vowelway": 1, "language": "it", "words": [
  {"word":"aura","nuclei":["au̯","a"],"syllables":["au","ra"],"held":["a","a"],"before":["",""],"glide":["u̯",""],"guessed":false},
  {"word":"l'alma","nuclei":["a","a"],"syllables":["l'al","ma"],"held":["a","a"],"before":["",""],"glide":["",""],"guessed":false}
],
 "title": "", "composer": "", "lines": [
  {"begins_stanza":false,"times":1,"words":[{"written":"aura,","ipa":"ˈaura","joined":false,"guessed":false},{"written":"l'alma","ipa":"ˈlalma","joined":false,"guessed":false}]}
], "signs": [
  {"sign":"a","says":"bright a","example":"aura"},
...
$ vowelway words "go" --language en --as json
{"vowelway": 1, "language": "en", "words": [
  {"word":"go","nuclei":["əʊ̯"],"syllables":["go"],"held":["o"],"before":[""],"glide":["ʊ̯"],"guessed":false}
],
 "title": "", "composer": "", "lines": [
  {"begins_stanza":false,"times":1,"words":[{"written":"go","ipa":"ɡoʊ","joined":false,"guessed":false}]}
], "signs": [
  {"sign":"oʊ","says":"the first vowel is held, the second brief","example":"go"}
], "notes": ["Neutral English of the stage: no r after a vowel."]}
$ vowelway words "rêve" --language fr --as json
{"vowelway": 1, "language": "fr", "words": [
  {"word":"rêve","nuclei":["ɛ"],"syllables":["rêve"],"held":["ɛ"],"before":[""],"glide":[""],"optional":"ə","guessed":false}
],
 "title": "", "composer": "", "lines": [
  {"begins_stanza":false,"times":1,"words":[{"written":"rêve","ipa":"rɛvə","joined":false,"guessed":false}]}
...
