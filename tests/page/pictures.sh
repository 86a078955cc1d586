#!/bin/sh
# Pictures of the page at 360, 768 and 1440 px, light and dark, to be looked at.
#   sh tests/page/pictures.sh FOLDER      (after tests/page/run.sh)
set -eu
folder=$(realpath "${1:?"name the folder for the pictures"}")
cd "$(dirname "$0")/../.."
VOWELWAY_PAGE=$PWD/build/page/out VOWELWAY_NODE_MODULES=$PWD/build/page/tests/node_modules VOWELWAY_PROGRAM= VOWELWAY_SCRATCH=/tmp \
    node tests/page/pictures.mjs "$folder"
