// SPDX-License-Identifier: MIT
#include "io/score/voice_line.hpp"

#include "core/text.hpp"

#include <algorithm>
#include <map>
#include <set>

namespace vowelway::io {

namespace {

/// "1", "2" by value, then names in the order of the alphabet.
struct ByNumber {
    bool operator()(std::string const& a, std::string const& b) const {
        auto const number = [](std::string_view s) { return text::eat_number(s).value_or(1e9); };
        auto const x = number(a), y = number(b);
        return x != y ? x < y : a < b;
    }
};

std::string number_of(pugi::xml_node lyric) {
    std::string const number = lyric.attribute("number").value();
    return number.empty() ? "1" : number;
}

bool ours(pugi::xml_node lyric) { return lyric.attribute("name").value() == mark_name; }

struct LyricLines {
    std::vector<std::string> text, phonetic; ///< numbers of the lines
    std::string language;
};

LyricLines lyric_lines(Part const& part) {
    struct Line {
        LineScript script;
        bool named_ipa = false;
    };
    std::map<std::string, Line, ByNumber> lines;
    LyricLines out;
    for (auto const& measure : part.measures)
        for (auto const& event : measure.events)
            for (auto const& note : event.notes)
                for (auto const& lyric : note.children("lyric")) {
                    if (ours(lyric)) continue;
                    auto& line = lines[number_of(lyric)];
                    std::string_view const name = lyric.attribute("name").value();
                    line.named_ipa |= name == "ipa" || name == "IPA";
                    line.script.add(read_lyric(lyric).raw);
                    if (!out.language.empty()) continue;
                    std::string tag = lyric.attribute("xml:lang").value();
                    if (tag.empty()) tag = lyric.child("text").attribute("xml:lang").value();
                    out.language = tag.substr(0, tag.find('-'));
                }
    if (lines.size() > static_cast<std::size_t>(most_lyric_lines))
        throw InputError("part \"" + part.info.name + "\" has more than " + std::to_string(most_lyric_lines) +
                             " lines of words",
                         "export the score again");
    for (auto const& [number, line] : lines)
        (line.named_ipa || line.script.ipa() ? out.phonetic : out.text).push_back(number);
    return out;
}

/// The lyric of an event on one line, from any note of its chord; empty node if it has none.
std::optional<LyricText> lyric_on(PartEvent const& event, std::string const& line) {
    for (auto const& note : event.notes)
        for (auto const& lyric : note.children("lyric")) {
            if (ours(lyric) || number_of(lyric) != line) continue;
            auto text = read_lyric(lyric);
            if (!text.syllables.empty() || text.humming || text.laughing) return text;
        }
    return std::nullopt;
}

std::optional<std::string> phonetic_on(PartEvent const& event, std::string const& line) {
    for (auto const& note : event.notes)
        for (auto const& lyric : note.children("lyric")) {
            if (ours(lyric) || number_of(lyric) != line) continue;
            auto const raw = read_lyric(lyric).raw;
            auto text = std::string(text::trim(raw));
            if (auto const inside = bracketed_ipa(text)) text = *inside;
            while (text.ends_with('-')) text.pop_back();
            while (text.starts_with('-')) text.erase(0, 1);
            if (!text.empty()) return text;
        }
    return std::nullopt;
}

bool sounds(PartEvent const& event) { return !event.rest && !event.cue && !event.unpitched; }

struct Voice {
    std::string name;
    int staff = 1;
    int words = 0, notes = 0;
    std::map<int, int> on_staff;
};

std::vector<Voice> voices_of(Part const& part, std::string const& verse) {
    std::vector<Voice> out;
    std::map<std::string, std::size_t> index;
    for (auto const& measure : part.measures)
        for (auto const& event : measure.events) {
            auto const [at, fresh] = index.emplace(event.voice, out.size());
            if (fresh) out.push_back({event.voice, 1, 0, 0, {}});
            auto& voice = out[at->second];
            ++voice.on_staff[event.staff];
            voice.notes += sounds(event) ? 1 : 0;
            if (!verse.empty() && lyric_on(event, verse)) ++voice.words;
        }
    for (auto& voice : out)
        voice.staff =
            std::max_element(voice.on_staff.begin(), voice.on_staff.end(), [](auto const& a, auto const& b) {
                return a.second < b.second;
            })->first;
    std::stable_sort(out.begin(), out.end(),
                     [](Voice const& a, Voice const& b) { return a.staff < b.staff; });
    return out;
}

/// Notes of a voice that follow each other without a gap.
struct Run {
    double begin = 0, end = 0;
    std::vector<PartEvent const*> events;
};

std::vector<Run> runs_of(PartMeasure const& measure, std::string const& voice) {
    std::vector<Run> out;
    for (auto const& event : measure.events) {
        if (event.voice != voice || !sounds(event)) continue;
        if (out.empty() || event.onset > out.back().end + time_tolerance)
            out.push_back({event.onset, event.onset, {}});
        out.back().events.push_back(&event);
        out.back().end = std::max(out.back().end, event.onset + event.length);
    }
    return out;
}

/// The line while other voices are woven into it.
class Weaver {
  public:
    Weaver(std::string const& verse, std::string const& phonetic) : verse_(verse), phonetic_(phonetic) {}

