# Prints file, length and name of each function over 60 lines. Leans on .clang-format: a function begins at the left edge,
# or four blanks in within a class, and its closing brace stands in the same column.
BEGIN { most = 60 }
function of_class(line) { return line ~ /^(class|struct|union|template <.*> (class|struct))/ }
FNR == 1 { open[0] = open[4] = is_class = 0 }
{
    match($0, /^ */)
    column = RLENGTH
    if ($0 ~ /^ *$/ || (column != 0 && column != 4) || (column == 4 && !is_class)) next
    if (column == 0 && (of_class($0) || $0 ~ /^(enum|namespace)/)) {
        is_class = of_class($0) && $0 ~ /\{$/
        open[0] = 0
        next
    }
    if ($0 ~ /^(    )?\}/) {
        if (open[column] && FNR - open[column] + 1 > most)
            printf "%s\t%d\t%s\n", FILENAME, FNR - open[column] + 1, name[column]
        open[column] = 0
        if (column == 0) is_class = 0
        next
    }
    if (!open[column] && /\(/ && $0 !~ /^ *(\/\/|#)/ && $0 !~ /;$/ && $0 !~ /\}$/) {
        open[column] = FNR
        match($0, /[A-Za-z_:~0-9]+\(/)
        name[column] = /^TEST_CASE/ ? $0 : substr($0, RSTART, RLENGTH - 1)
    }
}
