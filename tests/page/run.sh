#!/bin/sh
# Tries the page in browsers without a screen; builds it first where it is not built (tests/wasm/run.sh builds it too).
#   sh tests/page/run.sh PROGRAM PRONOUNCE [firefox]      (the native program to compare with; the test program that asks its synthesiser)
set -eu
program=$(realpath "${1:?"name the native program"}")
pronounce=$(realpath "${2:?"name the test program that asks the native synthesiser"}")
firefox=${3:-}
cd "$(dirname "$0")/../.."
# shellcheck disable=SC2046
sh cmake/set_up.sh $(sed '/^#/d' tests/page/packages.txt) ${firefox:+firefox-esr}
sh src/page/make.sh
sh src/page/npm.sh tests/page build/page/tests
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
export VOWELWAY_PROGRAM="$program" VOWELWAY_PRONOUNCE="$pronounce" VOWELWAY_PAGE="$PWD/build/page/out" VOWELWAY_SCRATCH="$scratch" \
    VOWELWAY_NODE_MODULES="$PWD/build/page/tests/node_modules"
cd tests/page
node one_browser.mjs node --test --test-reporter=spec --test-concurrency=2 access_test.mjs hear_test.mjs gallery_test.mjs keyboard_test.mjs lesson_test.mjs songs_test.mjs steps_test.mjs try_test.mjs
node one_browser.mjs node --test --test-reporter=spec --test-concurrency=1 measure_test.mjs practise_test.mjs # what listens does not share the processors
if [ "$firefox" = firefox ]; then
    node --test firefox_test.mjs
fi
