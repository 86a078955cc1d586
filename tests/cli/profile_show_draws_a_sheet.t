# The singer's sheet: one page, in every form of a chart; an average voice says what it is.
$ vowelway profile show data/profiles/demo_tenor.yaml -o tenor.pdf -o tenor.svg 2>/dev/null; ls tenor.*
tenor.pdf
tenor.svg
$ vowelway profile show "sung bass" -o bass.svg --grey 2>/dev/null; grep -c "<title>Average bass as sung: singer's sheet</title>" bass.svg
1
