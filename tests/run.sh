#!/bin/sh
# Installs what is missing, builds with the sanitizers, runs every test, those of the page in a browser too: the same at home and in CI.
set -eu
cd "$(dirname "$0")/.."
# shellcheck disable=SC2046
sh cmake/set_up.sh $(sed '/^#/d' cmake/packages.txt tests/packages.txt)
cmake --workflow --preset dev
sh tests/page/run.sh build/dev/src/cli/vowelway build/dev/tests/wasm/pronounce
