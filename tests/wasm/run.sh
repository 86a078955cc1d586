#!/bin/sh
# Builds the module of the page and compares it in node with the native program.
#   sh tests/wasm/run.sh PROGRAM PRONOUNCE      (of native builds; PRONOUNCE is built with the tests)
set -eu
program=$(realpath "${1:?"name the native program"}")
pronounce=$(realpath "${2:?"name the test program that asks the native synthesiser"}")
cd "$(dirname "$0")/../.."
sh src/page/make.sh
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
node tests/wasm/compare.mjs "$program" "$pronounce" build/wasm/src/page "$scratch"
