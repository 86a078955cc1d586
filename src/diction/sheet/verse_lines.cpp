// SPDX-License-Identifier: MIT
// Common practice of printing verse, no source; the weights are the author's.
#include "diction/sheet/verse_lines.hpp"

#include "core/utf8.hpp"
#include "diction/words/letters.hpp"
#include "vowelway/core/vowel.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <set>

namespace vowelway::diction {

namespace {

/// Words that German writes small: with a capital they begin a line or a sentence.
constexpr std::string_view small_in_german = " der die das den dem des ein eine einen einem einer und oder "
                                             "aber doch denn nicht ist sind war bin bist ich du er "
                                             "sie es wir ihr mich mir dich dir ihm ihn uns euch mein meine "
                                             "meinen meinem dein deine deinen sein seine in im "
                                             "ins an am auf aus bei mit nach von vom zu zum zur für durch "
                                             "über unter vor um so wie wenn als da daß dass was "
                                             "wer wo noch nur schon auch nun kein keine hat habe hab will "
                                             "wird kann mag soll komm kommt geh sieh laß lass o "
                                             "ach drum drauf dann dort hier her hin still leise wohl weil "
                                             "bis ob man mag nie nimmer immer selbst sanft ";

bool capital(std::string_view written) {
    while (auto const c = utf8::eat(written)) {
        bool const upper = (*c >= U'A' && *c <= U'Z') || (*c >= 0xC0 && *c <= 0xDE) || *c == U'Œ';
        if (upper) return true;
        if (is_letter(*c)) return false;
    }
    return false;
}

double stop_after(std::string_view written) {
    for (auto const sign : {".", "!", "?", "…"})
        if (written.find(sign) != std::string_view::npos) return 2;
    for (auto const sign : {";", ":"})
        if (written.find(sign) != std::string_view::npos) return 1.7;
    return written.find(',') != std::string_view::npos ? 1.1 : -0.7;
}

bool ends_sentence(std::string_view written) { return stop_after(written) >= 2; }

/// What speaks for a line to end after each word.
class Breaks {
  public:
    Breaks(std::vector<PlacedWord> const& words, Language language) : words_(words), language_(language) {
        for (auto const& word : words)
            if (!capital(word.word.written)) small_.insert(lower(without_punctuation(word.word.written)));
        std::size_t telling = 0;
        for (std::size_t i = 0; i + 1 < words.size(); ++i)
            telling += begins_with_capital(i + 1) > 1 && !ends_sentence(words[i].word.written);
        capitals_tell_ = telling * 25 >= words.size();
    }

    std::vector<double> weights() const {
        std::vector<double> out(words_.size(), 0);
        for (std::size_t i = 0; i + 1 < words_.size(); ++i) out[i] = without_rhyme(i);
        std::vector<double> const plain = out;
        for (std::size_t i = 0; i + 1 < words_.size(); ++i)
            if (plain[i] > 0 && rhymes(i, plain)) out[i] += 0.9;
        return out;
    }

  private:
    /// 0 small, 1 a noun or a name, 3 surely the beginning of a line or a sentence.
    double begins_with_capital(std::size_t i) const {
        auto const& written = words_[i].word.written;
        if (!capital(written)) return 0;
        auto const word = lower(without_punctuation(written));
        if (main_language(language_) == Language::english &&
            (word == "i" || word == "o" || word.starts_with("i'")))
            return 0.7;
        if (language_ != Language::german) return 3;
        return small_in_german.find(" " + word + " ") != std::string_view::npos || small_.contains(word)
                   ? 3
                   : 0.8;
    }

    double without_rhyme(std::size_t i) const {
        double out = stop_after(words_[i].word.written);
        if (words_[i].rest_after > 0.2) out += std::min(2.5, 1 + 0.6 * words_[i].rest_after);
        if (words_[i].held >= 1.6) out += 0.4;
        if (words_[i].pass_ends) out += 9;
        double const large = begins_with_capital(i + 1);
        if (capitals_tell_)
            out += large > 0 ? large : -4;
        else if (large > 1 && ends_sentence(words_[i].word.written))
            out += 1;
        if (words_[i].word.joined) out -= 1.5;
        return out;
    }

    bool rhymes(std::size_t i, std::vector<double> const& weights) const {
        constexpr std::size_t reach = 36;
        auto const word = lower(without_punctuation(words_[i].word.written));
        for (std::size_t j = i > reach ? i - reach : 0; j < std::min(words_.size(), i + reach); ++j)
            if (j != i && (weights[j] > 0 || j + 1 == words_.size()) && words_[j].rhyme.size() > 1 &&
                words_[j].rhyme == words_[i].rhyme &&
                lower(without_punctuation(words_[j].word.written)) != word)
                return true;
        return false;
    }

