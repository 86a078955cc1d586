# Themes: built-in by name, or a file; what is wrong says where and how to mend it.
$ vowelway plan --range C3..A4 --singer tenor --theme large --grey -o plan.pdf
! caution: average voice: measure your own
! wrote plan.pdf
# The paper stays as large as it was, whatever the size of the type.
$ vowelway plan --range C3..A4 --singer tenor --theme large -o plan.svg && grep -o 'width="[^"]*" height="[^"]*" viewBox' plan.svg
width="595.28pt" height="841.89pt" viewBox
! caution: average voice: measure your own
! wrote plan.svg
$ vowelway plan --range C3..A4 --singer tenor --theme no_such_theme
! no theme "no_such_theme": neither a file nor one that comes with the program
!   name a theme file, or one of large, night, paper
-> 3
$ printf 'vowelway: 1\ntheme: mine\ncolours:\n  soft: "#999999"\n' > mine.yaml; vowelway plan --range C3..A4 --singer tenor --theme mine.yaml
! mine.yaml:4:9: soft cannot be read on the paper: their contrast is 2.8, text needs 4.5 (WCAG 2.2, 1.4.3)
!   make soft darker, or the paper lighter
-> 3
$ printf 'vowelway: 1\ntheme: mine\ntext: No Such Letters\n' > mine.yaml; vowelway compare tenor bass --theme mine.yaml -o voices.pdf
! caution: Average tenor: average voice: measure your own
! caution: Average bass: average voice: measure your own
! mine.yaml:3:7: the font "No Such Letters" is not installed; the charts use it for words and IPA
!   install it, or name another in the theme, such as Charis SIL
-> 3
