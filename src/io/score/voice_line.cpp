// SPDX-License-Identifier: MIT
#include "io/score/voice_line.hpp"

#include "io/score/lyric_lines.hpp"
#include "io/score/verses.hpp"
#include "io/score/voices.hpp"
#include "io/score/weaver.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>

namespace vowelway::io {

namespace {

/// A second voice that mostly has words while the first has words too is a part of its own (a duet on one
/// staff), not another rhythm of the same line.
bool independent(Part const& part, Voice const& main, Voice const& other, Weaver const& weaver) {
    int together = 0, all = 0;
    for (auto const& measure : part.measures) {
        auto line = weaver.own_line(measure, main.name);
        for (auto const& run : runs_of(measure, other.name)) {
            auto const counted = weaver.count(line, run);
            all += counted.own;
            together += counted.line > 0 ? counted.own : 0;
        }
    }
    return 2 * together > all;
}

std::string name_of(Part const& part) { return part.info.name.empty() ? part.info.id : part.info.name; }

/// The line of sounds that goes with a verse; empty when there is none.
std::string phonetic_of(LyricLines const& lines, std::string const& verse) {
    if (lines.text.empty()) return verse;
    auto const index =
        static_cast<std::size_t>(std::find(lines.text.begin(), lines.text.end(), verse) - lines.text.begin());
    return index < lines.phonetic.size() ? lines.phonetic[index] : std::string{};
}

/// The voice to sing, and those that only help it out where they carry its words.
struct Chosen {
    Voice const* main = nullptr;
    std::vector<Voice const*> singers;  ///< voices with words that sing a line of their own, it among them
    std::vector<Voice const*> wordless; ///< without words, but singing with it or half as much
};

/// A voice with so many notes that begin with those of the main voice sings along for some bars, a chorus
/// after a verse, say; with fewer it writes another note to choose. Our choice.
constexpr int sings_along = 16;

int begun_together(Part const& part, Voice const& main, Voice const& other) {
    int count = 0;
    for (auto const& measure : part.measures) { // its events are in order of onset
        std::vector<double> begun;
        for (auto const& e : measure.events)
            if (e.voice == main.name && sounds(e)) begun.push_back(e.onset);
        auto at = begun.begin();
        for (auto const& e : measure.events) {
            if (e.voice != other.name || !sounds(e) || e.grace) continue;
            while (at != begun.end() && *at < e.onset - time_tolerance) ++at;
            count += at != begun.end() && *at < e.onset + time_tolerance ? 1 : 0;
        }
    }
    return count;
}

/// Whether a voice without words is a line of its own.
bool sings_wordless(Part const& part, Voice const& main, Voice const& other) {
    if (other.words > 0 || other.notes == 0) return false;
    return 2 * other.notes >= main.notes || (part.info.vocal && other.notes >= sings_along &&
                                             begun_together(part, main, other) >= sings_along);
}

Chosen singers_of(Part const& part, std::vector<Voice> const& voices, Weaver const& weaver) {
    Chosen out;
    out.main = &*std::max_element(voices.begin(), voices.end(), [](Voice const& a, Voice const& b) {
        return a.words != b.words ? a.words < b.words : a.words == 0 && a.notes < b.notes;
    });
    for (auto const& v : voices)
        if (&v == out.main ||
            (v.words > 0 && (v.staff != out.main->staff || independent(part, *out.main, v, weaver))))
            out.singers.push_back(&v);
        else if (sings_wordless(part, *out.main, v))
            out.wordless.push_back(&v);
    return out;
}

/// `wish` from 1, 0 to choose.
Voice const* choose_voice(Chosen const& chosen, XmlSource const& source, Part const& part, int wish,
                          Remarks& remarks) {
    auto const& [main, singers, wordless] = chosen;
    if (wish > 0) {
        auto const index = static_cast<std::size_t>(wish) - 1;
        if (index >= singers.size() && index - singers.size() < wordless.size())
            return wordless[index - singers.size()];
        if (index >= singers.size())
            throw InputError(worded("the part has no voice {0} with words", wish),
                             worded("it has {0}", singers.size()), {source.file(), 0, 0, {}});
        return singers[index];
    }
    if (singers.size() > 1) {
        auto const number = std::find(singers.begin(), singers.end(), main) - singers.begin() + 1;
        remarks.push_back(
            {Remark::Kind::assumed,
             worded(
                 "the part has {0} voices with words; voice {1} is taken (--part \"{2}.2\" takes the second)",
                 singers.size(), number, name_of(part))});
    }
    return main;
}

/// Voices on the same staff that sing no line of their own.
std::vector<std::string> helpers_of(Voice const& main, std::vector<Voice> const& voices,
                                    std::vector<Voice const*> const& singers) {
    std::vector<std::string> helpers;
    for (auto const& v : voices)
        if (&v != &main && v.staff == main.staff &&
            std::find(singers.begin(), singers.end(), &v) == singers.end())
            helpers.push_back(v.name);
    return helpers;
}

LyricLines lines_of(XmlSource const& source, Part const& part) {
    try {
        return lyric_lines(part);
    } catch (InputError& error) {
        throw error.at({source.file(), 0, 0, {}});
    }
}

} // namespace

LinesToSing lines_to_sing(XmlSource const& source, Part const& part) {
    auto const lines = lines_of(source, part);
    auto const& texts = lines.text.empty() ? lines.phonetic : lines.text;
    std::string const verse = texts.empty() ? std::string() : texts.front();
    auto const phonetic = phonetic_of(lines, verse);
    auto const voices = voices_of(part, verse);
    if (std::none_of(voices.begin(), voices.end(), [](Voice const& v) { return v.notes > 0; })) return {};
    auto const chosen = singers_of(part, voices, Weaver(verse, phonetic));
    auto const main = std::find(chosen.singers.begin(), chosen.singers.end(), chosen.main);
    return {static_cast<int>(chosen.singers.size() + chosen.wordless.size()),
            static_cast<int>(main - chosen.singers.begin()) + 1};
}

VoiceLine choose_line(XmlSource const& source, Part const& part, int voice, ScoreOptions const& options,
                      Remarks& remarks) {
    auto const lines = lines_of(source, part);
    auto const& texts = lines.text.empty() ? lines.phonetic : lines.text;
    if (options.verse < 0 && options.verse != every_verse)
        throw InputError(worded("verses are counted from 1"), worded("give --verse 1 or more"),
                         {source.file(), 0, 0, {}});
    VoiceLine out;
    out.language = lines.language;
    out.verse = choose_verse(source, texts, !lines.phonetic.empty(), options.verse, remarks);
    auto const phonetic = phonetic_of(lines, out.verse);

    auto const voices = voices_of(part, out.verse);
    if (voices.empty())
        throw InputError(worded("part \"{0}\" is empty", name_of(part)),
                         worded("choose another part with --part"), {source.file(), 0, 0, {}});
    Weaver const weaver(out.verse, phonetic);
    auto const chosen = singers_of(part, voices, weaver);
    auto const& main = *choose_voice(chosen, source, part, voice, remarks);
    out.staff = main.staff;
    auto const helpers = helpers_of(main, voices, chosen.singers);
    for (auto const& measure : part.measures) {
        auto& bar = out.measures.emplace_back();
        bar.measure = &measure;
        bar.verse = measure.verse.empty() ? out.verse : measure.verse;
        auto const sounds_of = phonetic_of(lines, bar.verse);
        Weaver const own(bar.verse, sounds_of);
        bar.events = own.own_line(measure, main.name);
        for (auto const& helper : helpers) own.weave(bar.events, runs_of(measure, helper));
    }
    move_off_rests(out, remarks);
    if (!texts.empty()) fit_verse(out, texts, remarks);
    return out;
}

} // namespace vowelway::io
