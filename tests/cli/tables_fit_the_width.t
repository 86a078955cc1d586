# In a pipe a table's lines have at most 100 columns; what is wider goes on below, under its own column. Files keep their lines.
$ vowelway plan data/scores/lieder/brahms_magdalena.mxl --singer soprano 2>/dev/null >table.txt; test $(LC_ALL=C.UTF-8 wc -L <table.txt) -le 100 && test $(wc -l <table.txt) -gt 20 && echo fits
fits
$ vowelway plan data/scores/lieder/brahms_magdalena.mxl --singer soprano -o whole.txt 2>/dev/null; test $(tr -s ' \n' '\n' <whole.txt | cksum | cut -d' ' -f1) = $(tr -s ' \n' '\n' <table.txt | cksum | cut -d' ' -f1) && echo the same words
the same words
