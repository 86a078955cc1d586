// SPDX-License-Identifier: MIT
#include "diction/syllables/align.hpp"
#include "diction/syllables/grouping.hpp"
#include "diction/words/typed_ipa.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/diction/sing_words.hpp"

#include <algorithm>
#include <map>
#include <set>

namespace vowelway::diction {

namespace {

// A written syllable and where it stands.
struct Written {
    std::size_t note;
    Syllable const* syllable;
};

// What was found for it.
struct Found {
    Nucleus nucleus;
    VowelOrigin origin;
};

using Words = std::vector<std::vector<Written>>;

// A hyphenated syllable continues the word begun before it; a word left open ends where another begins.
Words gather_words(Passage const& passage) {
    Words out;
    bool open = false;
    for (std::size_t i = 0; i < passage.notes.size(); ++i) {
        for (auto const& syllable : passage.notes[i].syllables) {
            using Part = Syllable::Part;
            // A word begun and followed by a whole word is a slip of the score: "hol-" "de".
            bool const joins = open && syllable.part != Part::begin;
            if (!joins) out.emplace_back();
            out.back().push_back({i, &syllable});
            open = syllable.part == Part::begin || (syllable.part == Part::middle);
        }
    }
    return out;
}

// The word as one text, and the letters of each syllable in it.
struct Joined {
    std::string text;
    std::vector<diction::LetterRange> ranges; // one for each syllable; empty ranges hold no letters
};

Joined join(std::vector<Written> const& word) {
    Joined out;
    std::size_t count = 0;
    for (auto const& written : word) {
        auto const part = diction::without_punctuation(written.syllable->text);
        out.text += part;
        std::size_t const letters = diction::letters(part).size();
        out.ranges.push_back({count, count + letters});
        count += letters;
    }
    return out;
}

bool closed_lips(std::string_view word) {
    auto const text = diction::lower(word);
    return !text.empty() && text.find_first_not_of("mhn") == std::string::npos &&
           text.find('m') != std::string::npos;
}

// Groups the guessed words into one remark.
void say_guessed(Passage& passage, std::vector<std::pair<std::string, std::string>> const& guesses) {
    if (guesses.empty()) return;
    constexpr std::size_t shown = 12;
    std::string text;
    for (std::size_t i = 0; i < std::min(shown, guesses.size()); ++i)
        text += (i ? "; " : "") + guesses[i].first + " (" + guesses[i].second + ")";
    if (guesses.size() > shown) text += "; " + worded("and {0} more", guesses.size() - shown);
    passage.remarks.push_back(
        {Remark::Kind::guessed,
         guesses.size() == 1
             ? worded("the vowels of one word are a guess: {0}. Put the wrong ones into a word list", text)
             : worded("the vowels of {0} words are guesses: {1}. Put the wrong ones into a word list",
                      guesses.size(), text)});
}

std::string shown_vowels(std::vector<std::optional<Nucleus>> const& syllables) {
    std::string out;
    for (auto const& nucleus : syllables) {
        if (!out.empty()) out += ' ';
        out += nucleus ? nucleus->ipa() : "-";
    }
    return out;
}

Language choose_language(Passage& passage, DictionOptions const& options) {
    if (options.language) {
        passage.language = tag(*options.language);
        return *options.language;
    }
    auto const guess = guess_language(passage);
    bool const named = !passage.language.empty() && parse_language(passage.language);
    if (!named) {
        passage.language = tag(guess.language);
        passage.remarks.push_back({guess.sure ? Remark::Kind::assumed : Remark::Kind::guessed,
                                   worded("the language is taken to be {0} ({1})",
                                          reworded(to_string(guess.language)), guess.evidence)});
    }
    return guess.language;
}

// Melismas: the glide into the vowel is on the first note, the glide out of it on the last.
void spread_over_melismas(Passage& passage) {
    for (std::size_t i = 0; i < passage.notes.size(); ++i) {
        auto& note = passage.notes[i];
        if (!note.melisma || !note.syllables.empty() || note.typed_ipa || i == 0) continue;
        auto& before = passage.notes[i - 1];
        note.hummed = note.hummed || before.hummed;
        note.vowel = before.vowel;
        if (!note.vowel) continue;
        note.vowel->before.clear();
        before.vowel->after.clear();
    }
}

/// The words of a passage on their way to its notes.
struct Setting {
    Passage& passage;
    Language language;
    DictionOptions const& options;
    std::map<std::size_t, std::vector<Found>> found = {}; // by note
    std::vector<std::pair<std::string, std::string>> guesses = {};
    std::set<std::string> guessed_words = {};

    void take(std::vector<Written> const& word);
    void set_notes();

