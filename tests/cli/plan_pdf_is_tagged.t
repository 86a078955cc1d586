# A PDF tells a reader for the blind what is a heading and what is said in which order (ISO 32000-1, 14.8), as pdfinfo reads it.
$ vowelway plan charts/demo/giusto_amor.mxl --singer charts/demo/serafina_quill.yaml --chart pencil --draws 0 -o pencil.pdf 2>/dev/null; pdfinfo pencil.pdf | grep -E "^(Title|Tagged)"
Title:           Poesia di Metastasio [I]
Tagged:          yes
$ pdfinfo -struct-text pencil.pdf 2>/dev/null | grep -A1 "H1 (block)"
  H1 (block)
    "Poesia di Metastasio [I] "
$ pdfinfo -struct-text pencil.pdf 2>/dev/null | grep -c "gion so la tu se i"
1
