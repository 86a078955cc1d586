#!/bin/sh
# Installs what is missing, builds the release, runs the main job on the demo and remakes the example charts.
set -eu
cd "$(dirname "$0")/.."
# shellcheck disable=SC2046
sh cmake/set_up.sh $(sed '/^#/d' cmake/packages.txt)
cmake --workflow --preset release
PATH="$PWD/build/release/src/cli:$PATH"
export PATH
# Every command of the gallery, as it stands there: the lines of charts/README.md that begin with "vowelway".
sed -n 's/^    \(vowelway .*\)$/\1/p' charts/README.md | while IFS= read -r command; do
    echo "\$ $command"
    sh -c "$command" </dev/null
done
sh tests/gallery/versions.sh >charts/made_with.txt