  private:
    bool leans(Reading const& reading, std::vector<Written> const& word) const;
    void note_guess(std::string const& text, Reading const& reading, Aligned const& aligned);
};

/// Polish "w", "z" and the like lean on the word they share a note with.
bool Setting::leans(Reading const& reading, std::vector<Written> const& word) const {
    bool const no_vowel = std::none_of(reading.letters.begin(), reading.letters.end(),
                                       [](auto const& l) { return is_vowel_letter(l.base); });
    bool const latin = std::all_of(reading.letters.begin(), reading.letters.end(),
                                   [](auto const& l) { return l.base < 0x250; });
    bool const w_is_vowel = language == Language::welsh;
    return no_vowel && latin && !w_is_vowel && word.size() == 1 &&
           passage.notes[word.front().note].syllables.size() > 1;
}

/// A word of one syllable without a written accent leans on its neighbour: "da un", "se a-mor".
void loosen_stress(Aligned& aligned, Reading const& reading) {
    if (aligned.syllables.size() == 1 && aligned.syllables[0] &&
        reading.letters[aligned.syllables[0]->held.letter].mark == 0 && reading.sounds.nuclei.size() == 1)
        aligned.syllables[0]->stressed = false;
}

void Setting::note_guess(std::string const& text, Reading const& reading, Aligned const& aligned) {
    bool const doubtful = reading.origin == VowelOrigin::guessed;
    bool const guessed = doubtful || !aligned.explanation.empty();
    if (!guessed || !guessed_words.insert(lower(text)).second) return;
    auto const why = doubtful ? reading.sounds.doubt : aligned.explanation;
    guesses.push_back({text, shown_vowels(aligned.syllables) + ": " + why});
}

/// Finds the vowels of a word and the notes they go to.
void Setting::take(std::vector<Written> const& word) {
    auto const joined = join(word);
    if (joined.text.empty()) return;
    if (closed_lips(joined.text)) {
        for (auto const& written : word) passage.notes[written.note].hummed = true;
        return;
    }
    auto const reading = read_word(joined.text, language, options);
    if (leans(reading, word)) return;
    std::vector<LetterRange> ranges;
    std::vector<Written> sounding;
    for (std::size_t s = 0; s < word.size(); ++s)
        if (joined.ranges[s].from < joined.ranges[s].to) {
            ranges.push_back(joined.ranges[s]);
            sounding.push_back(word[s]);
        }
    auto aligned = align(reading.sounds.nuclei, reading.letters, ranges, language);
    loosen_stress(aligned, reading);
    for (std::size_t s = 0; s < sounding.size(); ++s)
        if (aligned.syllables[s])
            found[sounding[s].note].push_back(
                {*aligned.syllables[s], aligned.guessed[s] ? VowelOrigin::guessed : reading.origin});
    note_guess(joined.text, reading, aligned);
}

/// One vowel for each note, from all that meet on it; what was read from the passage stays.
void Setting::set_notes() {
    for (auto const& [i, vowels] : found) {
        auto& note = passage.notes[i];
        if (note.vowel && note.vowel->origin == VowelOrigin::typed) continue;
        std::vector<Nucleus> nuclei;
        auto origin = vowels.front().origin;
        for (auto const& one : vowels) {
            nuclei.push_back(one.nucleus);
            if (one.origin == VowelOrigin::guessed) origin = one.origin;
        }
        auto const met = nuclei.size() == 1 ? nuclei.front() : meet(nuclei, language);
        note.vowel = sung(met, language, options, origin);
    }
}

void set_typed(Passage& passage) {
    for (auto& note : passage.notes) {
        if (!note.typed_ipa) continue;
        if (auto const typed = read_typed(*note.typed_ipa))
            note.vowel = *typed;
        else
            passage.remarks.push_back(
                {Remark::Kind::guessed, worded("\"{0}\" in bar {1} has no IPA vowel and is ignored",
                                               *note.typed_ipa, note.measure)});
    }
}

} // namespace

void set_vowels(Passage& passage, DictionOptions const& given) {
    WordsRead own; // songs say their words again
    auto options = given;
    if (!options.read) options.read = &own;
    bool const any_text = std::any_of(passage.notes.begin(), passage.notes.end(),
                                      [](auto const& note) { return !note.syllables.empty(); });
    auto const language =
        any_text || options.language ? choose_language(passage, options) : Language::italian;
    Setting setting{passage, language, options};
    for (auto const& word : gather_words(passage)) setting.take(word);
    setting.set_notes();
    if (auto const told = caution(language); told && any_text)
        passage.remarks.push_back({Remark::Kind::guessed, *told});
    say_guessed(passage, setting.guesses);
    set_typed(passage);
    spread_over_melismas(passage);
}

Alignment alignment(Passage const& passage) {
    Alignment out;
    for (auto const& note : passage.notes) {
        if (note.syllables.empty() || note.hummed || note.typed_ipa) continue;
        out.syllables += note.syllables.size();
        if (note.vowel && note.vowel->origin != VowelOrigin::guessed) out.certain += note.syllables.size();
    }
    return out;
}

} // namespace vowelway::diction
