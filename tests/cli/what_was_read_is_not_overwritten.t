# A file that was given to be read is not replaced by an output, under whatever name, unless that is asked for.
$ cp charts/demo/giusto_amor.mxl song.mxl; ln -s song.mxl other.mxl; cp song.mxl kept.mxl
$ vowelway plan song.mxl --singer tenor -o marked.mxl -o song.mxl
! --output: song.mxl is a file to be read; name another, or add --overwrite
! ...
-> 2
$ vowelway plan song.mxl --singer tenor -o ./other.mxl
! --output: ./other.mxl is a file to be read; name another, or add --overwrite
! ...
-> 2
$ cmp song.mxl kept.mxl; ls marked.mxl 2>&1 | grep -c "No such file"
1
$ echo amore >text.txt; vowelway words text.txt --language it -o text.txt
! --output: text.txt is a file to be read; name another, or add --overwrite
! ...
-> 2
$ vowelway plan song.mxl --singer tenor --draws 0 -o plan.json; vowelway check take.wav --vowels a --singer tenor --plan plan.json -o plan.json
! ...
! --output: plan.json is a file to be read; name another, or add --overwrite
! ...
-> 2
$ vowelway plan song.mxl --singer tenor --draws 0 -o song.mxl --overwrite
! ...
! wrote song.mxl
$ cmp song.mxl kept.mxl >same || echo replaced
replaced
