#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""Reads MusicXML with the standard library alone and holds every sung note, its length, its time in seconds and its
syllable against what vowelway reads.

    read_scores.py READ_BACK VERSE EXPLAINED FOLDER..     VERSE: 0 as vowelway chooses, -1 all of it; parts: every line
                                                          that is sung, and that no syllable of a score is in none

The rules are written anew from MusicXML 4.0 and from the contract in vowelway/io/score/read_score.hpp; no code is shared.
A difference must stand in EXPLAINED ("file <tab> kind <tab> how many <tab> why"), and what stands there must occur.
"""
import os
import re
import subprocess
import sys
import xml.etree.ElementTree as ET
import zipfile
from collections import defaultdict
from fractions import Fraction

STEPS = {"C": 0, "D": 2, "E": 4, "F": 5, "G": 7, "A": 9, "B": 11}
VALUES = {"maxima": 32, "long": 16, "breve": 8, "whole": 4, "half": 2, "quarter": 1, "eighth": Fraction(1, 2)}
for power in range(4, 11):
    VALUES[f"{2 ** power}{'nd' if power == 5 else 'th'}"] = Fraction(4, 2 ** power)


def text_of(path):
    if zipfile.is_zipfile(path):
        with zipfile.ZipFile(path) as archive:
            container = ET.fromstring(archive.read("META-INF/container.xml"))
            name = next(e.get("full-path") for e in container.iter() if e.tag.endswith("rootfile"))
            return archive.read(name)
    with open(path, "rb") as file:
        return file.read()


class Event:
    """A note, chord or rest of one voice."""

    def __init__(self, node, onset, length, voice, staff):
        self.nodes, self.onset, self.length, self.voice, self.staff = [node], onset, length, voice, staff
        self.grace = node.find("grace") is not None
        self.rest = node.find("rest") is not None
        self.cue = node.find("cue") is not None
        self.unpitched = node.find("unpitched") is not None
        self.shift = 0
        self.words_from = [node]

    def sounds(self):
        return not (self.rest or self.cue or self.unpitched)


class Bar:
    def __init__(self, number):
        self.number, self.events, self.marks, self.filled, self.nominal = number, [], [], Fraction(0), Fraction(4)
        self.beat_type, self.barlines, self.jumps, self.implicit = 4, [], [], False


def number(text):
    return Fraction(text.strip())


def tempo_of(node):
    """Quarter notes a minute and whether it is meant to sound; or None."""
    sound = node if node.tag == "sound" else node.find("sound")
    if sound is not None and sound.get("tempo"):
        return ("tempo", float(sound.get("tempo")), True)
    for metronome in node.iter("metronome"):
        units = []
        for child in metronome:
            if child.tag == "beat-unit":
                units.append(Fraction(VALUES.get(child.text.strip(), 0)))
                dot = units[-1] / 2
            elif child.tag == "beat-unit-dot":
                units[-1] += dot
                dot /= 2
        found = re.search(r"\d+(\.\d+)?", metronome.findtext("per-minute") or "")
        if len(units) == 2 and all(units):
            return ("ratio", float(units[1] / units[0]), False)
        if len(units) == 1 and units[0] and found:
            return ("tempo", float(found.group()) * float(units[0]), False)
    return None


def read_part(measures):
    bars, divisions, nominal, beat_type = [], Fraction(1), Fraction(4), 4
    transpose = defaultdict(int)
    for measure, music in measures:
        bar = Bar(measure.get("number") or "")
        bar.implicit = measure.get("implicit") == "yes"
        now, last = Fraction(0), None
        for child in music:
            if child.tag == "attributes":
                if child.find("divisions") is not None:
                    divisions = number(child.findtext("divisions"))
                for time in child.findall("time"):
                    if time.find("senza-misura") is not None:
                        nominal = Fraction(0)
                        continue
                    beats = time.findall("beats")
                    types = [int(t.text) for t in time.findall("beat-type")]
                    if beats:
                        nominal = sum(sum(int(n) for n in b.text.split("+")) * Fraction(4, t) for b, t in zip(beats, types))
                        beat_type = max(types)
                for node in child.findall("transpose"):
                    by = int(float(node.findtext("chromatic") or 0)) + 12 * int(node.findtext("octave-change") or 0)
                    if node.get("number"):
                        transpose[node.get("number")] = by
                    else:
                        transpose = defaultdict(lambda by=by: by)
            elif child.tag in ("backup", "forward"):
                step = number(child.findtext("duration")) / divisions
                now = max(Fraction(0), now - step if child.tag == "backup" else now + step)
                bar.filled = max(bar.filled, now)
            elif child.tag in ("direction", "sound"):
                at = now
                if child.find("offset") is not None:
                    at = max(Fraction(0), at + number(child.findtext("offset")) / divisions)
                mark = tempo_of(child)
                if mark:
                    bar.marks.append((at, *mark))
                bar.jumps.append((at, child))
            elif child.tag == "barline":
                bar.barlines.append(child)
            elif child.tag == "note":
                if child.find("chord") is not None and last is not None:
                    if child.find("pitch") is None or child.find("cue") is not None or last.rest or last.unpitched:
                        continue
                    if last.cue:  # the full-size note beside a small one is the one to sing
                        last.cue, last.nodes = False, []
                    last.nodes.append(child)
                    last.words_from.append(child)
                    continue
                grace = child.find("grace") is not None
                length = Fraction(0) if grace else number(child.findtext("duration")) / divisions
                staff = int(child.findtext("staff") or 1)
                voice = (child.findtext("voice") or "").strip() or (f"staff {staff}" if staff > 1 else "1")
                last = Event(child, now, length, voice, staff)
                last.shift = transpose[str(staff)]
                bar.events.append(last)
                now += length
                bar.filled = max(bar.filled, now)
        bar.events.sort(key=lambda e: e.onset)
        bar.nominal, bar.beat_type = nominal, beat_type
        bars.append(bar)
    return bars


PUNCTUATION = re.compile(r"[\W_]", re.UNICODE)


def syllables_of(lyric):
    """The syllables of a <lyric> as bare lower-case letters: punctuation is not what is compared."""
    said = ""
    for child in lyric:  # texts without an elision between them are one word in two fonts
        said += (child.text or "") if child.tag == "text" else " " if child.tag == "elision" else ""
    said = re.sub(r"^\s*\d{1,2}[.):]\s*", "", said)
    bare = [PUNCTUATION.sub("", part) for part in re.split(r"[\s‿_\u00a0\u202f\ue550-\ue552]+", said)]
    return [b.casefold() for b in bare if b]


def lyrics_on(event, line):
    for node in event.words_from:
        for lyric in node.findall("lyric"):
            if (lyric.get("number") or "1") != line:
                continue
            if lyric.find("humming") is not None:
                return ["(hum)"]
            found = syllables_of(lyric)
            if found:
                return ["(hum)"] if re.fullmatch("h?m+", "".join(found)) and "'" not in "".join(lyric.itertext()) and "’" not in "".join(lyric.itertext()) else found
    return []


def words_in(bars):
    return sum(1 for b in bars for e in b.events for n in e.words_from if n.find("lyric/text") is not None)


def line_order(line):
    found = re.match(r"\d+", line)
    return (int(found.group()) if found else 10 ** 9, line)


class Sung:
    def __init__(self, event):
        self.event, self.onset, self.length = event, event.onset, event.length


def line_of(bar, main, others, line):
    """The main voice; where another of its staff has more of the words, that one."""
    out = [Sung(e) for e in bar.events if e.voice == main]
    for other in others:
        runs, end = [], None
        for event in bar.events:
            if event.voice != other or not event.sounds():
                continue
            if end is None or event.onset > end:
                runs.append([])
            runs[-1].append(event)
            end = event.onset + event.length
        for run in runs:
            begin, end = run[0].onset, run[-1].onset + run[-1].length
            mine = [s for s in out if begin <= s.onset < end]
            here = sum(1 for s in mine if s.event.sounds() and lyrics_on(s.event, line))
            rests = {s.onset for s in mine if s.event.rest and lyrics_on(s.event, line)}
            own = [e for e in run if lyrics_on(e, line)]
            there = len(own) + len([e for e in run if e not in own and e.onset in rests])
            if there <= here:
                for event in own:  # its words go to notes that have none
                    for s in out:
                        if s.onset == event.onset and s.event.sounds() and not lyrics_on(s.event, line):
                            s.event.words_from = s.event.words_from + event.words_from
                continue
            kept = []
            for s in out:
                if s.onset + s.length <= begin or s.onset >= end:
                    kept.append(s)
                elif s.onset < begin:
                    s.length = begin - s.onset
                    kept.append(s)
                else:
                    for event in run:
                        if event.onset == s.onset and not lyrics_on(event, line):
                            event.words_from = event.words_from + s.event.words_from
            out = sorted(kept + [Sung(e) for e in run], key=lambda s: s.onset)
    return out


def key_of(node):
    pitch = node.find("pitch")
    return STEPS[pitch.findtext("step").strip()] + 12 * (int(pitch.findtext("octave")) + 1) + float(pitch.findtext("alter") or 0)


def small(node):
    kind = node.find("type")
    return kind is not None and kind.get("size") == "cue"


def head_of(event, lowest=False):
    full = [n for n in event.nodes if not small(n)] or event.nodes
    return min(full, key=key_of) if lowest else max(full, key=key_of)


def tie(event, kind):
    return any(t.get("type") == kind for n in event.nodes for t in list(n.findall("tie")) + n.findall("notations/tied"))


class Note:
    def __init__(self, bar, key, onset, length, words, grace=False):
        self.bar, self.key, self.onset, self.length, self.words, self.grace = bar, key, onset, length, words, grace
        self.start = self.seconds = 0.0


def choose(parts, named):
    best = max(parts, key=lambda p: words_in(p["bars"]))
    if words_in(best["bars"]):
        return best
    pitched = [p for p in parts if any(e.sounds() for b in p["bars"] for e in b.events)]
    # Without words the choice is not what is compared: the part that was named.
    return next((p for p in pitched if (p["info"].findtext("part-name") or "").split() == named.split()), pitched[0])


def parts_of(root):
    parts = []
    for info in root.iter("score-part"):
        measures = []
        if root.tag == "score-timewise":
            for measure in root.findall("measure"):
                measures += [(measure, p) for p in measure.findall("part") if p.get("id") == info.get("id")]
        else:
            for part in root.findall("part"):
                if part.get("id") == info.get("id"):
                    measures = [(m, m) for m in part.findall("measure")]
                    break
        parts.append({"info": info, "bars": read_part(measures)})
    return parts


def bar_lengths(parts, own):
    lengths = []
    for i, bar in enumerate(own):
        filled = bar.filled
        if filled < bar.nominal or filled == 0:
            others = max([p["bars"][i].filled for p in parts if i < len(p["bars"])] + [filled])
            filled = max(filled, min(others, bar.nominal)) if bar.nominal else others
        lengths.append(filled or bar.nominal or Fraction(4))
    return lengths


class Signs:
    """What leads through the score at one bar, in any part."""

    def __init__(self):
        self.begin = self.end = self.stop = self.segno = self.coda = self.capo = self.dal = self.to_coda = self.fine = False
        self.times, self.ending = 0, []


def signs_of(parts, count):
    out = [Signs() for _ in range(count + 1)]
    for part in parts:
        for i, bar in enumerate(part["bars"]):
            here = out[i]
            for line in bar.barlines:
                repeat, ending = line.find("repeat"), line.find("ending")
                if repeat is not None and repeat.get("direction") == "forward":
                    here.begin = True
                elif repeat is not None:
                    here.end, here.times = True, max(here.times, int(repeat.get("times") or 0))
                if ending is not None and ending.get("type") == "start":
                    here.ending = [int(n) for n in re.findall(r"\d+", ending.get("number"))]
                elif ending is not None:
                    here.stop = True
            for at, node in bar.jumps:
                sound = node if node.tag == "sound" else node.find("sound")
                said = sound.attrib if sound is not None else {}
                words = "".join("".join(w.itertext()) for w in node.iter("words")).lower().replace(" ", "").replace(".", "")
                target = out[i + 1] if 0 < at and at >= bar.filled and i + 1 < count else here
                plain = not {"dacapo", "dalsegno", "tocoda", "fine", "segno", "coda"} & set(said)
                here.capo |= "dacapo" in said or plain and (words.startswith("dacapo") or words in ("dc", "dcalfine", "dcalcoda"))
                here.dal |= "dalsegno" in said or plain and (words.startswith("dalsegno") or words in ("ds", "dsalfine", "dsalcoda"))
                here.fine |= "fine" in said or plain and words == "fine"
                here.to_coda |= "tocoda" in said
                target.segno |= "segno" in said or plain and any(True for _ in node.iter("segno"))
                target.coda |= "coda" in said
    return out[:count]


def sections(signs):
    """The bars as stretches: (first, last, [ending bars]) that repeat, and single bars."""
    out, i, begin = [], 0, 0
    while i < len(signs):
        if signs[i].begin:
            begin = i
        if signs[i].end or (signs[i].ending and any(s.end for s in signs[i:i + 1])):
            endings, k = [], i
            while k > begin and not signs[k].ending:
                k -= 1
            if signs[k].ending:  # the repeat closes an ending: all beside it belong to the section
                while k < len(signs) and signs[k].ending:
                    last = k
                    while last + 1 < len(signs) and not signs[last].stop:
                        last += 1
                    endings.append((signs[k].ending, k, last))
                    i, k = last, last + 1
            out.append((begin, i, endings))
            begin = i + 1
        i += 1
    return out


def belongs(endings, turn):
    """The ending of a pass: that which names it, or the last that begins before ("1." alone is often "1. and 2.")."""
    named = [e for e in endings if turn in e[0]]
    return named[0] if named else max((e for e in endings if min(e[0]) <= turn), key=lambda e: min(e[0]), default=endings[-1])


def as_sung(signs, verses, whole):
    """[(bar, section pass)] in the order of singing."""
    repeated = {begin: (begin, end, endings) for begin, end, endings in sections(signs)}

    def straight(begin, end, again):
        out, i = [], begin
        while i <= end:
            if i in repeated and repeated[i][1] <= end:
                begin_at, last, endings = repeated[i]
                body = endings[0][1] - 1 if endings else last
                times = signs[last].times or max([2] + verses[begin_at:last + 1])
                if endings:
                    times = max(n for e in endings for n in e[0])
                for turn in range(1, times + 1) if not again else [times]:
                    out += [(k, turn if not again else 1) for k in range(begin_at, body + 1)]
                    if endings:
                        _, first, stop = belongs(endings, turn)
                        out += [(k, turn if not again else 1) for k in range(first, stop + 1)]
                i = last + 1
            else:
                out.append((i, 1))
                i += 1
        return out

    once = straight(0, len(signs) - 1, False)
    loose = [i for i, s in enumerate(signs) if s.ending and not any(b <= i <= e for b, e, _ in repeated.values())]
    jumps = [i for i, s in enumerate(signs) if s.capo or s.dal]
    if jumps:
        i = jumps[0]
        target = next((k for k, s in enumerate(signs) if s.segno), 0) if signs[i].dal else 0
        if not (signs[i].end and target in repeated and repeated[target][1] == i):
            at = max(k for k, (bar, _) in enumerate(once) if bar == i)
            tail = straight(target, len(signs) - 1, True)
            fine = next((k for k, (bar, _) in enumerate(tail) if signs[bar].fine), None)
            leave = next((k for k, (bar, _) in enumerate(tail) if signs[bar].to_coda), None)
            coda = next((k for k, s in enumerate(signs) if s.coda), None)
            if fine is not None and (leave is None or coda is None or fine <= leave):
                tail = tail[:fine + 1]
            elif leave is not None and coda is not None:
                tail = tail[:leave + 1] + straight(coda, len(signs) - 1, True)
            once = once[:at + 1] + tail
    turns = max([turn for bar, turn in once if verses[bar] > 1] + [1])
    out = []
    for round_ in range(1, whole + 1 if turns < whole else 2):
        for bar, turn in once:
            endings = [(signs[k].ending, k, k) for k in loose]
            if endings and bar in loose and belongs(endings, round_)[1] != bar:
                continue
            out.append((bar, max(turn, round_)))
    return out


def tempo_map(parts, own, order, lengths):
    """[(onset, quarters a minute)]: of marks at one place that which is meant to sound, then that of the own part."""
    marks, now, before, came_in = [], Fraction(0), None, {}
    for i, _ in order:
        here = {}
        if before is not None and i != before + 1 and i in came_in:
            marks.append((now, "again", i))  # after a jump: the tempo in which that bar was first reached
        elif i not in came_in:
            marks.append((now, "comes", i))
            came_in[i] = None
        before = i
        for part in parts:
            bars = part["bars"]
            if i >= len(bars):
                continue
            for at, kind, value, sounding in bars[i].marks:
                rank = (sounding, bars is own)
                at = now + min(at, lengths[i])
                if at not in here or here[at][0] < rank or (here[at][0] == rank and kind == "tempo"):
                    here[at] = (rank, kind, value)
        marks += [(at, kind, value) for at, (_, kind, value) in sorted(here.items())]
        now += lengths[i]
    first = next((v for _, kind, v in marks if kind == "tempo"), 72.0)
    out = [(Fraction(0), first)]
    for at, kind, value in marks:
        if kind == "comes":
            came_in[value] = out[-1][1]
            continue
        tempo = came_in[value] if kind == "again" else value if kind == "tempo" else out[-1][1] * value
        if at == out[-1][0]:
            out[-1] = (at, tempo)
        else:
            out.append((at, tempo))
    return out


def seconds_at(tempi, onset):
    total, (before, tempo) = 0.0, tempi[0]
    for at, value in tempi[1:]:
        if at >= onset:
            break
        total += float(at - before) * 60 / tempo
        before, tempo = at, value
    return total + float(onset - before) * 60 / tempo


def verse_of_bars(order, lines, count):
    """The line of words of each bar sung: a stretch takes that of its pass if it has words there, else the first."""
    out, k = [], 0
    while k < len(order):
        end = k + 1
        while end < len(order) and order[end][1] == order[k][1] and order[end][0] == order[end - 1][0] + 1:
            end += 1
        turn = order[k][1] - 1
        own = turn < len(lines) and any(bar < len(count[turn]) and count[turn][bar] for bar, _ in order[k:end])
        out += [lines[turn if own else 0] if lines else ""] * (end - k)
        k = end
    return out


def refrain_of(order, bars, main, others, line_in, lines):
    """Notes without words of their verse that the first verse sings, four and more in a row."""
    out, run, before = set(), [], None

    def finish():
        if len(run) >= 4:
            out.update(run)
        run.clear()
    for place, (i, _) in enumerate(order):
        line = line_in[place]
        if line != before:
            finish()
        before = line
        for k, s in enumerate(line_of(bars[i], main, others, line)):
            if not s.event.sounds():
                continue
            if lyrics_on(s.event, line):
                finish()
            elif lines and line != lines[0] and lyrics_on(s.event, lines[0]):
                run.append((place, k))
    finish()
    return out


def named(bar, reached):
    ending = "th" if 10 < reached % 100 < 20 else {1: "st", 2: "nd", 3: "rd"}.get(reached % 10, "th")
    return bar if reached == 1 or not bar else f"{bar} ({reached}{ending} time)"


def singer(info):
    """Whether a part is a singer's: by its sound, else by its name."""
    sounds = [s.text.strip() for s in info.iter("instrument-sound")]
    return any(s.startswith("voice.") for s in sounds) or not sounds and "iano" not in (info.findtext("part-name") or "")


