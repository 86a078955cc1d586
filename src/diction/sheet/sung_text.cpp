// SPDX-License-Identifier: MIT
#include "vowelway/diction/sung_text.hpp"

#include "diction/ipa/word_ipa.hpp"
#include "diction/sheet/liaison.hpp"
#include "diction/sheet/sign_key.hpp"
#include "diction/sheet/verse_lines.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <cstdlib>

namespace vowelway::diction {

namespace {

/// A word under the notes: its syllables in order and the notes they stand under.
struct WordUnderNotes {
    std::string text;
    std::size_t syllables = 0, first = 0, last = 0; ///< notes
};

/// A verse number is no word of the poem.
std::string_view without_number(std::string_view text) {
    auto rest = text;
    while (!rest.empty() && ((rest.front() >= '0' && rest.front() <= '9'))) rest.remove_prefix(1);
    if (rest.size() == text.size() || !rest.starts_with('.')) return text;
    rest.remove_prefix(1);
    while (rest.starts_with(' ')) rest.remove_prefix(1);
    return rest;
}

std::vector<WordUnderNotes> words_of(Passage const& passage) {
    std::vector<WordUnderNotes> out;
    bool open = false;
    using Part = Syllable::Part;
    for (std::size_t i = 0; i < passage.notes.size(); ++i)
        for (auto const& syllable : passage.notes[i].syllables) {
            if (!open || syllable.part == Part::begin) out.push_back({{}, 0, i, i});
            open = syllable.part == Part::begin || syllable.part == Part::middle;
            auto& word = out.back();
            word.text += word.text.empty() ? without_number(syllable.text) : std::string_view(syllable.text);
            word.syllables += !without_punctuation(syllable.text).empty();
            word.last = i;
        }
    out.erase(
        std::remove_if(out.begin(), out.end(),
                       [](WordUnderNotes const& word) { return without_punctuation(word.text).empty(); }),
        out.end());
    return out;
}

TextWord text_word(std::string_view written, Reading const& reading, Language language,
                   DictionOptions const& options, bool last_e) {
    auto const ipa = word_ipa(reading, language, options, last_e);
    auto const listed = word_ipa(reading, language, options, true).listed;
    return {std::string(written),
            lower(without_punctuation(written)),
            ipa.plain,
            listed,
            false,
            !reading.sounds.doubt.empty() || ipa.plain.empty()};
}

bool optional_e(Reading const& reading) {
    return !reading.sounds.nuclei.empty() && reading.sounds.nuclei.back().optional;
}

/// Whose pronunciation it is, where there are several.
std::string manner_of(Language language) {
    switch (language) {
    case Language::american_english:
        return worded("The American stage: æ in dance, ɑ in hot.");
    case Language::german_latin:
        return worded(
            "Latin as in German-speaking countries: c before e and i is ts, g is always hard. Stress is not "
            "marked.");
    case Language::portuguese:
        return worded("Brazilian. Stressed e and o without an accent are partly the synthesiser's.");
    case Language::welsh:
        return worded("Welsh of the north: in the south ɨ is sung as i.");
    case Language::norwegian:
        return worded("Norwegian bokmål, eastern.");
    case Language::hebrew:
        return worded("Modern (Sephardi) vowels. The stress is a guess from the endings.");
    case Language::church_slavonic:
        return worded(
            "Church Slavonic in the Russian manner: o stays o without stress. Stress is not marked.");
    case Language::russian:
        return worded("Where the stress is wrong, o and a, e and i are wrong too.");
    default:
        return {};
    }
}

void note_what_to_know(SungText& text, Language language, DictionOptions const& options) {
    bool const guessed = std::any_of(text.lines.begin(), text.lines.end(), [](VerseLine const& line) {
        return std::any_of(line.words.begin(), line.words.end(), [](TextWord const& w) { return w.guessed; });
    });
    if (text.lines_guessed)
        text.notes.push_back(worded(
            "The lines were found from capitals, stops, rests and rhyme: compare them with the poem."));
    if (guessed) text.notes.push_back(worded("? means that the sounds of a word are a guess."));
    if (!has_diction_rules(language))
        text.notes.push_back(worded("There are no diction rules for this language yet: all sounds come from "
                                    "the speech synthesiser."));
    else if (caution(language))
        text.notes.push_back(
            worded("The rules for this language are rough or unproved: read the sounds over."));
    if (auto const manner = manner_of(language); !manner.empty()) text.notes.push_back(manner);
    if (language == Language::french)
        text.notes.push_back(
            worded("Only the liaisons that are always made are marked; others are a matter of style."));
    if (language == Language::latin)
        text.notes.push_back(worded("Latin in the Italian manner. Stress is not marked."));
    if (language == Language::spanish)
        text.notes.push_back(worded("Castilian: in songs of the Americas θ is sung as s, and ʎ as j."));
    if (main_language(language) == Language::english)
        text.notes.push_back(options.r_colour ? worded("Neutral English with the r kept in the vowel.")
                                              : worded("Neutral English of the stage: no r after a vowel."));
}

void finish(SungText& text, Language language, DictionOptions const& options) {
    add_key(text, language);
    note_what_to_know(text, language, options);
}

/// The words of one line of a text.
VerseLine line_of(std::string_view line, Language language, DictionOptions const& options) {
    VerseLine out;
    std::vector<std::string_view> written;
    while (!line.empty()) {
        auto const end = std::min(line.find_first_of(" \t\r\f\v"), line.size());
        if (!without_punctuation(line.substr(0, end)).empty()) written.push_back(line.substr(0, end));
        line.remove_prefix(std::min(end + 1, line.size()));
    }
    std::vector<Reading> readings;
    for (auto const word : written)
        readings.push_back(read_word(without_punctuation(word), language, options));
    for (std::size_t i = 0; i < written.size(); ++i)
        out.words.push_back(text_word(written[i], readings[i], language, options, true));
    if (language != Language::french) return out;
    for (std::size_t i = 0; i + 1 < out.words.size(); ++i) {
        auto& word = out.words[i];
        bool const vowel_next =
            !parted(word.written) && takes_liaison(out.words[i + 1].written, out.words[i + 1].ipa);
        if (optional_e(readings[i]) && vowel_next) {
            word.ipa = word_ipa(readings[i], language, options, false).plain;
            word.joined = true;
        }
        join_french(word, out.words[i + 1]);
    }
    return out;
}

/// What the notes of a word tell of its place in the verse.
void place(PlacedWord& placed, Passage const& passage, WordUnderNotes const& word,
           WordUnderNotes const* next) {
    std::size_t last = word.last;
    while (last + 1 < passage.notes.size() && passage.notes[last + 1].syllables.empty()) ++last;
    auto const end = passage.notes[last].start + passage.notes[last].length;
    placed.held = in_seconds(end - passage.notes[word.last].start);
    if (!next) return;
    auto const& after = passage.notes[next->first];
    placed.rest_after = in_seconds(after.start - end);
    placed.word.joined = next->first == word.last;
    placed.pass_ends = std::atoi(after.measure.c_str()) < std::atoi(passage.notes[last].measure.c_str());
}

std::vector<PlacedWord> placed_words(Passage const& passage, Language language,
                                     DictionOptions const& options) {
    auto const written = words_of(passage);
    std::vector<PlacedWord> out;
    std::vector<bool> mute; // a French e without a note
    for (auto const& one : written) {
        auto const reading = read_word(without_punctuation(one.text), language, options);
        bool const last_e = one.syllables >= reading.sounds.nuclei.size();
        mute.push_back(optional_e(reading) && !last_e);
        PlacedWord placed;
        placed.word = text_word(one.text, reading, language, options, last_e);
        placed.syllables = one.syllables;
        placed.rhyme = rhyme_of(placed.word.ipa, language);
        place(placed, passage, one, &one == &written.back() ? nullptr : &one + 1);
        out.push_back(std::move(placed));
    }
    if (language != Language::french) return out;
    for (std::size_t w = 0; w + 1 < out.size(); ++w) {
        auto const& next = out[w + 1].word;
        if (out[w].rest_after > 0.2) continue;
        if (mute[w] && takes_liaison(next.written, next.ipa)) out[w].word.joined = true;
        join_french(out[w].word, next);
    }
    return out;
}

} // namespace

SungText sung_text(Passage const& passage, DictionOptions const& given) {
    WordsRead own;
    auto options = given;
    if (!options.read) options.read = &own;
    SungText out;
    out.title = passage.title;
    out.composer = passage.composer;
    auto const language = options.language ? *options.language : guess_language(passage).language;
    out.language = tag(language);
    out.lines = verse_lines(placed_words(passage, language, options), language);
    out.lines_guessed = !out.lines.empty();
    finish(out, language, options);
    return out;
}

SungText sung_text(std::string_view text, Language language, DictionOptions const& given) {
    WordsRead own;
    auto options = given;
    if (!options.read) options.read = &own;
    transcribe(text, language, options); // its bounds
    SungText out;
    out.language = tag(language);
    bool stanza = false;
    while (!text.empty()) {
        auto const end = std::min(text.find('\n'), text.size());
        auto line = line_of(text.substr(0, end), language, options);
        text.remove_prefix(std::min(end + 1, text.size()));
        if (line.words.empty()) {
            stanza = !out.lines.empty();
            continue;
        }
        line.begins_stanza = stanza;
        stanza = false;
        out.lines.push_back(std::move(line));
    }
    fold_repeated(out.lines);
    finish(out, language, options);
    return out;
}

} // namespace vowelway::diction
