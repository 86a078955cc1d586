#!/bin/sh
# The letters that the page sets: subsets of the charts' fonts, for the web.
#   sh src/page/fonts.sh FOLDER
set -eu
to=${1:?"name the folder"}
mkdir -p "$to"
words='U+0020-007E,U+00A0-024F,U+0250-02FF,U+0300-036F,U+0391-03C9,U+1D00-1DBF,U+1E00-1EFF,U+2010-2027,U+2030-205E,U+2070-209F,U+20AC,U+2190-2193,U+2212,U+221A,U+2248,U+2260-2265,U+25A0-25CF,U+266D-266F'
subset() { # SOURCE NAME CHARACTERS
    source=$(fc-match --format '%{file}' "$1")
    [ -s "$to/$2.woff2" ] && [ "$to/$2.woff2" -nt "$source" ] && [ "$to/$2.woff2" -nt "$0" ] && return
    pyftsubset "$source" --unicodes="$3" --flavor=woff2 --output-file="$to/$2.woff2" --no-hinting --desubroutinize \
        --layout-features=kern,mark,mkmk,ccmp,liga,locl --drop-tables+=Silf,Sill,Feat,Glat,Gloc,DSIG
}
subset 'Charis SIL:style=Regular' text "$words"
subset 'Charis SIL:style=Bold' text_bold "$words"
subset 'Charis SIL:style=Italic' text_italic "$words"
subset 'Noto Music' music 'U+0020-007E,U+25A0-25FF,U+2669-266F,U+1D100-1D1FF'