def begun_together(bars, main, other):
    return sum(1 for b in bars for e in b.events if e.voice == other and e.sounds() and not e.grace
               and any(m.voice == main and m.sounds() and m.onset == e.onset for m in b.events))


def of_its_own(bars, main, other, line):
    """Whether a voice has its words mostly where the main voice has some too: then it is another singer."""
    together = all_ = 0
    for bar in bars:
        mine = [e for e in bar.events if e.voice == main]
        run, end = [], None
        for event in [e for e in bar.events if e.voice == other and e.sounds()] + [None]:
            if run and (event is None or event.onset > end):
                own = sum(1 for e in run if lyrics_on(e, line))
                all_ += own
                together += own if any(run[0].onset <= e.onset < end and e.sounds() and lyrics_on(e, line) for e in mine) else 0
                run, end = [], None
            if event is not None:
                run.append(event)
                end = event.onset + event.length if end is None else max(end, event.onset + event.length)
    return 2 * together > all_


def read(path, verse, part_named, wish="", lowest=False):
    root = ET.fromstring(text_of(path))
    parts = parts_of(root)
    part = parts[int(wish.split(".")[0]) - 1] if wish else choose(parts, part_named)
    bars = part["bars"]
    lines = sorted({(l.get("number") or "1") for b in bars for e in b.events for n in e.words_from for l in n.findall("lyric")},
                   key=line_order)
    line = lines[0] if lines else ""
    voices = defaultdict(lambda: [0, 0, defaultdict(int)])
    for bar in bars:
        for event in bar.events:
            voice = voices[event.voice]
            voice[0] += bool(lyrics_on(event, line))
            voice[1] += event.sounds()
            voice[2][event.staff] += 1
    staff = {v: max(c[2], key=lambda s: (c[2][s], -s)) for v, c in voices.items()}
    ranked = sorted(voices, key=lambda v: staff[v])
    main = max(ranked, key=lambda v: (voices[v][0], voices[v][1] if not voices[v][0] else 0))
    singers = [v for v in ranked if v == main or voices[v][0] and (staff[v] != staff[main] or of_its_own(bars, main, v, line))]
    if "." in wish:
        wordless = [v for v in ranked if v not in singers and not voices[v][0] and voices[v][1] and (
            2 * voices[v][1] >= voices[main][1] or singer(part["info"]) and begun_together(bars, main, v) >= 16)]
        main = (singers + wordless)[int(wish.split(".")[1]) - 1]
    others = [v for v in ranked if v != main and staff[v] == staff[main] and v not in singers]
    order, line_in = [(i, 1) for i in range(len(bars))], None
    if verse == -1:
        count = [[sum(bool(lyrics_on(e, l)) for e in b.events) for b in bars] for l in lines]
        longest = max(len(p["bars"]) for p in parts)
        verses = [max([k + 1 for k in range(len(lines)) if i < len(bars) and count[k][i]] + [0]) for i in range(longest)]
        whole = max([k + 1 for k in range(len(lines)) if 2 * sum(count[k]) >= sum(count[0])] + [1])
        order = as_sung(signs_of(parts, longest), verses, whole)
        line_in = verse_of_bars(order, lines, count)
    lengths = bar_lengths(parts, bars)
    tempi = tempo_map(parts, bars, order, lengths)
    notes, now, open_tie, end = [], Fraction(0), False, None
    pending, silent = None, True
    refrain = refrain_of(order, bars, main, others, line_in, lines) if line_in else set()
    reached = defaultdict(int)
    for place, (i, _) in enumerate(order):
        reached[i] += 1
        if line_in:
            line = line_in[place]
        for number_in_bar, s in enumerate(line_of(bars[i], main, others, line)):
            event = s.event
            words = lyrics_on(event, line)
            if (place, number_in_bar) in refrain:
                words = lyrics_on(event, lines[0])
            others_sing = not words and any(lyrics_on(event, l) for l in lines)
            if event.sounds() and silent and others_sing:
                continue  # after a rest a note that only other verses have
            silent = not event.sounds()
            if event.rest:
                if words and words != ["(hum)"]:
                    pending = words
                continue
            if not event.sounds():
                continue
            if pending and not words:
                words = pending
            pending = None
            if event.grace and not words:
                continue
            begin, key = now + s.onset, key_of(head_of(event, lowest)) + event.shift
            if (notes and not event.grace and open_tie and not words and begin == end and key == notes[-1].key
                    and tie(event, "stop")):
                notes[-1].length += s.length
            else:
                notes.append(Note(named(bars[i].number, reached[i]), key, begin, s.length, words, event.grace))
            open_tie, end = tie(event, "start"), begin + s.length
        now += lengths[i]
    for k, note in enumerate(notes):
        note.start = seconds_at(tempi, note.onset)
        note.seconds = seconds_at(tempi, note.onset + note.length) - note.start
        if note.grace:
            continue
        first = k
        while first > 0 and notes[first - 1].grace and notes[first - 1].onset == note.onset:
            first -= 1
        count = k - first
        if count:  # a sung grace note takes an eighth of a quarter, at most half, from the note it leads to
            each = min(seconds_at(tempi, note.onset + Fraction(1, 8)) - note.start, note.seconds / 2 / count)
            for j in range(first, k):
                notes[j].start, notes[j].seconds = note.start + each * (j - first), each
            note.start += each * count
            note.seconds -= each * count
    return notes


