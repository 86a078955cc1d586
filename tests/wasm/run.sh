#!/bin/sh
# Builds the module of the page and compares it in node with the native program.
#   sh tests/wasm/run.sh BUILD      (a native build with the tests)
set -eu
build=$(realpath "${1:?"name the folder of a native build"}")
cd "$(dirname "$0")/../.."
sh src/page/make.sh
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
node tests/wasm/compare.mjs "$build/src/cli/vowelway" "$build/tests/wasm/pronounce" build/wasm/src/page "$scratch"
