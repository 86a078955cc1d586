# A profile to fill in: its numbers are examples, so nothing of them is taken before its # is taken away.
$ vowelway profile new me.yaml --voice Tenor --name 'Ada "Rossa"'
! wrote me.yaml
$ head -5 me.yaml; grep -c "never when hoarse" me.yaml
# The profile of a singer. Lines that begin with # are questions and examples:
# answer a question by taking away its # and putting in your own values.
vowelway: 1
singer: "Ada \"Rossa\""
voice: tenor
1
$ vowelway profile new me.yaml --voice tenor
! me.yaml is there already
!   name a new file
-> 3
$ sed -i 's/^#  \([iea]:\)/  \1/' me.yaml; vowelway profile show me.yaml --as json 2>/dev/null | grep -c '"fR1_hz"'
3
$ vowelway profile new --voice lark
! ...
-> 3