def key_named(name):
    name = name.replace("♯", "#").replace("♭", "b").replace("𝄪", "##").replace("𝄫", "bb")
    found = re.fullmatch(r"([A-G])([#b]*)(-?\d+)(.*)", name)
    if not found:
        return None
    step, signs, octave, _ = found.groups()
    return STEPS[step] + 12 * (int(octave) + 1) + signs.count("#") - signs.count("b")


def readings_of(program, verse, files):
    """Of each file its lines as (notes, part, wish, lowest), or why it is refused."""
    told = subprocess.run([program, str(verse), *files], check=True, capture_output=True, text=True).stdout
    out, notes = {}, None
    for row in told.splitlines():
        cells = row.split("\t")
        if cells[0] == "file":
            notes = []
            out.setdefault(cells[1], []).append((notes, cells[2], cells[4], cells[5] == "1"))
        elif cells[0] == "refused":
            out[cells[1]] = cells[2]
        elif cells[0] == "note":
            words = [PUNCTUATION.sub("", w).casefold() for w in cells[8].split(" ")] if cells[8] != "(hum)" else ["(hum)"]
            notes.append({"bar": cells[1], "pitch": cells[3], "key": key_named(cells[3]), "onset": float(cells[4]),
                          "length": float(cells[5]), "start": float(cells[6]), "seconds": float(cells[7]),
                          "words": [w for w in words if w]})
    return out


