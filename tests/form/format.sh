#!/bin/sh
# Every source file is as .clang-format sets it. Other versions of clang-format set some lines differently, so the version
# is 14, that of Debian 12; with another nothing is checked and that is said (exit code 77: skipped).
#   format.sh SOURCE_DIR
set -eu
cd "$1"
program=""
for name in clang-format-14 clang-format; do
    if command -v "$name" >/dev/null; then program=$name; break; fi
done
[ -n "$program" ] || { echo "there is no clang-format: install the Debian package clang-format-14" >&2; exit 1; }
version=$($program --version | sed 's/.*version \([0-9]*\).*/\1/')
if [ "$version" != 14 ]; then
    echo "not checked: this is clang-format $version, the tree is set by version 14"
    exit 77
fi
list=$(mktemp)
trap 'rm -f "$list"' EXIT
if git rev-parse --is-inside-work-tree >/dev/null 2>&1; then
    git ls-files '*.cpp' '*.hpp'
else
    find src include tests bench profiles -name '*.cpp' -o -name '*.hpp'
fi | while IFS= read -r file; do [ ! -e "$file" ] || echo "$file"; done >"$list"
[ -s "$list" ] || { echo "no source file was found" >&2; exit 1; }
xargs "$program" --dry-run -Werror <"$list"
