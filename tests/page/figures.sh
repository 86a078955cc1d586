#!/bin/sh
# Size and pace of the page (after tests/page/run.sh).
#   sh tests/page/figures.sh PROGRAM
set -eu
program=$(realpath "${1:?"name the native program"}")
cd "$(dirname "$0")/../.."
VOWELWAY_PAGE=$PWD/build/page/out VOWELWAY_NODE_MODULES=$PWD/build/page/tests/node_modules VOWELWAY_PROGRAM=$program VOWELWAY_SCRATCH=/tmp \
    sh -c "node tests/page/figures.mjs && node tests/page/tasks.mjs"
