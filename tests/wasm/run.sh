#!/bin/sh
# Builds the module of the page and compares it in node with the native program.
#   sh tests/wasm/run.sh PROGRAM
set -eu
program=$(realpath "${1:?"name the native program"}")
cd "$(dirname "$0")/../.."
sh cmake/set_up.sh unzip
sh src/page/make.sh
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
cp src/page/door.mjs build/wasm/src/page/
node tests/wasm/compare.mjs "$program" build/wasm/src/page "$scratch"
