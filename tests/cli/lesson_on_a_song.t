# The lesson of the demo: one page, and the same as text; its exercises stay in the singer's range (A3..A5).
$ vowelway lesson charts/demo/giusto_amor.mxl --singer charts/demo/serafina_quill.yaml --draws 0 -o lesson.svg 2>/dev/null; ls lesson*.svg
lesson.svg
$ vowelway lesson charts/demo/giusto_amor.mxl --singer charts/demo/serafina_quill.yaml --draws 0 2>/dev/null | grep -E "^(Phrases|Order|Exercises)" | cut -c1-17
Phrases, the hard
Order of practice
Exercises, before
$ vowelway lesson --singer tenor
! ...
-> 2
