# No command: what to type next, and exit code 2.
$ vowelway
! a command is missing
! ...
-> 2