    std::vector<PlacedWord> const& words_;
    Language language_;
    std::set<std::string> small_;
    bool capitals_tell_ = false;
};

double length_cost(std::size_t syllables, double usual) {
    double const n = static_cast<double>(syllables);
    double cost = n < 4 ? 1.2 * (4 - n) : n > 12 ? 0.9 * (n - 12) : 0;
    if (usual > 0) cost += 0.18 * std::min(6.0, std::abs(n - usual));
    return cost;
}

/// The first word of each line, for the least cost.
std::vector<std::size_t> best_lines(std::vector<PlacedWord> const& words, std::vector<double> const& weights,
                                    double usual) {
    constexpr std::size_t longest = 30; // words in a line
    std::size_t const n = words.size();
    std::vector<double> cost(n + 1, std::numeric_limits<double>::infinity());
    std::vector<std::size_t> from(n + 1, 0);
    cost[0] = 0;
    constexpr double a_line = 1.6; // what a break must be worth
    for (std::size_t end = 1; end <= n; ++end) {
        std::size_t syllables = 0;
        for (std::size_t begin = end; begin-- > 0 && end - begin <= longest;) {
            syllables += words[begin].syllables;
            double const worth = end < n ? weights[end - 1] - a_line : 0;
            double const all = cost[begin] + length_cost(syllables, usual) - worth;
            if (all < cost[end]) {
                cost[end] = all;
                from[end] = begin;
            }
        }
    }
    std::vector<std::size_t> out;
    for (std::size_t end = n; end > 0; end = from[end]) out.push_back(from[end]);
    std::reverse(out.begin(), out.end());
    return out;
}

double usual_length(std::vector<PlacedWord> const& words, std::vector<std::size_t> const& begins) {
    std::vector<std::size_t> lengths;
    for (std::size_t k = 0; k < begins.size(); ++k) {
        std::size_t count = 0;
        std::size_t const end = k + 1 < begins.size() ? begins[k + 1] : words.size();
        for (std::size_t i = begins[k]; i < end; ++i) count += words[i].syllables;
        lengths.push_back(count);
    }
    auto const middle = lengths.begin() + static_cast<std::ptrdiff_t>(lengths.size() / 2);
    std::nth_element(lengths.begin(), middle, lengths.end());
    return static_cast<double>(*middle);
}

bool same(VerseLine const& a, VerseLine const& b) {
    return std::equal(a.words.begin(), a.words.end(), b.words.begin(), b.words.end(),
                      [](TextWord const& x, TextWord const& y) {
                          return lower(without_punctuation(x.written)) ==
                                 lower(without_punctuation(y.written));
                      });
}

} // namespace

std::string rhyme_of(std::string_view ipa, Language language) {
    constexpr std::string_view stress = "ˈ";
    if (auto const at = ipa.find(stress); at != std::string_view::npos) ipa.remove_prefix(at + stress.size());
    std::string_view last = {};
    while (!ipa.empty()) {
        if (auto const vowel = vowel_prefix(ipa)) {
            bool const weak = vowel->vowel.base == U'ə' && !last.empty();
            if (last.empty() || (language == Language::french && !weak)) last = ipa;
            ipa.remove_prefix(vowel->bytes);
        } else if (!utf8::eat(ipa)) {
            ipa.remove_prefix(1);
        }
    }
    return std::string(last);
}

void fold_repeated(std::vector<VerseLine>& lines) {
    std::vector<VerseLine> out;
    for (auto& line : lines) {
        if (!out.empty() && same(out.back(), line)) {
            out.back().words.back().written = line.words.back().written;
            ++out.back().times;
        } else {
            out.push_back(std::move(line));
        }
    }
    lines = std::move(out);
}

std::vector<VerseLine> verse_lines(std::vector<PlacedWord> const& words, Language language) {
    if (words.empty()) return {};
    auto const weights = Breaks(words, language).weights();
    auto begins = best_lines(words, weights, 0);
    begins = best_lines(words, weights, usual_length(words, begins));
    std::vector<VerseLine> out;
    constexpr double interlude = 5; // seconds
    for (std::size_t k = 0; k < begins.size(); ++k) {
        std::size_t const end = k + 1 < begins.size() ? begins[k + 1] : words.size();
        VerseLine line;
        if (begins[k] > 0) {
            auto const& before = words[begins[k] - 1];
            line.begins_stanza = before.pass_ends || before.rest_after >= interlude;
        }
        for (std::size_t i = begins[k]; i < end; ++i) line.words.push_back(words[i].word);
        line.words.back().joined = false;
        out.push_back(std::move(line));
    }
    fold_repeated(out);
    return out;
}

} // namespace vowelway::diction
