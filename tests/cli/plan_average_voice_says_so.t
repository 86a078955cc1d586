# Everything made from an average says so.
$ vowelway plan --range C3..E3 --singer bass --vowels a --draws 0 | head -3
Plan of the range C3..E3
singer: Average bass as sung; technique: classical; A4 = 440 Hz
average voice: measure your own
! caution: average voice: measure your own
$ vowelway plan --range C3..E3 --singer bass --vowels a --draws 0 --as json | grep '"average"'
 "average": true,
! caution: average voice: measure your own