    LineEvent line_event(PartEvent const& event) const {
        LineEvent out;
        out.event = &event;
        out.onset = event.onset;
        out.length = event.length;
        if (!verse_.empty()) out.lyric = lyric_on(event, verse_);
        if (!phonetic_.empty()) out.ipa = phonetic_on(event, phonetic_);
        return out;
    }

    /// The events of the line that begin within a run.
    static auto within(std::vector<LineEvent>& line, Run const& run) {
        auto const before = [](LineEvent const& e, double at) { return e.onset < at - time_tolerance; };
        return std::pair(std::lower_bound(line.begin(), line.end(), run.begin, before),
                         std::lower_bound(line.begin(), line.end(), run.end, before));
    }

    static LineEvent* at(std::vector<LineEvent>& line, double onset) {
        auto found = std::lower_bound(line.begin(), line.end(), onset, [](LineEvent const& e, double t) {
            return e.onset < t - time_tolerance;
        });
        while (found != line.end() && found->onset < onset + time_tolerance && found->event->grace) ++found;
        return found != line.end() && found->onset < onset + time_tolerance ? &*found : nullptr;
    }

    /// Syllables of the verse that begin in a run: those of the line, and those of the other voice.
    struct Count {
        int line = 0, other = 0, own = 0;
    };
    Count count(std::vector<LineEvent>& line, Run const& run) const {
        Count out;
        auto const [from, to] = within(line, run);
        out.line = static_cast<int>(
            std::count_if(from, to, [](LineEvent const& e) { return e.lyric && sounds(*e.event); }));
        for (auto const* event : run.events) {
            bool const own = !verse_.empty() && lyric_on(*event, verse_).has_value();
            auto const* with = at(line, event->onset);
            out.own += own ? 1 : 0;
            out.other += own || (with && with->event->rest && with->lyric) ? 1 : 0;
        }
        return out;
    }

    /// Puts the runs of one other voice into the line where they carry the verse better than the line does.
    void weave(std::vector<LineEvent>& line, std::vector<Run> const& runs) const {
        std::vector<Run const*> taken;
        std::vector<LineEvent> fresh;
        for (auto const& run : runs) {
            auto const counted = count(line, run);
            if (counted.other == 0) continue;
            bool const take = counted.other > counted.line;
            if (take) taken.push_back(&run);
            for (auto const* event : run.events) {
                auto mine = line_event(*event);
                auto* with = event->grace ? nullptr : at(line, event->onset);
                if (with && take && !mine.lyric) mine.lyric = with->lyric;
                if (with && take && !mine.ipa) mine.ipa = with->ipa;
                if (with && !take && !with->lyric && sounds(*with->event)) with->lyric = mine.lyric;
                if (take) fresh.push_back(std::move(mine));
            }
        }
        if (taken.empty()) return;
        std::vector<LineEvent> out;
        std::size_t first = 0;
        for (auto& old : line) {
            while (first < taken.size() && taken[first]->end < old.onset + time_tolerance) ++first;
            keep_outside(old, taken, first, out);
        }
        out.insert(out.end(), std::make_move_iterator(fresh.begin()), std::make_move_iterator(fresh.end()));
        std::stable_sort(out.begin(), out.end(), [](LineEvent const& a, LineEvent const& b) {
            return a.onset < b.onset - time_tolerance;
        });
        line = std::move(out);
    }

