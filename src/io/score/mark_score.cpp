// SPDX-License-Identifier: MIT
#include "vowelway/io/score/mark_score.hpp"

#include "core/text.hpp"
#include "core/utf8.hpp"
#include "core/xml.hpp"
#include "io/score/archive.hpp"
#include "io/score/decode.hpp"
#include "io/score/lyrics.hpp"
#include "io/score/our_credits.hpp"
#include "io/score/our_marks.hpp"
#include "io/score/repeats.hpp"
#include "io/score/score_reading.hpp"
#include "vowelway/core/input_text.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <map>
#include <stdexcept>

namespace vowelway::io {

namespace {

bool blank(char c) { return c == ' ' || c == '\t' || c == '\n' || c == '\r'; }

/// Elements to put into a text, each right before a tag. The white space before that tag is repeated after
/// the element: so the element and the white space after it are ours, and taking both away gives the text
/// back.
class Insertions {
  public:
    /// `ascii`: other characters are written as references.
    Insertions(std::string_view text, bool ascii) : text_(text), ascii_(ascii) {}

    void before(std::size_t tag, std::string element) {
        auto from = tag;
        while (from > 0 && blank(text_[from - 1])) --from;
        if (ascii_) element = with_references(element);
        all_.push_back({tag, std::move(element) + std::string(text_.substr(from, tag - from))});
    }

    std::string done() {
        std::stable_sort(all_.begin(), all_.end(), [](auto const& a, auto const& b) { return a.at < b.at; });
        std::string out;
        std::size_t from = 0;
        for (auto const& insertion : all_) {
            out += text_.substr(from, insertion.at - from);
            out += insertion.text;
            from = insertion.at;
        }
        out += text_.substr(from);
        return out;
    }

  private:
    struct Insertion {
        std::size_t at;
        std::string text;
    };
    static std::string with_references(std::string_view text) {
        std::string out;
        while (auto const c = utf8::eat(text))
            out += *c < 0x80 ? std::string(1, static_cast<char>(*c))
                             : "&#" + std::to_string(static_cast<unsigned>(*c)) + ";";
        return out;
    }

