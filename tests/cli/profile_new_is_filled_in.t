# A profile to fill in: its numbers are examples, so nothing of them is taken before its # is taken away.
$ vowelway profile new me.yaml --voice Tenor --name 'Ada "Rossa"'
! wrote me.yaml
$ grep -v '^#' me.yaml | head -3; grep -c "never when hoarse" me.yaml
vowelway: 1
singer: "Ada \"Rossa\""
voice: tenor
1
$ vowelway profile new me.yaml --voice tenor
! me.yaml is there already
!   name a new file
-> 3
$ sed -i 's/^#  \([iea]:\)/  \1/' me.yaml; vowelway profile show me.yaml --as json 2>/dev/null | grep -c '"ipa"'
3
$ vowelway profile new --voice lark
! ...
-> 3
