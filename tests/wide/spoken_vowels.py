"""Vowels that people say as the names of letters or as single syllables: what the program makes of each.

    python3 tests/wide/spoken_vowels.py PROGRAM [ROOT] [--each] [--together]

The clips are those of tests/wide/spoken/clips.csv, in packages of Debian 12 (main); nothing of them is copied here. Clips
that are not there are left out. Either install the packages, or unpack them below ROOT without installing:

    apt-get download klettres-data gcin-voice asterisk-core-sounds-en-g722 ..; for f in *.deb; do dpkg -x $f ROOT; done

`ffmpeg` is asked for the formats that the program does not read (g722, gsm). --each: a line for each clip. --together: the
clips of a speaker that hold nothing but a vowel as one recording, one file for each, as a singer's takes are.

Plausible: the published mean of that vowel in that language, of men or of women and children as the voice is, lies within
1.96 deviations of F1 and of F2; a deviation holds the program's own, the spread between speakers of one group (Peterson &
Barney 1952, Hillenbrand et al. 1995) and that between the studies of the language. Means of women and children, where only
men's are published, are the men's times the ratio of the groups in Peterson & Barney for the vowel nearest to it. Sources:
tests/wide/spoken/MANIFEST.md. The last columns say how sharp that is: how many of the other vowels of the language would
have been plausible too."""
import collections
import csv
import json
import math
import os
import statistics
import subprocess
import sys
import tempfile

HERE = os.path.dirname(os.path.abspath(__file__))
PROFILES = os.path.join(HERE, "..", "..", "profiles", "data")
UNREAD = (".g722", ".gsm")
NEEDED = 1.96
SPEECH_RATIO_FROM = "peterson1952"


def table(path):
    with open(path, encoding="utf-8") as file:
        return list(csv.DictReader(file))


def mean(values):
    return sum(values) / len(values)


def american():
    """ln F1, ln F2 of each speaker by study, group and vowel."""
    found = collections.defaultdict(list)
    for row in table(os.path.join(PROFILES, "american_speakers.csv")):
        if row["F1"] and row["F2"]:
            found[row["study"], row["group"], row["vowel"]].append((math.log(float(row["F1"])), math.log(float(row["F2"]))))
    return found


AMERICAN = american()


def spread_of_speakers():
    """Variance of ln F1 and ln F2 within a group, pooled over vowels and groups."""
    return [mean([statistics.variance([s[k] for s in speakers]) for speakers in AMERICAN.values()]) for k in (0, 1)]


SPREAD = spread_of_speakers()


def ratio(group, men):
    """ln of the ratio of a group's means to the men's for the vowel nearest to `men`."""
    vowels = {v for study, _, v in AMERICAN if study == SPEECH_RATIO_FROM}
    of = lambda g, v: [mean([s[k] for s in AMERICAN[SPEECH_RATIO_FROM, g, v]]) for k in (0, 1)]
    nearest = min(vowels, key=lambda v: sum((a - b) ** 2 for a, b in zip(of("m", v), men)))
    return [a - b for a, b in zip(of(group, nearest), of("m", nearest))]


def published():
    """By language, vowel and group: ln F1, ln F2, the variances between the studies, the number of speakers."""
    studies = collections.defaultdict(list)
    for row in table(os.path.join(HERE, "spoken", "published.csv")):
        studies[row["language"], row["vowel"], row["group"]].append(row)
    for row in table(os.path.join(PROFILES, "men_by_language.csv")):
        if row["language"] in ("deu", "fra", "ita", "eng") and row["quantity"] != "Short":
            studies[row["language"], row["vowel"], "man"].append(row)
    found = {}
    for (language, vowel, group), rows in studies.items():
        weights = [float(r["speakers"] or 1) for r in rows]
        centre, between = [], []
        for k in ("F1", "F2"):
            values = [math.log(float(r[k])) for r in rows]
            middle = sum(w * v for w, v in zip(weights, values)) / sum(weights)
            centre.append(middle)
            between.append(statistics.variance(values) if len(values) > 1 else 0)
        found[language, vowel, group] = (centre, between, sum(weights))
    for study, group, vowel in AMERICAN: # long and tense enough to be the names of letters
        if study == SPEECH_RATIO_FROM and vowel in ("i", "ɑ", "ɔ"):
            named = {"m": "man", "w": "woman", "c": "child"}[group]
            speakers = AMERICAN[study, group, vowel]
            found["eng", vowel, named] = ([mean([s[k] for s in speakers]) for k in (0, 1)], [0, 0], len(speakers))
    for (language, vowel, group), (centre, between, speakers) in list(found.items()):
        for letter, other in (("w", "woman"), ("c", "child")):
            if group == "man" and (language, vowel, other) not in found:
                shifted = [c + r for c, r in zip(centre, ratio(letter, centre))]
                found[language, vowel, other] = (shifted, between, speakers)
    return found


PUBLISHED = published()


def distance(take, language, vowel, group):
    """The larger of the two distances in deviations, from the nearest group of the voice; None where nothing is published.
    The mean of few speakers is itself uncertain by their spread."""
    groups = ("man",) if group == "man" else ("woman", "child")
    best = None
    for g in groups:
        if (language, vowel, g) not in PUBLISHED:
            continue
        centre, between, speakers = PUBLISHED[language, vowel, g]
        away = 0
        for k in (0, 1):
            f, sd = take["measured"][f"F{k + 1}_hz"], take["measured"][f"F{k + 1}_sd_hz"]
            away = max(away, abs(math.log(f) - centre[k]) / math.sqrt((sd / f) ** 2 + SPREAD[k] * (1 + 1 / speakers) + between[k]))
        best = away if best is None else min(best, away)
    return best


