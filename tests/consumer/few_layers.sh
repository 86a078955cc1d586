#!/bin/sh
# Configures this project with few layers where no other library can be found, and with layers that are then missed.
#   few_layers.sh SOURCE_DIR
set -eu
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT
mkdir "$scratch/nothing"
configure() {
    env PKG_CONFIG_LIBDIR="$scratch/nothing" PKG_CONFIG_PATH="" cmake -G Ninja -S "$1" -B "$scratch/build" -DVOWELWAY_TESTS=OFF \
        -DVOWELWAY_BENCH=OFF -DCMAKE_DISABLE_FIND_PACKAGE_yaml-cpp=ON -DCMAKE_DISABLE_FIND_PACKAGE_pugixml=ON \
        -DCMAKE_DISABLE_FIND_PACKAGE_fmt=ON -DCMAKE_DISABLE_FIND_PACKAGE_nlohmann_json=ON \
        -DCMAKE_DISABLE_FIND_PACKAGE_CLI11=ON "-DVOWELWAY_LAYERS=$2" >"$scratch/log" 2>&1
}
configure "$1" "plan;analysis" || { cat "$scratch/log" >&2; exit 1; }
made=$(ninja -C "$scratch/build" -t targets all | sed -n 's/^libvowelway_\([a-z]*\)\.a:.*/\1/p' | sort | tr '\n' ' ')
test "$made" = "acoustics analysis core plan " || { echo "layers configured: $made" >&2; exit 1; }
for wish in "io:the layer io needs pugixml 1.12" "chart:the layer chart needs cairo" "throat:there is no layer \"throat\""; do
    if configure "$1" "${wish%%:*}"; then
        echo "configures: ${wish%%:*}" >&2
        exit 1
    fi
    tr -s '\n ' ' ' <"$scratch/log" | grep -q "${wish#*:}" || { cat "$scratch/log" >&2; exit 1; }
done