def compare(mine, theirs):
    """Every difference as (kind, text). Notes are matched by onset and order at that onset."""
    out, places = [], defaultdict(lambda: ([], []))
    for n in mine:
        places[round(float(n.onset), 3)][0].append(n)
    for n in theirs:
        places[round(n["onset"], 3)][1].append(n)
    for at, (a, b) in sorted(places.items()):
        for n in a[len(b):]:
            out.append(("missing", f"bar {n.bar}: key {n.key} {n.words}"))
        for n in b[len(a):]:
            out.append(("added", f"bar {n['bar']}: {n['pitch']} {n['words']}"))
        for n, m in zip(a, b):
            where = f"bar {m['bar']} at {at}: "
            if m["key"] is None or abs(n.key - m["key"]) > 0.6:
                out.append(("pitch", where + f"{n.key} read as {m['pitch']}"))
            if abs(float(n.length) - m["length"]) > 1e-3:
                out.append(("length", where + f"{float(n.length)} read as {m['length']}"))
            if abs(n.start - m["start"]) > 2e-3 or abs(n.seconds - m["seconds"]) > 2e-3:
                out.append(("time", where + f"{n.start:.4f} for {n.seconds:.4f} s read as {m['start']} for {m['seconds']} s"))
            if n.words != m["words"]:
                out.append(("words", where + f"{n.words} read as {m['words']}"))
            if n.bar[:1].isdigit() and m["bar"] != n.bar:
                out.append(("bar", where + f"{n.bar}"))
    return out