def readable(path, scratch):
    if not path.endswith(UNREAD):
        return path
    wave = os.path.join(scratch, path.replace("/", "_") + ".wav")
    subprocess.run(["ffmpeg", "-v", "error", "-y", "-i", path, wave], check=True)
    return wave


def answer(program, files, vowels, group):
    voice = "baritone" if group == "man" else "mezzo"
    told = subprocess.run([program, "measure", *files, "--vowels", " ".join(vowels), "--voice", voice, "--as", "json"],
                          capture_output=True, text=True)
    try:
        return json.loads(told.stdout)["takes"], ""
    except ValueError:
        return [], next((l for l in told.stderr.splitlines() if l), "")


def kind_of(take):
    return {"sung": "voice", "spoken": "voice"}.get(take["probe"], take["probe"])


class Count:
    def __init__(self):
        self.clips = self.found = self.read = self.judged = self.plausible = self.others = self.other_plausible = 0
        self.kinds = collections.Counter()
        self.speakers = set()
        self.why = collections.Counter()

    def add(self, clip, take, why):
        self.clips += 1
        self.speakers.add(clip["speaker"])
        if take is None:
            self.why[why] += 1
            return None
        self.found += 1
        self.kinds[kind_of(take)] += 1
        if take["refused"]:
            self.why[take["refused"].split(":")[0].split(";")[0]] += 1
            return None
        self.read += 1
        named = [v for v in (clip["vowel"], clip["or"]) if v]
        distances = [distance(take, clip["language"], v, clip["group"]) for v in named]
        distances = [d for d in distances if d is not None]
        if not distances:
            return None
        away = min(distances)
        self.judged += 1
        self.plausible += away <= NEEDED
        for language, vowel, group in PUBLISHED:
            if language == clip["language"] and group == "man" and vowel not in named:
                self.others += 1
                self.other_plausible += distance(take, language, vowel, clip["group"]) <= NEEDED
        return away


HEAD = f"{'':18}{'speakers':>9}{'clips':>7}{'found':>7}{'voice':>7}{'creak':>7}{'whisper':>8}{'read':>6}{'judged':>8}{'plausible':>11}{'other vowels':>14}"


def line(name, c):
    other = f"{100 * c.other_plausible / c.others:.0f} %" if c.others else ""
    return (f"{name:18}{len(c.speakers):9}{c.clips:7}{c.found:7}{c.kinds['voice']:7}{c.kinds['creak']:7}{c.kinds['whisper']:8}"
            f"{c.read:6}{c.judged:8}{c.plausible:11}{other:>14}")


def without_numbers(text):
    return " ".join("#" if any(ch.isdigit() for ch in word) else word for word in text.split())


def read_all(program, clips, each, together):
    rows = collections.defaultdict(Count)
    wrong = []
    with tempfile.TemporaryDirectory() as scratch:
        groups = collections.defaultdict(list)
        for i, clip in enumerate(clips):
            groups[clip["speaker"] if together else i].append(clip)
        for some in groups.values():
            files = [readable(c["path"], scratch) for c in some]
            takes, why = answer(program, files, [c["vowel"] for c in some], some[0]["group"])
            for i, clip in enumerate(some):
                take = takes[i] if i < len(takes) else None
                away = None
                for name in (clip["language"], "after consonants" if clip["onset"] else "vowel alone", "all"):
                    away = rows[name].add(clip, take, without_numbers(why.split(": ", 1)[-1]))
                if each or (away is not None and away > NEEDED):
                    m = take["measured"] if take else {}
                    said = (f"{clip['speaker']} {clip['file'].split('/')[-2]}/{clip['file'].split('/')[-1]} /{clip['vowel']}/ "
                            f"({clip['why']}): " + (f"{take['probe']} {take['rate_hz'] or ''} F1 {m.get('F1_hz')} +- {m.get('F1_sd_hz')}, "
                            f"F2 {m.get('F2_hz')} +- {m.get('F2_sd_hz')}: {take['refused'] or 'read'}" if take else why)
                            + (f", {away:.1f} deviations from the mean" if away is not None else ""))
                    (print(said) if each else wrong.append(said))
    return rows, wrong


def main():
    options = [a for a in sys.argv[1:] if a.startswith("--")]
    rest = [a for a in sys.argv[1:] if not a.startswith("--")]
    if not rest or len(rest) > 2 or set(options) - {"--each", "--together"}:
        sys.exit(__doc__)
    root = rest[1] if len(rest) == 2 else "/"
    clips = table(os.path.join(HERE, "spoken", "clips.csv"))
    for c in clips:
        c["path"] = os.path.join(root, c["file"].lstrip("/"))
    together = "--together" in options
    there = [c for c in clips if os.path.exists(c["path"]) and not (together and c["onset"])]
    missing = sorted({c["package"] for c in clips} - {c["package"] for c in there})
    if missing:
        print("not there, left out:", ", ".join(missing))
    if not there:
        sys.exit("no clip is there: see the head of this file")
    rows, wrong = read_all(rest[0], there, "--each" in options, together)
    print(HEAD)
    for name in sorted(n for n in rows if len(n) == 3 and n != "all"):
        print(line(name, rows[name]))
    for name in ("vowel alone", "after consonants", "all"):
        if name in rows:
            print(line(name, rows[name]))
    print("why no number:")
    reasons = collections.Counter()
    for why, count in rows["all"].why.items():
        reasons[without_numbers(why)] += count
    for why, count in reasons.most_common():
        print(f"{count:5} {why}")
    if wrong:
        print("implausible:")
        print("\n".join("  " + w for w in wrong))


main()
