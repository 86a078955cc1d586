# In a pipe help is 100 columns wide; limits and what an option may be are told in words.
$ vowelway profile show --help
Resonances as frequencies and pitches, tract length, nearest voice types; a sheet to print

usage: vowelway profile show SINGER [options]

  SINGER                   a profile, or a voice type
...
