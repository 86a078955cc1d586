#!/bin/sh
# Makes the pictures in docs/page anew (after tests/page/run.sh).
set -eu
cd "$(dirname "$0")/../.."
VOWELWAY_PAGE=$PWD/build/page/out VOWELWAY_NODE_MODULES=$PWD/build/page/tests/node_modules VOWELWAY_PROGRAM= VOWELWAY_SCRATCH=/tmp \
    node tests/page/gallery.mjs
