# Every message names line, column and remedy.
$ printf 'section_length_cm;area_cm2\n0.5;3\n' > semicolons.csv; vowelway tract semicolons.csv
! semicolons.csv:1: there is no column section_length_cm
!   put commas between the columns and use a decimal point; the first line must name the columns: section_length_cm,section_index_from_glottis,area_cm2 and, for several tracts, vowel
-> 3
$ printf 'section_length_cm,section_index_from_glottis,area_cm2\n0.5,1,3\n0.5,2,wide\n' > word.csv; vowelway tract word.csv
! word.csv:3:7, column area_cm2: "wide" is not a number
!   write a number with a decimal point and no unit
-> 3
$ printf 'section_length_cm,section_index_from_glottis,area_cm2\n0.5,1,3\n0.5,2,0\n' > shut.csv; vowelway tract shut.csv
! shut.csv:3:7, column area_cm2: "0" is out of range
!   give 0.001 to 100 cm²; a closed airway has no resonances
-> 3
$ printf 'section_length_cm,section_index_from_glottis,area_cm2\n0.5,1,3\n0.5,3,3\n' > gap.csv; vowelway tract gap.csv
! gap.csv:3, column section_index_from_glottis: section 2 is missing
!   number the sections from the glottis 1, 2, 3 .. without gaps
-> 3
$ printf 'section_length_cm,section_index_from_glottis,area_cm2\n0.5,1,3\n0.5,1,3\n' > twice.csv; vowelway tract twice.csv
! twice.csv:3, column section_index_from_glottis: section 1 is given twice
!   keep one; several tracts in one file need a vowel column
-> 3
$ printf 'section_length_cm,section_index_from_glottis,area_cm2\n0.5,1\n' > short.csv; vowelway tract short.csv
! short.csv:2: the line has 2 fields, the header 3
!   give every line a field for each column
-> 3
$ printf 'section_length_cm,section_index_from_glottis,area_cm2\n' > empty.csv; vowelway tract empty.csv
! empty.csv: the table has a header but no sections
!   give a line for each section
-> 3
$ vowelway tract nowhere.csv
! nowhere.csv: there is no such file
!   check the name and the folder
-> 3
$ vowelway tract semicolons.csv --loss some
! --loss: some not in {none,radiation,closed-glottis,voiced}
! Run with --help for more information.
-> 2
