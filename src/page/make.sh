#!/bin/sh
# Installs what is missing, fetches the foreign sources from Debian and builds the module of the page: build/wasm/src/page.
set -eu
cd "$(dirname "$0")/../.."
# shellcheck disable=SC2046
sh cmake/set_up.sh $(sed '/^#/d' cmake/packages.txt src/page/packages.txt)
sh cmake/wasm_sources.sh build/wasm-sources
cmake --preset wasm
cmake --build --preset wasm
ls -l build/wasm/src/page/vowelway.mjs build/wasm/src/page/vowelway.wasm
