#!/bin/sh
# SPDX-License-Identifier: MIT
# Word lists with pronunciations from Debian packages, in the form diction_accuracy reads:
#
#   sh bench/word_lists.sh FOLDER
#
# writes into FOLDER
#   pl.tsv         dict-freedict-pol-eng (from the Polish Wiktionary; CC BY-SA 3.0): entries whose stress mark stands
#                  before a syllable, as people write it. Those with the mark before the vowel were made by a
#                  speech synthesiser and are left out. Tildes on vowels before nasal consonants are taken away:
#                  they are not phonemes; ę and ą before a fricative keep them.
#   ru.stress.tsv  festvox-ru (N. Shmyrev, 2005; a licence like BSD's): words and which of their vowels is stressed
#   en-US.tsv      festlex-cmu (Carnegie Mellon's dictionary as Festival has it, with ə apart from ʌ; a licence like
#                  BSD's): the American stage leaves the r after a vowel out, so it is left out here
#   hu.tsv         dict-freedict-hun-eng (GPL 2): made by a speech synthesiser, so it only tells whether two
#                  independent sets of rules agree
# The packages are installed where they are missing (root), or say which to install.
set -eu
folder=${1:?usage: word_lists.sh FOLDER}
mkdir -p "$folder"
packages="dictzip dict-freedict-pol-eng dict-freedict-hun-eng festvox-ru festlex-cmu"
for package in $packages; do
    dpkg -s "$package" >/dev/null 2>&1 || missing="${missing:-} $package"
done
if [ -n "${missing:-}" ]; then
    if [ "$(id -u)" = 0 ]; then apt-get install -y -q $missing >/dev/null; else
        echo "word_lists.sh: install first:$missing" >&2
        exit 1
    fi
fi
# "word /ipa/ <n>" -> word TAB ipa: single words, no abbreviations
entries() { dictunzip -c "/usr/share/dictd/freedict-$1.dict.dz" | sed -n 's|^\([^ /]*\) /\([^/]*\)/.*|\1\t\2|p' | grep -v '^-\|^[^	]*[A-Z][A-Z]\|^.	'; }
entries pol-eng | grep -P '[ˈˌ](?![aeiouyɛɔɨ])|^[^ˈˌ]*$' | grep -vP 'ˈ[aeiouɛɔɨ].*ˈ' |
    sed -e 's/\(ɛ\|ɔ\)̃\([wj]\)̃/\1@/g' -e 's/̃//g' -e 's/@/̃/g' -e 's/ã/a/g;s/õ/o/g;s/ũ/u/g;s/ĩ/i/g' -e 's/[ˈˌ]//g' -e '/</d' | LC_ALL=C sort -u > "$folder/pl.tsv"
entries hun-eng | grep -v ' ' | sed -e 's/ɑ/ɒ/g' -e 's/[ˈˌ]//g' | LC_ALL=C sort -u > "$folder/hu.tsv"
sed -n 's|^("\([^"]*\)" [a-z]* (\([0-9]*\)))|\1\tstress \2|p' \
    /usr/share/festival/voices/russian/msu_ru_nsh_clunits/dict/msu_ru_nsh_dict.scm | LC_ALL=C sort -u > "$folder/ru.stress.tsv"
awk -v sounds='aa ɑ ae æ ah ʌ ao ɔ aw aʊ ax ə ay aɪ eh ɛ er ɜ ey eɪ ih ɪ iy i ow oʊ oy ɔɪ uh ʊ uw u
    b b ch tʃ d d dh ð f f g ɡ hh h jh dʒ k k l l m m n n ng ŋ p p r ɹ s s sh ʃ t t th θ v v w w y j z z zh ʒ' '
    BEGIN { n = split(sounds, s, /[ \n]+/); for (i = 1; i < n; i += 2) ipa[s[i]] = s[i + 1] }
    match($0, /^\("[a-z]+" /) {
        word = substr($0, 3, RLENGTH - 4); rest = substr($0, RLENGTH + 1); out = ""
        while (match(rest, /\(\([a-z ]+\) [0-9]\)/)) {
            one = substr(rest, RSTART, RLENGTH); rest = substr(rest, RSTART + RLENGTH)
            strong = one ~ / [1-9]\)$/; gsub(/[()0-9]/, "", one); m = split(one, phone, " ")
            for (i = 1; i <= m; i++) {
                if (phone[i] == "r" && i > 1) continue
                out = out " " (phone[i] == "er" && !strong ? "ə" : ipa[phone[i]])
            }
            out = out " ."
        }
        if (out != "") print word "\t" substr(out, 2)
    }' /usr/share/festival/dicts/cmu/cmudict-0.4.out | grep -v '	.*[ɹ] \.' | LC_ALL=C sort -u > "$folder/en-US.tsv"
wc -l "$folder"/*.tsv
