#!/bin/sh
# The foreign sources of the WebAssembly build, from Debian: headers that need no building, by links, and the
# sources of yaml-cpp and pugixml. Nothing of the system's package lists changes.
#   sh cmake/wasm_sources.sh FOLDER
set -eu
to=${1:?"name the folder"}
mkdir -p "$to/headers"
to=$(cd "$to" && pwd)
for name in boost fmt nlohmann doctest; do
    ln -sfn "/usr/include/$name" "$to/headers/$name"
done
for name in Eigen unsupported; do
    ln -sfn "/usr/include/eigen3/$name" "$to/headers/$name"
done
[ -d "$to/yaml-cpp/src" ] && [ -d "$to/pugixml/src" ] && exit 0

# Debian's source packages, from the repository that apt uses, checked by its signature, with lists of our own:
# `deb-src` is seldom switched on.
repository=$(apt-get indextargets --format '$(REPO_URI) $(RELEASE)' 'Created-By: Packages' | head -n 1)
[ -n "$repository" ] || { echo "apt knows no repository: run apt-get update" >&2; exit 1; }
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
chmod 755 "$work"
mkdir -p "$work/lists/partial"
echo "deb-src [signed-by=/usr/share/keyrings/debian-archive-keyring.gpg] $repository main" >"$work/sources.list"
apt() {
    apt-get -q -o Dir::Etc::SourceList="$work/sources.list" -o Dir::Etc::SourceParts=/dev/null \
        -o Dir::State::Lists="$work/lists" -o Dir::Cache::pkgcache= -o Dir::Cache::srcpkgcache= \
        -o APT::Sandbox::User=root "$@"
}
apt update
(cd "$work" && apt source yaml-cpp pugixml)
for name in yaml-cpp pugixml; do
    rm -rf "${to:?}/$name"
    mv "$work/$name"-*/ "$to/$name"
done