def syllables_lost(path, sung):
    """Syllables of the first verse of any part that none of the lines has at their place."""
    out, parts = [], parts_of(ET.fromstring(text_of(path)))
    longest = max(parts, key=lambda p: len(p["bars"]))["bars"]
    lengths = bar_lengths(parts, longest)
    for part in parts:
        lines = sorted({(l.get("number") or "1") for b in part["bars"] for e in b.events for n in e.words_from for l in n.findall("lyric")},
                       key=line_order)
        now = Fraction(0)
        for i, bar in enumerate(part["bars"]):
            for event in bar.events:
                words = lyrics_on(event, lines[0]) if lines and event.sounds() else []
                place = (round(float(now + event.onset), 3), tuple(words))
                if words and not sung[place]:
                    out.append(f"{part['info'].findtext('part-name')}, bar {bar.number} at {place[0]}: {words}")
            now += lengths[i]
    return out


def has_words(path):
    return any(words_in(part["bars"]) for part in parts_of(ET.fromstring(text_of(path))))


def explained_in(path):
    out = {}
    with open(path, encoding="utf-8") as file:
        for row in file:
            if row.strip() and not row.startswith("#"):
                name, kind, count, why = row.rstrip("\n").split("\t")
                out[(name, kind)] = (int(count), why)
    return out


