# All parts of a hymn: each by the voice of its name, words lent where a part has none.
$ vowelway plan tests/data/scores/own/old_hundredth.musicxml --all --draws 0 --as json 2>errors | python3 -c 'import json,sys; [print(p["part"], p["voice"], p["voice_guessed"], p["words_from"], len(p["plan"]["notes"])) for p in json.load(sys.stdin)["parts"]]'; grep -c "taken to be sung by" errors; grep "no words" errors
Soprano soprano True None 32
Alto alto True Soprano 32
Tenor tenor True Soprano 32
Bass bass True None 32
4
assumed: Alto: it has no words of its own here; those of Soprano, which it sings with, are taken
assumed: Tenor: it has no words of its own here; those of Soprano, which it sings with, are taken
# Named voices and a measured profile; the marks of all parts in one score.
$ vowelway plan tests/data/scores/own/old_hundredth.musicxml --all --draws 0 --voices "S=charts/demo/serafina_quill.yaml, a=mezzo, Ten=tenor, 4=baritone" -o all.json -o all.musicxml 2>errors; grep -c "taken to be sung" errors; grep -o '"singer": "[^"]*"' all.json; for p in 1 2 3 4; do grep -c "id=\"vowelway-P$p-[0-9]" all.musicxml; done
0
"singer": "Serafina Quill (invented)"
"singer": "Average mezzo as sung"
"singer": "Average tenor as sung"
"singer": "Average baritone as sung"
