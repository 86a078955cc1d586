#!/bin/sh
# A save is killed at each of its calls to the system: the profile is then the old one or the new one, whole, and the next
# write leaves no temporary behind.
#   kills.sh PROGRAM SOURCE_DIR
set -eu
program=$1
recording=$2/tests/data/measuring/creak_e_a_o.ogg
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cd "$work"
strace -o probe true 2>/dev/null || { echo "skipped: strace is missing, or may not trace here"; exit 77; }
save() { "$@" "$program" measure "$recording" --vowels "e a o" --voice tenor --into me.yaml --date 2026-01-01 >out 2>err; }

save env || { cat err >&2; exit 1; }
cp me.yaml old.yaml
calls="openat read write fsync rename unlink link fchmod fchown flock close fstat newfstatat"
save strace -f -o dry -e "trace=$(echo $calls | tr ' ' ',')" || { cat err >&2; exit 1; }
cp me.yaml new.yaml
cmp -s old.yaml new.yaml && { echo "the second save changed nothing" >&2; exit 1; }

# From the line where the profile is opened to be changed; the numbers are those among calls of one name.
sed 's/^[0-9]* *//' dry >calls.txt
from=$(grep -n 'me\.yaml.*O_RDWR' calls.txt | head -1 | cut -d: -f1)
[ -n "$from" ] || { echo "the profile is never opened to be changed" >&2; exit 1; }
awk -v from="$from" '{ name = $0; sub(/\(.*/, "", name); ++n[name]; if (NR >= from && name ~ /^[a-z0-9]+$/) print name, n[name] }' calls.txt >moments
killed=0 olds=0 news=0
while read -r name number; do
    cp old.yaml me.yaml
    save strace -f -o trace -e "trace=$name" -e "inject=$name:signal=KILL:when=$number" && continue # the run took another way
    killed=$((killed + 1))
    if cmp -s me.yaml old.yaml; then
        olds=$((olds + 1))
    elif cmp -s me.yaml new.yaml; then
        news=$((news + 1))
    else
        echo "killed at $name $number: the profile is neither the old nor the new one" >&2
        exit 1
    fi
    cp old.yaml me.yaml
    save env || { cat err >&2; exit 1; }
    cmp -s me.yaml new.yaml || { echo "killed at $name $number: the next save went wrong" >&2; exit 1; }
    if ls -A | grep '\.vowelway-' >&2; then echo "killed at $name $number: the next save left a temporary" >&2; exit 1; fi
done <moments
[ "$killed" -ge 10 ] && [ "$olds" -gt 0 ] && [ "$news" -gt 0 ] || { echo "killed $killed times: $olds old, $news new: too few" >&2; exit 1; }
echo "killed at $killed calls: $olds times the old profile, $news times the new one, never another"