  private:
    /// What stays of an event of the line: its part before the first run; of a rest also what lies after.
    static void keep_outside(LineEvent& old, std::vector<Run const*> const& runs, std::size_t next,
                             std::vector<LineEvent>& out) {
        double from = old.onset;
        double const end = old.onset + old.length;
        bool head = true;
        auto const keep = [&](double to) {
            if (!head && !(old.event->rest && out.size() < 2u * static_cast<std::size_t>(most_bar_events)))
                return;
            auto piece = old;
            piece.onset = from;
            piece.length = to - from;
            piece.cut = old.cut || !head || to < end - time_tolerance;
            if (!head) piece.lyric.reset();
            out.push_back(std::move(piece));
        };
        for (;
             next < runs.size() && runs[next]->begin < std::max(end - time_tolerance, from + time_tolerance);
             ++next) {
            if (runs[next]->begin > from + time_tolerance) keep(runs[next]->begin);
            from = runs[next]->end;
            head = false;
            if (from > end - time_tolerance) return;
        }
        keep(end);
    }

    std::string const& verse_;
    std::string const& phonetic_;
};

std::vector<LineEvent> own_line(PartMeasure const& measure, std::string const& voice, Weaver const& weaver) {
    std::vector<LineEvent> out;
    for (auto const& event : measure.events)
        if (event.voice == voice) out.push_back(weaver.line_event(event));
    return out;
}

/// A second voice that mostly has words while the first has words too is a part of its own (a duet on one
/// staff), not another rhythm of the same line.
bool independent(Part const& part, Voice const& main, Voice const& other, Weaver const& weaver) {
    int together = 0, all = 0;
    for (auto const& measure : part.measures) {
        auto line = own_line(measure, main.name, weaver);
        for (auto const& run : runs_of(measure, other.name)) {
            auto const counted = weaver.count(line, run);
            all += counted.own;
            together += counted.line > 0 ? counted.own : 0;
        }
    }
    return 2 * together > all;
}

/// In later verses: takes over a refrain printed under the first verse, and leaves out notes that only
/// other verses sing.
void fit_verse(VoiceLine& line, std::vector<std::string> const& text_lines, Remarks& remarks) {
    constexpr std::size_t least_refrain = 4; // syllables in a row; fewer are taken for a different rhythm
    std::vector<LineEvent*> run;
    std::size_t taken = 0, unsung = 0;
    auto const finish = [&] {
        if (run.size() >= least_refrain)
            for (auto* e : run) {
                e->lyric = lyric_on(*e->event, text_lines.front());
                e->other_verse = false;
                ++taken;
            }
        run.clear();
    };
    for (auto& measure : line.measures)
        for (auto& e : measure.events) {
            if (!sounds(*e.event)) continue;
            if (e.lyric) {
                finish();
                continue;
            }
            for (auto const& number : text_lines)
                if (number != line.verse && lyric_on(*e.event, number)) e.other_verse = true;
            if (line.verse != text_lines.front() && lyric_on(*e.event, text_lines.front())) run.push_back(&e);
        }
    finish();
    bool after_silence = true;
    for (auto& measure : line.measures)
        for (auto& e : measure.events) {
            if (!sounds(*e.event)) {
                after_silence = true;
                continue;
            }
            if (after_silence && !e.lyric && e.other_verse) {
                e.unsung = true;
                ++unsung;
            } else
                after_silence = false;
        }
    if (taken > 0)
        remarks.push_back(
            {Remark::Kind::assumed, "verse " + line.verse + " has no words for " + std::to_string(taken) +
                                        " notes that the first verse sings; taken as a refrain"});
    if (unsung > 0)
        remarks.push_back({Remark::Kind::assumed, std::to_string(unsung) +
                                                      (unsung == 1 ? " note is" : " notes are") +
                                                      " only sung in other verses and left out"});
}

/// A syllable set under a rest by mistake belongs to the note after it, if that note has none.
void move_off_rests(VoiceLine& line, Remarks& remarks) {
    LineEvent* rest = nullptr;
    int moved = 0;
    for (auto& measure : line.measures)
        for (auto& e : measure.events) {
            if (!sounds(*e.event)) {
                bool const word = e.event->rest && e.lyric && !e.lyric->syllables.empty();
                if (word) rest = &e;
                continue;
            }
            if (rest && !e.lyric) {
                e.lyric = std::move(rest->lyric);
                rest->lyric.reset();
                ++moved;
            }
            rest = nullptr;
        }
    if (moved > 0)
        remarks.push_back({Remark::Kind::assumed,
                           std::to_string(moved) + (moved == 1 ? " syllable stands" : " syllables stand") +
                               " under a rest and " + (moved == 1 ? "goes" : "go") + " to the note after"});
}

std::string choose_verse(XmlSource const& source, std::vector<std::string> const& lines, bool phonetic_too,
                         int wish, Remarks& remarks) {
    if (lines.empty()) return {};
    if (wish == 0) {
        if (lines.size() > 1)
            remarks.push_back({Remark::Kind::assumed, "verse " + lines.front() + " of " +
                                                          std::to_string(lines.size()) +
                                                          " is taken (--verse chooses another)"});
        return lines.front();
    }
    auto const exact = std::find(lines.begin(), lines.end(), std::to_string(wish));
    if (exact != lines.end() && !phonetic_too) return *exact;
    if (wish > 0 && static_cast<std::size_t>(wish) <= lines.size())
        return lines[static_cast<std::size_t>(wish) - 1];
    throw InputError("the part has no verse " + std::to_string(wish),
                     "it has " + std::to_string(lines.size()) + "; count from 1", {source.file(), 0, 0, {}});
}

} // namespace

VoiceLine choose_line(XmlSource const& source, Part const& part, int voice, ScoreOptions const& options,
                      Remarks& remarks) {
    auto lines = [&] {
        try {
            return lyric_lines(part);
        } catch (InputError& error) {
            throw error.at({source.file(), 0, 0, {}});
        }
    }();
    bool const only_phonetic = lines.text.empty();
    auto const& texts = only_phonetic ? lines.phonetic : lines.text;
    if (options.verse < 0)
        throw InputError("verses are counted from 1", "give --verse 1 or more", {source.file(), 0, 0, {}});
    VoiceLine out;
    out.language = lines.language;
    out.verse = choose_verse(source, texts, !lines.phonetic.empty(), options.verse, remarks);
    std::string phonetic;
    auto const verse_index =
        static_cast<std::size_t>(std::find(texts.begin(), texts.end(), out.verse) - texts.begin());
    if (only_phonetic)
        phonetic = out.verse;
    else if (verse_index < lines.phonetic.size())
        phonetic = lines.phonetic[verse_index];

    auto const voices = voices_of(part, out.verse);
    if (voices.empty())
        throw InputError("part \"" + (part.info.name.empty() ? part.info.id : part.info.name) + "\" is empty",
                         "choose another part with --part", {source.file(), 0, 0, {}});
    Weaver const weaver(out.verse, phonetic);
    auto main = std::max_element(voices.begin(), voices.end(), [](Voice const& a, Voice const& b) {
        return a.words != b.words ? a.words < b.words : a.words == 0 && a.notes < b.notes;
    });
    std::vector<Voice const*> singers; // voices with words that sing a line of their own
    for (auto const& v : voices)
        if (&v == &*main || (v.words > 0 && (v.staff != main->staff || independent(part, *main, v, weaver))))
            singers.push_back(&v);
    if (voice > 0) {
        if (static_cast<std::size_t>(voice) > singers.size())
            throw InputError("the part has no voice " + std::to_string(voice) + " with words",
                             "it has " + std::to_string(singers.size()), {source.file(), 0, 0, {}});
        main = voices.begin() + (singers[static_cast<std::size_t>(voice) - 1] - voices.data());
    } else if (singers.size() > 1) {
        auto const number = std::find(singers.begin(), singers.end(), &*main) - singers.begin() + 1;
        remarks.push_back({Remark::Kind::assumed,
                           "the part has " + std::to_string(singers.size()) + " voices with words; voice " +
                               std::to_string(number) + " is taken (--part \"" +
                               (part.info.name.empty() ? part.info.id : part.info.name) +
                               ".2\" takes the second)"});
    }
    out.staff = main->staff;
    std::vector<std::string> helpers;
    for (auto const& v : voices)
        if (&v != &*main && v.staff == main->staff &&
            std::find(singers.begin(), singers.end(), &v) == singers.end())
            helpers.push_back(v.name);
    for (auto const& measure : part.measures) {
        auto& bar = out.measures.emplace_back();
        bar.measure = &measure;
        bar.events = own_line(measure, main->name, weaver);
        for (auto const& helper : helpers) weaver.weave(bar.events, runs_of(measure, helper));
    }
    move_off_rests(out, remarks);
    if (!texts.empty()) fit_verse(out, texts, remarks);
    return out;
}

} // namespace vowelway::io
