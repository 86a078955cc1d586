# A folder with two singers and two songs: what is in it, a page for each singer, the plans.
$ mkdir -p pupils/songs && cp charts/demo/*.yaml pupils && cp charts/demo/giusto_amor.mxl data/scores/lieder/satie_omnibus.mxl pupils/songs && echo "singer: [" > pupils/torn.yaml
$ vowelway studio pupils --date 2026-11-28
pupils: 2 singers, 2 songs

singer                     voice  measured     missing          changed  file
Ottavio Brandt             tenor  56 days ago  /i/ /ɛ/ /ɔ/ /u/           ottavio_brandt.yaml
Serafina Quill (invented)  mezzo  56 days ago  none                      serafina_quill.yaml

song                      composer          from  to   file
Poesia di Metastasio [I]  Louise Reichardt  E♭4   G♭5  songs/giusto_amor.mxl
L’omnibus automobile      Erik Satie        B♭3   C5   songs/satie_omnibus.mxl

not read: pupils/torn.yaml: is not YAML: end of sequence flow not found
$ rm pupils/torn.yaml; vowelway studio pupils --date 2027-11-28 | grep -c "!"
3
$ vowelway studio report pupils --date 2026-11-28 2>/dev/null; ls pupils/pages; head -4 pupils/pages/serafina_quill.txt
ottavio_brandt.pdf
ottavio_brandt.txt
serafina_quill.pdf
serafina_quill.txt
Serafina Quill (invented), mezzo
measured: 56 days ago
missing vowels: none

$ vowelway studio plans pupils --draws 0 2>/dev/null; ls pupils/plans
giusto_amor--ottavio_brandt.pdf
giusto_amor--serafina_quill.pdf
satie_omnibus--ottavio_brandt.pdf
satie_omnibus--serafina_quill.pdf
$ vowelway studio plans pupils --draws 0
! every plan is as new as its score and its singer
$ touch -d "+1 minute" pupils/ottavio_brandt.yaml; vowelway studio plans pupils --draws 0
! wrote pupils/plans/giusto_amor--ottavio_brandt.pdf
! wrote pupils/plans/satie_omnibus--ottavio_brandt.pdf
$ vowelway studio none
! none: there is no such folder
! ...
-> 3
$ mkdir empty; vowelway studio empty
! empty: there is neither a singer nor a song in this folder
! ...
-> 3
