#!/bin/sh
# The libraries and fonts that a chart's bytes depend on, one a line.
set -eu
for library in cairo pangocairo harfbuzz freetype2 libpng zlib sndfile; do
    echo "$library $(pkg-config --modversion "$library")"
done
fc-list ':family=Charis SIL' family style fontversion | sort
fc-list ':family=Noto Music' family style fontversion | sort
