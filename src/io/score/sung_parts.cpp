// SPDX-License-Identifier: MIT
#include "vowelway/io/score/sung_parts.hpp"

#include "io/score/lyric_lines.hpp"
#include "io/score/score_bounds.hpp"
#include "io/score/score_reading.hpp"
#include "io/score/voice_line.hpp"
#include "io/score/voice_names.hpp"
#include "io/score/voices.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <cctype>

namespace vowelway::io {

namespace {

/// A line as found, before it is known who sings it.
struct MeasuredLine {
    std::string wish;
    bool lowest = false;
    int staff = 1;
    double key = 0; ///< in the mean over its length
    int notes = 0, words = 0, chords = 0;
};

/// The key of a chord's highest or lowest note.
double key_of(XmlSource const& source, PartMeasure const& bar, PartEvent const& event, bool lowest) {
    double best = 0;
    for (auto const& note : event.notes) {
        double const key = moved(pitch_of(source, note, bar_name(bar)), event.transpose).key_number();
        if (&note == &event.notes.front() || (lowest ? key < best : key > best)) best = key;
    }
    return best;
}

MeasuredLine measured(XmlSource const& source, VoiceLine const& line, std::string wish, bool lowest) {
    MeasuredLine out{std::move(wish), lowest, line.staff, 0, 0, 0, 0};
    double length = 0;
    for (auto const& bar : line.measures)
        for (auto const& e : bar.events) {
            if (!sounds(*e.event)) continue;
            ++out.notes;
            out.chords += e.event->notes.size() > 1 ? 1 : 0;
            out.words += e.lyric || e.ipa ? 1 : 0;
            out.key += key_of(source, *bar.measure, *e.event, lowest) * e.length;
            length += e.length;
        }
    if (length > 0) out.key /= length;
    return out;
}

std::vector<MeasuredLine> lines_in(XmlSource const& source, Part const& part, std::string const& wish) {
    std::vector<MeasuredLine> out;
    Remarks unsaid;
    int const count = lines_to_sing(source, part).count;
    for (int voice = 1; voice <= count; ++voice) {
        auto const own = count > 1 ? wish + "." + std::to_string(voice) : wish;
        auto const line = choose_line(source, part, voice, {}, unsaid);
        out.push_back(measured(source, line, own, false));
        if (2 * out.back().chords >= out.back().notes && out.back().notes > 0)
            out.push_back(measured(source, line, own, true));
    }
    out.erase(std::remove_if(out.begin(), out.end(),
                             [&](MeasuredLine const& l) {
                                 return l.notes == 0 ||
                                        (!part.info.vocal && count == 1 && 10 * l.words < l.notes);
                             }),
              out.end());
    std::stable_sort(out.begin(), out.end(), [](MeasuredLine const& a, MeasuredLine const& b) {
        return a.staff != b.staff ? a.staff < b.staff : a.key > b.key;
    });
    return out;
}

std::string capital(std::string_view word) {
    std::string out(word);
    if (!out.empty()) out[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(out[0])));
    return out;
}

struct FoundLine {
    ScorePart part;
    double key;
};

std::vector<FoundLine> sung_lines(XmlSource const& source, PartInfo const& info, std::string const& wish) {
    auto const part = read_part(source, info);
    auto const texts = lyric_lines(part).text;
    if (texts.empty() && !info.vocal) return {};
    auto const lines = lines_in(source, part, wish);
    auto const named = voices_named(info.name);
    std::vector<FoundLine> out;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        auto const& line = lines[i];
        ScorePart found{line.wish, line.lowest, info.name.empty() ? info.id : info.name};
        found.named = named.size() == 1 || (!named.empty() && named.size() == lines.size());
        found.voice =
            found.named ? named[named.size() == 1 ? 0 : i] : voice_at(line.key, names_men(info.name));
        if (lines.size() > 1 && named.size() != 1) found.name = capital(reworded(to_string(found.voice)));
        found.words = 10 * line.words >= line.notes;
        found.verses = found.words ? static_cast<int>(texts.size()) : 0;
        out.push_back({std::move(found), line.key});
    }
    return out;
}

/// Four lines without names, from the top down and far apart, are those of a mixed choir.
void take_for_a_choir(std::vector<FoundLine>& lines) {
    constexpr std::array choir{VoiceType::soprano, VoiceType::alto, VoiceType::tenor, VoiceType::bass};
    if (lines.size() != choir.size() || lines.front().key < lines.back().key + 12) return;
    for (std::size_t i = 0; i < choir.size(); ++i)
        if (lines[i].part.named || (i > 0 && lines[i].key > lines[i - 1].key)) return;
    for (std::size_t i = 0; i < choir.size(); ++i) {
        auto& part = lines[i].part;
        if (part.name == capital(reworded(to_string(part.voice))))
            part.name = capital(reworded(to_string(choir[i])));
        part.voice = choir[i];
    }
}

/// Equal names are numbered.
void tell_apart(std::vector<ScorePart>& parts) {
    auto const before = parts;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        auto const same = [&](ScorePart const& p) { return p.name == before[i].name; };
        if (std::count_if(before.begin(), before.end(), same) < 2) continue;
        auto const at = before.begin() + static_cast<std::ptrdiff_t>(i);
        parts[i].name += " " + std::to_string(std::count_if(before.begin(), at, same) + 1);
    }
}

} // namespace

std::vector<ScorePart> sung_parts(std::string bytes, std::string const& name) {
    auto score = unpack_score(std::move(bytes), name);
    XmlSource const source(std::move(score.xml), score.shown);
    auto const infos = list_parts(source);
    require_score_bounds(source, infos);
    std::vector<FoundLine> lines;
    for (std::size_t i = 0; i < infos.size(); ++i)
        for (auto& found : sung_lines(source, infos[i], std::to_string(i + 1)))
            lines.push_back(std::move(found));
    take_for_a_choir(lines);
    std::vector<ScorePart> out;
    for (auto& line : lines) out.push_back(std::move(line.part));
    if (out.empty())
        throw InputError(worded("no part of the score has words or is named as a voice"),
                         worded("name the line to sing with --part"), {source.file(), 0, 0, {}});
    tell_apart(out);
    return out;
}

} // namespace vowelway::io
