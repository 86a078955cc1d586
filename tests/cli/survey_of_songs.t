# Many songs, many singers: begun, gone on with, shown. A broken score is a row with its error.
$ mkdir songs && cp charts/demo/giusto_amor.mxl songs && cp data/scores/lieder/satie_omnibus.mxl songs && echo broken > songs/broken.mxl
$ vowelway survey songs --singers tenor mezzo --keys -1..1 -o songs.db
! caution: average voice: measure your own
! 18 plans, 0 of them were there; 2 times a song could not be read
! wrote songs.db
$ vowelway survey songs --singers tenor mezzo --keys -1..1 -o songs.db
! caution: average voice: measure your own
! 18 plans, 18 of them were there; 0 times a song could not be read
! wrote songs.db
$ vowelway survey songs --singers tenor mezzo --keys -1..2 -o songs.db
! caution: average voice: measure your own
! 24 plans, 18 of them were there; 2 times a song could not be read
! wrote songs.db
$ vowelway survey show songs.db | head -6
3 songs, 2 singers, technique classical

song                        mezzo    tenor
L’omnibus automobile      0.22 +1  0.24 +2
Poesia di Metastasio [I]  0.40 -1  0.14 -1

$ vowelway survey show songs.db --singer tenor | head -5
What suits tenor, technique classical, the best first

song                      composer          key  need  as is  by what
...
$ vowelway survey show songs.db --like songs/giusto_amor.mxl | sed -n 4p | cut -d' ' -f1,2
L’omnibus automobile
$ vowelway survey show songs.db --as csv | wc -l
25
$ vowelway survey show songs.db --as csv | cut -d, -f1-4 | head -3
song,singer,technique,transpose
songs/broken.mxl,mezzo,classical,-1
songs/broken.mxl,mezzo,classical,0
$ vowelway survey songs --singers tenor mezzo --keys -1..2 --task 1/2 -o part1.db && vowelway survey songs --singers tenor mezzo --keys -1..2 --task 2/2 -o part2.db && vowelway survey merge part1.db part2.db -o all.db && vowelway survey show all.db -o all.csv && vowelway survey show songs.db -o one.csv && cmp all.csv one.csv && ls *.db*
all.db
part1.db
part2.db
songs.db
! ...
$ vowelway survey show songs.db -o songs.svg 2>/dev/null && ls songs*.svg
songs.svg
$ vowelway survey songs
! ...
-> 2
$ vowelway survey songs --singer tenor --task 3/2 -o x.db
! ...
-> 2
$ vowelway survey show none.db
! none.db: there is no such file
! ...
-> 3
$ vowelway survey show charts/demo/README.md
! ...
-> 3
