#!/bin/sh
# Installs what is missing, fetches the foreign sources from Debian, builds the module (build/wasm/src/page) and the page
# (build/page/out/vowelway.html, and the folder beside it for a static host).
set -eu
cd "$(dirname "$0")/../.."
# shellcheck disable=SC2046
sh cmake/set_up.sh $(sed '/^#/d' cmake/packages.txt src/page/packages.txt)
command -v npm >/dev/null || sh cmake/set_up.sh npm # where node comes from elsewhere, npm comes with it
sh cmake/wasm_sources.sh build/wasm-sources
cmake --preset wasm
cmake --build --preset wasm
ls -l build/wasm/src/page/vowelway.mjs build/wasm/src/page/vowelway.wasm
sh src/page/make_page.sh
