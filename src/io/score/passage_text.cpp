// SPDX-License-Identifier: MIT
#include "io/score/passage_text.hpp"

#include "core/text.hpp"
#include "io/score/score_reading.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/input_text.hpp"
#include "vowelway/core/wording.hpp"
#include "yaml/tree.hpp"

#include <optional>
#include <vector>

namespace vowelway::io {

namespace {

struct TypedWord {
    std::string_view text;
    int column = 1;
};

std::vector<TypedWord> typed_words(std::string_view line) {
    std::vector<TypedWord> out;
    std::size_t at = 0;
    while ((at = line.find_first_not_of(" \t\r,;", at)) != std::string_view::npos) {
        auto const end = std::min(line.find_first_of(" \t\r,;", at), line.size());
        auto const one = line.substr(at, end - at);
        if (one == "#" || (one.starts_with('#') && out.empty())) break; // a remark to the end of the line
        if (one != "|") out.push_back({one, static_cast<int>(at) + 1});
        at = end;
    }
    return out;
}

bool is_typed_pitch(std::string_view text) {
    if (text.size() < 2 || text.size() > 8 || text.back() < '0' || text.back() > '9') return false;
    try {
        parse_spelled_pitch(text);
        return true;
    } catch (InputError const&) {
        return false;
    }
}

/// "2", "0.5", "1/2", "3/4": beats.
std::optional<double> typed_beats(std::string_view text) {
    auto const number = text::eat_number(text);
    if (!number) return std::nullopt;
    double beats = *number;
    if (text::eat(text, "/")) {
        auto const part = text::eat_number(text);
        if (!part || *part <= 0) return std::nullopt;
        beats /= *part;
    }
    return text.empty() && beats > 0 ? std::optional(beats) : std::nullopt;
}

bool is_typed_rest(std::string_view text) { return text == "rest" || text == "Rest" || text == "REST"; }

/// The passage as the tree that a YAML file of it would give.
class TypedPassage {
  public:
    explicit TypedPassage(std::string const& file) : file_(file) {
        root_.kind = yaml::Node::Kind::map;
        root_.place = {file, 1, 1, {}};
        notes_ = root_;
        notes_.kind = yaml::Node::Kind::sequence;
        set(root_, "vowelway", "1", root_.place);
    }

    void line(std::string_view text, int number) {
        line_ = number;
        if (heading(text)) return;
        auto tokens = typed_words(text);
        if (tokens.size() > 1 && is_typed_pitch(tokens[0].text)) pitch_first(tokens);
        for (std::size_t i = 0; i < tokens.size(); ++i) {
            auto const& token = tokens[i];
            auto const next = i + 1 < tokens.size() ? typed_beats(tokens[i + 1].text) : std::nullopt;
            if (is_typed_pitch(token.text) || is_typed_rest(token.text)) {
                add(token, next.value_or(1));
                i += next.has_value();
            } else if (typed_beats(token.text)) {
                fail(token, worded("a length stands where a syllable or a pitch should"),
                     worded("write the length behind its pitch: mi- C4 2"));
            } else {
                syllable_ += (syllable_.empty() ? "" : "_") + std::string(token.text);
                waiting_ = place(token);
            }
        }
    }

    yaml::Node finish() {
        if (!syllable_.empty())
            throw InputError(worded("the syllable \"{0}\" has no pitch", syllable_),
                             worded("write a syllable and its pitch on each line: mi- C4 2"), waiting_);
        if (notes_.items.empty())
            throw InputError(worded("the text has no pitches"),
                             worded("write a syllable and its pitch on each line: mi- C4 2"),
                             {file_, 1, 0, {}});
        add_field(root_, "notes", std::move(notes_), root_.place);
        return std::move(root_);
    }

  private:
    Place place(TypedWord const& token) const { return {file_, line_, token.column, {}}; }
    [[noreturn]] void fail(TypedWord const& token, std::string wrong, std::string remedy) const {
        throw InputError(std::move(wrong), std::move(remedy), place(token));
    }