def main():
    program, verse, explained, folders = sys.argv[1], sys.argv[2], explained_in(sys.argv[3]), sys.argv[4:]
    verse = verse if verse == "parts" else int(verse)
    files = sorted(os.path.join(where, name) for folder in folders for where, _, names in os.walk(folder) for name in names
                   if name.endswith((".mxl", ".xml", ".musicxml")) and "META-INF" not in where)
    readings = readings_of(program, verse, files)
    notes = differ = bad = 0
    for path in files:
        name, reading = os.path.basename(path), readings[path]
        if isinstance(reading, str):
            if (name, "refused") not in explained and "no notes to sing" not in reading and not (
                    "has words or is named as a voice" in reading and not has_words(path)):
                bad += 1
                print(f"{name}: refused: {reading}")
            continue
        found, sung = defaultdict(list), defaultdict(int)
        for line, part, wish, lowest in reading:
            mine = read(path, verse, part, wish, lowest)
            notes += len(mine)
            for kind, text in compare(mine, line):
                found[kind].append(f"{part} {wish}: {text}" if wish else text)
            for n in line:
                sung[(round(n["onset"], 3), tuple(n["words"]))] += 1
        if verse == "parts":
            found["lost"] = syllables_lost(path, sung)
        for kind in set(found) | {k for n, k in explained if n == name and k != "refused" and (k != "lost" or verse == "parts")}:
            count = len(found[kind])
            differ += count
            if count != explained.get((name, kind), (0, ""))[0]:
                bad += 1
                print(f"{name}: {kind}: {count} not as explained:\n  " + "\n  ".join(found[kind][:8]))
    print(f"{len(files)} scores, {notes} notes: {differ} differences, {bad} not as explained" if bad else
          f"{len(files)} scores, {notes} notes: {differ} differences, each explained")
    return 1 if bad or not notes else 0


if __name__ == "__main__":
    sys.exit(main())
