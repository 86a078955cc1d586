# A lesson is a page with a song inside; the page itself is built by src/page/make.sh.
$ vowelway page data/profiles/rising_fifth.yaml --singer tenor -o lesson.pdf
! --output: lesson.pdf is no page; let its name end in .html
! Run with --help for more information.
-> 2
$ mkdir empty
$ vowelway page data/profiles/rising_fifth.yaml --singer tenor --page empty -o lesson.html
! empty: holds no page
!   name the folder that sh src/page/make.sh builds
-> 3
# What it writes into the page is this, wherever the page comes from.
$ mkdir here; printf '<p>x</p><script type="application/json" id="lesson"></script>' >here/vowelway.html
$ vowelway page data/profiles/rising_fifth.yaml --singer tenor --technique choral --page here -o lesson.html
! ...
! wrote lesson.html
$ grep -o '"singer":{"voice":"tenor"}' lesson.html
"singer":{"voice":"tenor"}
$ grep -c '"technique":"choral"' lesson.html
1
