#!/bin/sh
# The page from the module in build/wasm/src/page: fonts, bundler, one file and a folder in build/page/out.
set -eu
cd "$(dirname "$0")/../.."
mkdir -p build/page
sh src/page/fonts.sh build/page/fonts
sh src/page/npm.sh src/page/web build/page/web
sh src/page/npm.sh src/page/synthesiser build/page/synthesiser
node src/page/web/build.mjs src/page/web build/wasm/src/page build/page/fonts build/page/web/node_modules build/page/out
