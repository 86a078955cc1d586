#!/bin/sh
# Vowels that people say as the names of letters, in languages whose letters are pure vowels: which kind of sound
# each is taken for, and what is refused. FOLDER is /usr/share/klettres of Debian's klettres-data (GPL 2 or later;
# nothing is copied from it).
# sh tests/wide/spoken_letters.sh PROGRAM FOLDER
set -eu
program=$1 folder=$2
answer=$(mktemp)
trap 'rm -f "$answer"' EXIT
for language in de es it nds pt_BR; do
    for vowel in a e i o u; do
        file=$folder/$language/alpha/$vowel.ogg
        [ -f "$file" ] || continue
        "$program" measure "$file" --vowels "$vowel" --voice mezzo --as json >"$answer" 2>/dev/null || true
        python3 - "$language $vowel" "$answer" <<'PY'
import json, sys
try:
    takes = json.load(open(sys.argv[2]))["takes"]
except ValueError:
    takes = []
print(sys.argv[1], "; ".join(f"{t['probe']} {t['rate_hz'] or ''} {t['refused'] or 'read'}" for t in takes) or "no answer")
PY
    done
done
