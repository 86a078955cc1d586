# No sound device: what to do instead, exit 3; nothing is written.
$ vowelway measure --record take.wav --device no_such_device --vowels a --voice tenor
! there is no microphone "no_such_device" (No such file or directory)
!   plug a microphone in, name another device, or record with a phone or another program, and name the file: vowelway measure take.m4a
-> 3
$ vowelway measure --record take.mp3 --vowels a --voice tenor
! ...
-> 2
