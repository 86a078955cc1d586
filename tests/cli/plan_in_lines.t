# The plan in lines: no columns, no signs; one sentence a line, and the caution at the end.
$ vowelway plan charts/demo/giusto_amor.mxl --singer charts/demo/serafina_quill.yaml --draws 0 --linear 2>/dev/null >lines.txt; head -2 lines.txt; grep -c "  " lines.txt; tail -1 lines.txt | cut -c1-36
Poesia di Metastasio [I], by Louise Reichardt.
For Serafina Quill (invented), mezzo, technique classical.
0
Never push and never chase a number;
# The words of a phrase end in one stop.
$ grep -cE "[.,;:!?][.]$" lines.txt
0
-> 1
$ vowelway plan charts/demo/giusto_amor.mxl --singer charts/demo/serafina_quill.yaml --draws 0 2>/dev/null | grep "Hz ±" || echo no numbers
no numbers
$ vowelway plan charts/demo/giusto_amor.mxl --singer charts/demo/serafina_quill.yaml --draws 0 --numbers 2>/dev/null | grep -c "fR1 Hz"
1
