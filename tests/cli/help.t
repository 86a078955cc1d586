# No command: what to type next, and exit code 2.
$ vowelway
! A subcommand is required
! ...
-> 2