    std::string_view text_;
    bool ascii_;
    std::vector<Insertion> all_;
};

/// A lyric number no lyric of the part has.
int fresh_number(XmlSource const& source, pugi::xml_node note) {
    // The part's <part> in either order of the document.
    auto const parent = note.parent();
    bool const timewise = source.root().name() == std::string_view("score-timewise");
    std::string const id = (timewise ? parent : parent.parent()).attribute("id").value();
    double last = 0;
    auto const look = [&](pugi::xml_node music) {
        for (auto const& n : music.children("note"))
            for (auto const& lyric : n.children("lyric")) {
                std::string_view number = lyric.attribute("number").value();
                last = std::max(last, text::eat_number(number).value_or(1));
            }
    };
    if (timewise) {
        for (auto const& measure : source.root().children("measure"))
            for (auto const& part : measure.children("part"))
                if (part.attribute("id").value() == id) look(part);
    } else
        for (auto const& measure : parent.parent().children("measure")) look(measure);
    return static_cast<int>(std::clamp(last, 0.0, 1000.0)) + 1;
}

/// Of several lines in a part each lyric says by its id to which it belongs.
std::string lyric_element(std::string const& number, std::string const& ipa, std::string const& id) {
    return "<lyric number=\"" + number + "\" name=\"" + std::string(mark_name) +
           (id.empty() ? "" : "\" id=\"" + escaped_for_xml(id)) + "\"><syllabic>single</syllabic><text>" +
           escaped_for_xml(ipa) + "</text></lyric>";
}

std::size_t letters_in(std::string_view text) {
    std::size_t n = 0;
    while (utf8::eat(text)) ++n;
    return n;
}

/// Words too long for a bar of a dense line, in lines at their commas: an engraver lets words run on over
/// the next marks and the page's edge, and puts what begins at one note one above the other.
std::vector<std::string> in_lines(std::string_view words) {
    constexpr std::size_t longest = 22; // letters; our judgement
    std::vector<std::string> lines{""};
    while (!words.empty()) {
        auto const end = std::min(words.find(", "), words.size());
        auto const part = words.substr(0, end);
        words.remove_prefix(std::min(end + 2, words.size()));
        auto& line = lines.back();
        if (line.empty())
            line = part;
        else if (letters_in(line) + 2 + letters_in(part) <= longest)
            (line += ", ") += part;
        else {
            line += ',';
            lines.emplace_back(part);
        }
    }
    return lines;
}

std::string direction_element(std::string const& id, std::string const& words, pugi::xml_node note,
                              bool several_staves) {
    std::string out = "<direction placement=\"above\" id=\"" + escaped_for_xml(id) +
                      "\"><direction-type><words font-style=\"normal\" font-size=\"8\">" +
                      escaped_for_xml(words) + "</words></direction-type>";
    if (several_staves)
        for (auto const* name : {"voice", "staff"})
            if (auto const value = trimmed(note.child(name)); !value.empty())
                out += "<" + std::string(name) + ">" + escaped_for_xml(value) + "</" + name + ">";
    return out + "</direction>";
}

/// A later pass through a note that says the same as an earlier one says nothing.
std::string words_to_add(ScoreMark const& mark, int pass, std::vector<std::string>& said) {
    if (mark.words.empty() || std::find(said.begin(), said.end(), mark.words) != said.end()) return {};
    said.push_back(mark.words);
    return pass > 1 ? name_of_pass("", pass) + ": " + mark.words : mark.words;
}

std::string marked(XmlSource const& source, ScoreOptions const& options, ScoreMarks const& marks,
                   LineKey const& line, std::vector<HeadingLine> const& heading) {
    auto const reading = read_music(source, options);
    Insertions insertions(source.text(), source.decoded().same_bytes && source.decoded().ascii);
    auto const tag_of = [&](pugi::xml_node node) { return source.offset(node); };
    if (!heading.empty())
        if (auto const list = source.root().child("part-list"))
            for (auto const& credit : our_credits(source.root(), heading))
                insertions.before(tag_of(list), credit);
    int number = 0;
    std::map<std::size_t, std::vector<std::string>> said; // by the place of the note
    for (std::size_t i = 0; i < marks.notes.size(); ++i) {
        auto const& mark = marks.notes[i];
        auto const note = reading.notes.at(mark.note);
        int const pass = reading.passes.at(mark.note);
        if (auto const words = words_to_add(mark, pass, said[tag_of(note)]); !words.empty()) {
            auto const lines = in_lines(words);
            // The last line first: an engraver puts the first one next to the staff.
            for (std::size_t l = lines.size(); l > 0; --l) {
                auto const rest = std::to_string(mark.note + 1) + (l > 1 ? "." + std::to_string(l) : "");
                insertions.before(tag_of(note), direction_element(mark_id(line, rest), lines[l - 1], note,
                                                                  reading.staves > 1));
            }
        }
        if (mark.ipa.empty()) continue;
        if (number == 0) number = fresh_number(source, note);
        // Lyrics stand after all else in a note, but before <play> and <listen>.
        auto after = note.child("play");
        if (auto const listen = note.child("listen"); listen && (!after || tag_of(listen) < tag_of(after)))
            after = listen;
        std::size_t at = 0;
        if (after)
            at = tag_of(after);
        else if (auto const* element = source.outline().at(tag_of(note)))
            at = element->end_tag;
        insertions.before(at, lyric_element(std::to_string(number + pass - 1), mark.ipa,
                                            line.several ? mark_id(line, "l" + std::to_string(mark.note + 1))
                                                         : std::string()));
    }
    return insertions.done();
}

/// A text decoded from another encoding says from now on that it is UTF-8.
std::string declared_utf8(std::string text) {
    auto const declared = declaration_of(text).encoding;
    if (declared.empty()) return text;
    return text.replace(static_cast<std::size_t>(declared.data() - text.data()), declared.size(), "UTF-8");
}

/// The text without our marks on a line; null: on any.
std::string without(XmlSource const& source, std::string_view musicxml, LineKey const* line) {
    if (!source.decoded().same_bytes) return std::string(musicxml); // ours are always in UTF-8
    auto const text = source.text();
    std::string out(musicxml.substr(0, source.decoded().mark));
    std::size_t from = 0;
    for (auto const& node : marks_to_replace(source.root(), line)) {
        auto const begin = source.offset(node);
        auto const* element = source.outline().at(begin);
        if (!element) continue;
        out += text.substr(from, begin - from);
        from = element->end;
        while (from < text.size() && blank(text[from])) ++from;
    }
    out += text.substr(from);
    return out;
}

} // namespace

std::string without_marks(std::string_view musicxml, std::string const& file) {
    if (musicxml.find(mark_name) == std::string_view::npos) return std::string(musicxml);
    XmlSource const source(std::string(musicxml), file);
    return without(source, musicxml, nullptr);
}

std::string marked_score(std::string bytes, std::string const& name, ScoreOptions const& options,
                         ScoreMarks const& marks, ScoreForm form) {
    require_size(bytes.size(), largest_score_file, name);
    if (!looks_like_zip(bytes) && !looks_like_xml(bytes))
        throw InputError(worded("only a MusicXML score can be marked"),
                         worded("give a .musicxml, .xml or .mxl score"), {name, 0, 0, {}});
    auto score = unpack_score(std::move(bytes), name);
    XmlSource const before(score.xml, score.shown);
    auto const line = line_key(before, options);
    auto const heading = joined(other_headings(before.root(), line), marks.heading, line);
    XmlSource const source(without(before, score.xml, &line), score.shown);
    std::string text = marked(source, options, marks, line, heading);
    if (source.decoded().same_bytes)
        text.insert(0, source.decoded().mark > 0 ? "\xEF\xBB\xBF" : "");
    else
        text = declared_utf8(std::move(text));
    if (form == ScoreForm::plain) return text;
    return score.archive.empty() ? make_mxl(text, score.shown)
                                 : replace_member(score.archive, score.member, text, score.shown);
}

} // namespace vowelway::io
