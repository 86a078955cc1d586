#!/bin/sh
# Packs the release as .tar.gz and .deb, unpacks both into empty folders, and lets each do the job there.
#   run.sh BUILD_DIR      a build of the release preset
set -eu
build=$(cd "$1" && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
fail() { echo "package: $*" >&2; exit 1; }

(cd "$build" && cpack -G "TGZ;DEB" -B "$work/packages" >"$work/cpack.log" 2>&1) || { cat "$work/cpack.log" >&2; fail "cpack"; }
mkdir "$work/tgz" "$work/deb"
tar -xzf "$work"/packages/*.tar.gz -C "$work/tgz" --strip-components=1
dpkg-deb -x "$work"/packages/*.deb "$work/deb"

for root in "$work/tgz" "$work/deb/usr"; do
    [ -d "$root/usr" ] && root=$root/usr
    program=$root/bin/vowelway
    # An empty home, no build folder on any path: only what the package brought.
    run() { env -i HOME="$work" PATH=/usr/bin:/bin LANG=C.UTF-8 "$program" "$@"; }
    run --version | grep -q '^vowelway [0-9]' || fail "$root: --version"
    run --version | grep -q 'espeak-ng' || fail "$root: --version names no libraries"
    run plan --range C4..A5 --singer mezzo --draws 0 -o "$work/plan.pdf" -o "$work/plan.json" 2>"$work/log" || { cat "$work/log" >&2; fail "$root: plan"; }
    head -c 5 "$work/plan.pdf" | grep -q '%PDF-' || fail "$root: no PDF"
    run words "dolce sospiro" --language it | grep -q 'dol' || fail "$root: words"
    run measure "$(dirname "$0")/../data/measuring/creak_e_a_o.ogg" --vowels "e a o" --voice tenor >"$work/table" 2>/dev/null || fail "$root: measure"
    grep -q 'creak' "$work/table" || fail "$root: measure found nothing"
    # The page, where it is built, is found beside the program: for lessons and for vowelway open.
    if [ -e "$build/../page/out/vowelway.html" ]; then
        run page "$(dirname "$0")/../data/profiles/rising_fifth.yaml" --singer mezzo -o "$work/lesson.html" --overwrite >/dev/null || fail "$root: page"
        grep -q '"average mezzo\|"voice":"mezzo"' "$work/lesson.html" || fail "$root: the lesson has no singer"
        [ -e "$root/share/vowelway/page/folder/index.html" ] || fail "$root: nothing for vowelway open"
        [ ! -e "$build/src/open/vowelway-open" ] || [ -x "$root/bin/vowelway-open" ] || fail "$root: no vowelway-open"
    fi
    # Manual pages without a warning of the formatter, one for each command.
    for page in "$root"/share/man/man1/*.1; do
        groff -man -ww -Tutf8 "$page" >/dev/null 2>"$work/groff" || fail "$page"
        [ -s "$work/groff" ] && { cat "$work/groff" >&2; fail "$page has warnings"; }
    done
    for command in plan measure check words; do
        [ -e "$root/share/man/man1/vowelway-$command.1" ] || fail "no manual page of $command"
    done
    # The bill of materials names what the program links.
    grep -q '"spdxVersion": "SPDX-2.3"' "$root"/share/doc/vowelway/vowelway.spdx.json || fail "no bill of materials"
done

# What compiler and linker do against faults (cmake/hardening.cmake), read off the packed program.
program=$work/deb/usr/bin/vowelway
readelf -hW "$program" | grep -q 'Type: *DYN' || fail "not position independent"
readelf -lW "$program" | grep -q 'GNU_RELRO' || fail "no RELRO"
readelf -dW "$program" | grep -q 'NOW' || fail "RELRO is not full: symbols are bound late"
readelf -lW "$program" | grep 'GNU_STACK' | grep -q ' RW ' || fail "the stack can be executed"
readelf --dyn-syms -W "$program" | grep -q '__stack_chk_fail' || fail "no stack protector"
readelf --dyn-syms -W "$program" | grep -q '__[a-z]*_chk@' || fail "nothing is fortified"

# What apt would have to install besides: every dependency exists.
dpkg-deb -f "$work"/packages/*.deb Depends | tr ',' '\n' | sed 's/^ *//; s/[ (|].*//' | while read -r name; do
    [ -z "$name" ] || dpkg-query -W "$name" >/dev/null 2>&1 || apt-cache show "$name" >/dev/null 2>&1 || fail "the package depends on $name, which does not exist"
done

# Completion, as bash would ask for it.
bash -c '
    source "$1"
    ask() { COMP_WORDS=("$@"); COMP_CWORD=$(($# - 1)); COMPREPLY=(); _vowelway; printf "%s " "${COMPREPLY[@]}"; }
    [[ $(ask vowelway pl) == "plan " ]] || { echo "bash completes pl to: $(ask vowelway pl)"; exit 1; }
    [[ $(ask vowelway plan --marks "") == *"changes "* ]] || { echo "no choices of --marks"; exit 1; }
    [[ $(ask vowelway plan --techn) == "--technique " ]] || { echo "no option --technique"; exit 1; }
    [[ $(ask vowelway profile sh) == *"show "* ]] || { echo "no command profile show"; exit 1; }
' bash "$work/deb/usr/share/bash-completion/completions/vowelway" || fail "completion of bash"
echo "package: .tar.gz and .deb unpack and do the job"
