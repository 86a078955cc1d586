#!/bin/sh
# Builds the page and tries it in a browser without a screen.
#   sh tests/page/run.sh PROGRAM PRONOUNCE      (the native program to compare with; the test program that asks its synthesiser)
set -eu
program=$(realpath "${1:?"name the native program"}")
pronounce=$(realpath "${2:?"name the test program that asks the native synthesiser"}")
cd "$(dirname "$0")/../.."
# shellcheck disable=SC2046
sh cmake/set_up.sh $(sed '/^#/d' tests/page/packages.txt)
sh src/page/make.sh
sh src/page/npm.sh tests/page build/page/tests
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
VOWELWAY_PROGRAM=$program VOWELWAY_PRONOUNCE=$pronounce VOWELWAY_PAGE=$PWD/build/page/out VOWELWAY_SCRATCH=$scratch \
    VOWELWAY_NODE_MODULES=$PWD/build/page/tests/node_modules node --test --test-concurrency=1 tests/page/