    static void add_field(yaml::Node& to, std::string_view key, yaml::Node value, Place const& at) {
        yaml::Node name;
        name.kind = yaml::Node::Kind::scalar;
        name.text = key;
        name.place = at;
        yaml::Field field;
        field.key = std::move(name);
        field.value = std::move(value);
        to.fields.push_back(std::move(field));
    }
    static void set(yaml::Node& to, std::string_view key, std::string text, Place const& at) {
        yaml::Node value;
        value.kind = yaml::Node::Kind::scalar;
        value.text = std::move(text);
        value.place = at;
        add_field(to, key, std::move(value), at);
    }

    /// "title: The song": before the first note.
    bool heading(std::string_view text) {
        auto const colon = text.find(':');
        if (colon == std::string_view::npos || !notes_.items.empty() || !syllable_.empty()) return false;
        auto const key = text::trim(text.substr(0, colon));
        auto const value = text::trim(text.substr(colon + 1));
        for (auto const& [written, field] : {std::pair("title", "passage"), std::pair("composer", "composer"),
                                             std::pair("language", "language"), std::pair("tempo", "tempo"),
                                             std::pair("time", "time"), std::pair("key", "key")}) {
            if (key != written || value.empty()) continue;
            Place const at{file_, line_, 1, {}};
            if (root_.find(field))
                throw InputError(worded("\"{0}\" is given twice", key), worded("leave out one of the two"),
                                 at);
            set(root_, field, std::string(value), at);
            return true;
        }
        return false;
    }

    /// "C4 2 mi-" and "C4 mi- 2" are turned about, where the line has one pitch.
    static void pitch_first(std::vector<TypedWord>& tokens) {
        std::vector<TypedWord> words, numbers;
        for (std::size_t i = 1; i < tokens.size(); ++i) {
            if (is_typed_pitch(tokens[i].text) || is_typed_rest(tokens[i].text)) return;
            (typed_beats(tokens[i].text) ? numbers : words).push_back(tokens[i]);
        }
        if (words.empty() || numbers.size() > 1) return;
        words.push_back(tokens.front());
        words.insert(words.end(), numbers.begin(), numbers.end());
        tokens = std::move(words);
    }

    void add(TypedWord const& token, double beats) {
        yaml::Node note;
        note.kind = yaml::Node::Kind::map;
        note.place = place(token);
        auto const length = std::to_string(beats) + " beats";
        if (is_typed_rest(token.text)) {
            if (!syllable_.empty())
                fail(token, worded("the syllable \"{0}\" has no pitch", syllable_),
                     worded("write a syllable and its pitch on each line: mi- C4 2"));
            set(note, "rest", length, note.place);
        } else {
            set(note, "pitch", std::string(token.text), note.place);
            set(note, "duration", length, note.place);
            if (!syllable_.empty()) {
                // The hyphen may stand at either piece.
                if (open_ && !syllable_.starts_with('-')) syllable_.insert(0, "-");
                open_ = syllable_.ends_with('-');
                set(note, "syllable", std::exchange(syllable_, {}), note.place);
            }
        }
        notes_.items.push_back(std::move(note));
    }

    std::string const& file_;
    yaml::Node root_, notes_;
    std::string syllable_;
    Place waiting_;
    bool open_ = false;
    int line_ = 0;
};

} // namespace

bool has_pitches(std::string_view text) {
    while (!text.empty()) {
        auto const end = std::min(text.find('\n'), text.size());
        for (auto const& token : typed_words(text.substr(0, end)))
            if (is_typed_pitch(token.text)) return true;
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return false;
}

Passage read_passage_text(std::string const& text, std::string const& file, ScoreOptions const& options) {
    require_size(text.size(), yaml::largest_file, file);
    require_text(text, file);
    std::string_view rest = text;
    text::eat(rest, "\xEF\xBB\xBF");
    TypedPassage typed(file);
    for (int number = 1; !rest.empty(); ++number) {
        auto const end = std::min(rest.find('\n'), rest.size());
        typed.line(rest.substr(0, end), number);
        rest.remove_prefix(std::min(end + 1, rest.size()));
    }
    return read_passage(typed.finish(), file, options);
}

} // namespace vowelway::io
