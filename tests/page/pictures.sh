#!/bin/sh
# Pictures of every step of the page, to be looked at.
#   sh tests/page/pictures.sh FOLDER [STEP,..] [LOOK,..]      (after tests/page/run.sh)
set -eu
folder=$(realpath "${1:?"name the folder for the pictures"}")
shift
cd "$(dirname "$0")/../.."
VOWELWAY_PAGE=$PWD/build/page/out VOWELWAY_NODE_MODULES=$PWD/build/page/tests/node_modules VOWELWAY_PROGRAM= VOWELWAY_SCRATCH=/tmp \
    node tests/page/pictures.mjs "$folder" "$@"
