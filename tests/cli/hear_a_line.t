# The note of bar 1, beat 4: A4 on /i/, fo far above fR1 = 300 Hz, so kept and changed differ.
$ vowelway hear data/profiles/rising_fifth.yaml --singer data/profiles/even_numbers.yaml --measure 1 --beat 4 --draws 0 2>/dev/null | grep -c "matched in loudness"
2
$ vowelway hear data/profiles/rising_fifth.yaml --singer data/profiles/even_numbers.yaml --measure 1 --beat 4 --draws 0 --only kept 2>/dev/null | grep -o "A4, /i/, shape kept (fR1 300 Hz"
A4, /i/, shape kept (fR1 300 Hz
# Nothing to change on the first note: it is heard as kept, and asked for as changed it is refused.
$ vowelway hear data/profiles/rising_fifth.yaml --singer data/profiles/even_numbers.yaml --measure 1 --draws 0 2>&1 >/dev/null | grep "nothing is"
assumed: nothing is to be changed on this note; it is heard as kept
$ vowelway hear data/profiles/rising_fifth.yaml --singer data/profiles/even_numbers.yaml --measure 1 --draws 0 --only changed 2>/dev/null
-> 3
# Four beats of a second: with half a second before and 0.3 after, 4.8 s; a bar of clicks makes it 8.8; twice as fast 4.8.
$ vowelway hear data/profiles/rising_fifth.yaml --singer data/profiles/even_numbers.yaml --draws 0 2>/dev/null | grep -o ".*end"
 0:04.8  end
$ vowelway hear data/profiles/rising_fifth.yaml --singer data/profiles/even_numbers.yaml --draws 0 --count-in 2>/dev/null | grep -o ".*end"
 0:08.8  end
$ vowelway hear data/profiles/rising_fifth.yaml --singer data/profiles/even_numbers.yaml --draws 0 --count-in --tempo 120 2>/dev/null | grep -o ".*end"
 0:04.8  end
$ vowelway hear data/profiles/rising_fifth.yaml --singer data/profiles/even_numbers.yaml --draws 0 --guide --click --kept -o line.flac -o line.mid -o line.txt 2>&1 | grep wrote
wrote line.flac
wrote line.mid
wrote line.txt
$ head -c 4 line.mid; head -c 4 line.flac; grep -o "vowels kept" line.txt
MThdfLaCvowels kept
