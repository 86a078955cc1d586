#!/bin/sh
# Installs what is missing, builds with the sanitizers, runs every test: the same at home and in CI.
set -eu
cd "$(dirname "$0")/.."
# shellcheck disable=SC2046
sh cmake/set_up.sh $(sed '/^#/d' cmake/packages.txt tests/packages.txt)
cmake --workflow --preset dev
