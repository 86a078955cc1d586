// SPDX-License-Identifier: MIT
#include "io/score/score_reading.hpp"

#include "core/text.hpp"
#include "io/score/archive.hpp"
#include "io/score/as_sung.hpp"
#include "io/score/octave.hpp"
#include "io/score/score_bounds.hpp"
#include "io/score/staff_lines.hpp"
#include "io/score/sung_line.hpp"
#include "io/score/timeline.hpp"
#include "io/score/voice_line.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <cmath>

namespace vowelway::io {

namespace {

std::string joined_lines(std::string_view text) {
    std::string out;
    for (char c : text::trim(text))
        if (c != '\n' && c != '\r' && c != '\t')
            out += c;
        else if (!out.ends_with(' '))
            out += ' ';
    return out;
}

void read_header(pugi::xml_node root, Passage& passage) {
    passage.title = joined_lines(root.child_value("movement-title"));
    if (passage.title.empty()) passage.title = joined_lines(root.child("work").child_value("work-title"));
    std::string other;
    for (auto const& credit : root.children("credit")) {
        auto const kind = trimmed(credit.child("credit-type"));
        if (passage.title.empty() && kind == "title")
            passage.title = joined_lines(credit.child_value("credit-words"));
        if (other.empty() && kind == "composer") other = joined_lines(credit.child_value("credit-words"));
    }
    for (auto const& creator : root.child("identification").children("creator"))
        if (creator.attribute("type").value() == std::string_view("composer") && passage.composer.empty())
            passage.composer = joined_lines(creator.child_value());
    if (passage.composer.empty()) passage.composer = other;
    if (passage.title.empty()) passage.title = joined_lines(root.child("credit").child_value("credit-words"));
}

/// The signature the line begins in decides how a transposition is spelled.
int fifths_at_the_beginning(Part const& part) {
    for (auto const& measure : part.measures)
        if (!measure.events.empty()) return measure.events.front().fifths;
    return 0;
}

struct LineInOctave {
    SungLine sung;
    Interval shift; ///< from the score's sounding pitch
};

/// The line in the octave asked for, or in the one that suits the voice.
LineInOctave sing_in_octave(XmlSource const& source, Part const& part, VoiceLine const& line,
                            Timeline const& time, ScoreOptions const& options, Passage& passage) {
    auto& remarks = passage.remarks;
    auto const before = remarks.size();
    int const fifths = fifths_at_the_beginning(part);
    auto const as_asked = interval_for_key(options.transpose_semitones.value_or(0), fifths);
    passage.transposed = as_asked.semitones;
    if (passage.transposed != 0) passage.transposed_why = worded("as asked");
    auto sung = sing(source, line, time, options, as_asked, remarks);
    if (options.transpose_semitones) return {std::move(sung), as_asked};
    auto const octave = octave_for(sung.notes, begins_in_plain_treble(part, line.staff), options);
    if (!octave) return {std::move(sung), as_asked};
    auto const shift = interval_for_key(octave->semitones, fifths);
    remarks.resize(before);
    sung = sing(source, line, time, options, shift, remarks);
    passage.transposed = octave->semitones;
    passage.transposed_why = octave->why;
    remarks.insert(remarks.begin(),
                   {Remark::Kind::assumed, worded("{0} ({1}); --transpose 0 keeps it as written",
                                                  transposition_of(passage), octave->why)});
    return {std::move(sung), shift};
}

void require_score(XmlSource const& source) {
    std::string_view const root = source.root().name();
    if (root == "score-partwise" || root == "score-timewise") return;
    throw InputError(root == "opus" ? worded("this is an opus, a list of scores, not a MusicXML score")
                                    : worded("this is a document of <{0}>, not a MusicXML score", root),
                     worded("give a file whose first element is <score-partwise> or <score-timewise>"),
                     source.place(source.root()));
}

/// All parts (tempo may stand in any), and which of them is sung.
struct PartsRead {
    std::vector<Part> parts;
    std::size_t own = 0;
};

PartsRead read_parts(XmlSource const& source, std::vector<PartInfo> const& infos, std::string const& chosen) {
    PartsRead out;
    for (auto const& info : infos) {
        if (info.id == chosen) out.own = out.parts.size();
        out.parts.push_back(read_part(source, info));
    }
    return out;
}

void require_notes(SungLine const& sung, XmlSource const& source, std::string const& part, bool others) {
    if (sung.notes.empty())
        throw InputError(worded("part \"{0}\" has no notes to sing", part),
                         others ? worded("choose another part with --part")
                                : worded("it holds only rests, or notes without pitch"),
                         {source.file(), 0, 0, {}});
}

void notice_assumptions(SungLine const& sung, Part const& part, Remarks& remarks) {
    if (std::none_of(sung.notes.begin(), sung.notes.end(),
                     [](SungNote const& n) { return !n.syllables.empty() || n.hummed || n.typed_ipa; }))
        remarks.push_back({Remark::Kind::assumed, worded("the part has no words: the vowels are unknown")});
    if (part.early_backups > 0)
        remarks.push_back(
            {Remark::Kind::assumed,
             worded("bars where a <backup> leads before their start are read from their start: {0}",
                    part.early_backups)});
}

/// The staff is drawn in the octave it is written in.
Interval without_octaves(Interval shift) {
    shift.semitones -= 12 * std::round(shift.semitones / 12);
    return shift;
}

} // namespace

ScoreBytes unpack_score(std::string bytes, std::string const& file) {
    ScoreBytes out;
    out.shown = file;
    if (!looks_like_zip(bytes)) {
        out.xml = std::move(bytes);
        return out;
    }
    out.archive = std::move(bytes);
    auto score = read_mxl(out.archive, out.shown);
    out.member = std::move(score.member);
    out.xml = std::move(score.bytes);
    out.shown += "/" + out.member;
    return out;
}

ScoreReading read_music(XmlSource const& source, ScoreOptions const& options) {
    require_score(source);
    ScoreReading out;
    auto& passage = out.passage;
    auto& remarks = passage.remarks;
    passage.tuning = options.tuning;
    auto const infos = list_parts(source);
    require_score_bounds(source, infos);
    read_header(source.root(), passage);

    int voice = 0;
    auto const chosen = choose_part(source, infos, options, voice, remarks);
    auto [parts, own] = read_parts(source, infos, chosen.id);
    follow_as_sung(source, parts, own, options, remarks);
    auto const& part = parts[own];
    passage.part = chosen.name.empty() ? chosen.id : chosen.name;
    out.staves = part.staves;
    auto const line = choose_line(source, part, voice, options, remarks);
    passage.verse = options.verse == every_verse ? "all" : line.verse;
    passage.language = line.language;

    Timeline const time(source, parts, own);
    if (!time.has_tempo())
        remarks.push_back(
            {Remark::Kind::assumed,
             worded("the score gives no tempo in numbers; 72 quarter notes a minute are assumed")});
    else if (!time.first_tempo_bar().empty())
        remarks.push_back(
            {Remark::Kind::assumed,
             worded("the first tempo in numbers stands in bar {0}; it is taken for the bars before it too",
                    time.first_tempo_bar())});
    auto [sung, shift] = sing_in_octave(source, part, line, time, options, passage);
    require_notes(sung, source, passage.part, infos.size() > 1);
    require_sung_notes(sung.notes.size(), source.file());
    notice_assumptions(sung, part, remarks);
    set_dynamics(sung, part, line, time);
    passage.staff = staff_of(source, parts, own, line, time, sung, without_octaves(shift));
    passage.notes = std::move(sung.notes);
    out.notes = std::move(sung.sources);
    out.passes = std::move(sung.passes);
    out.onsets = std::move(sung.onsets);
    out.lengths = std::move(sung.lengths);
    show_octave(passage.staff, shift.semitones);
    return out;
}

} // namespace vowelway::io
