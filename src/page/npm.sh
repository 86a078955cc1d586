#!/bin/sh
# Installs the npm packages that a folder's package-lock.json names, into another folder; nothing where they are.
#   sh src/page/npm.sh FROM TO
set -eu
mkdir -p "$2"
cmp -s "$1/package-lock.json" "$2/package-lock.json" && [ -d "$2/node_modules" ] && exit 0
cp "$1/package.json" "$1/package-lock.json" "$2"
npm ci --prefix "$2" --ignore-scripts --no-audit --no-fund --loglevel=error || { rm -f "$2/package-lock.json"; exit 1; }
