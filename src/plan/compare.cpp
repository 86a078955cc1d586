// SPDX-License-Identifier: MIT
#include "vowelway/plan/compare.hpp"

#include "vowelway/core/wording.hpp"
#include "vowelway/plan/crossings.hpp"
#include "vowelway/plan/known_resonances.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace vowelway::plan {

namespace {

Cents joint(Cents a, Cents b) { return {std::hypot(a.value, b.value)}; }

double p_positive(Cents interval, Cents sd) {
    return 0.5 * std::erfc(-interval.value / sd.value / std::numbers::sqrt2);
}

Difference difference(ComparedVowel const& a, std::size_t first, ComparedVowel const& b, std::size_t second) {
    Difference d;
    d.first = first, d.second = second;
    auto const& from = a.resonances;
    auto const& to = b.resonances;
    d.r1 = interval(from.r1.centre, to.r1.centre);
    d.r2 = interval(from.r2.centre, to.r2.centre);
    d.r1_sd = joint(from.r1.sd_cents(), to.r1.sd_cents());
    d.r2_sd = joint(from.r2.sd_cents(), to.r2.sd_cents());
    d.p_r1_higher = p_positive(d.r1, d.r1_sd);
    d.p_r2_higher = p_positive(d.r2, d.r2_sd);
    return d;
}

std::vector<Vowel> usual_vowels(std::vector<ComparedSinger> const& singers) {
    std::vector<Vowel> out;
    for (auto const& [singer, reference] : singers) {
        if (singer.average) continue;
        for (auto const& v : singer.vowels) out.push_back(v.vowel.quality());
    }
    return out.empty() ? parse_vowels("i e ɛ a ɑ ɔ o u") : out;
}

} // namespace

Comparison compare_singers(std::vector<ComparedSinger> singers, std::vector<Vowel> vowels) {
    if (singers.size() < 2)
        throw InputError(worded("there is only one singer to compare"),
                         worded("name at least two profiles or voice types, or --voices"));
    if (vowels.empty()) vowels = usual_vowels(singers);
    for (auto& v : vowels) v = v.quality();
    std::stable_sort(vowels.begin(), vowels.end(), before_on_the_rim);
    vowels.erase(std::unique(vowels.begin(), vowels.end()), vowels.end());

    Comparison out;
    for (auto const& vowel : vowels) {
        ComparedRow row;
        row.vowel = vowel;
        for (auto const& [singer, reference] : singers) {
            auto const found = resonances_of(vowel, singer, reference ? &*reference : nullptr);
            if (found)
                row.of.push_back(
                    ComparedVowel{*found, crossing({2}, {1}, found->r1), crossing({1}, {1}, found->r1)});
            else
                row.of.push_back(std::nullopt);
        }
        for (std::size_t a = 0; a < row.of.size(); ++a)
            for (std::size_t b = a + 1; b < row.of.size(); ++b)
                if (row.of[a] && row.of[b])
                    row.differences.push_back(difference(*row.of[a], a, *row.of[b], b));
        out.rows.push_back(std::move(row));
    }
    for (auto& [singer, reference] : singers) {
        if (singer.average)
            out.remarks.push_back(
                {Remark::Kind::caution, singer.name + ": " + std::string(reworded(average_voice_notice))});
        out.singers.push_back(std::move(singer));
    }
    return out;
}

std::optional<GenericPassaggio> generic_passaggio(VoiceType voice) {
    switch (voice) {
    case VoiceType::bass:
        return GenericPassaggio{to_word("lyric bass"), {'A', -1, 3}, {'D', -1, 4}};
    case VoiceType::baritone:
        return GenericPassaggio{to_word("lyric baritone"), {'B', 0, 3}, {'E', 0, 4}};
    case VoiceType::tenor:
        return GenericPassaggio{to_word("lyric tenor"), {'D', 0, 4}, {'G', 0, 4}};
    case VoiceType::alto:
        return GenericPassaggio{to_word("contralto"), {'G', 0, 4}, {'D', 0, 5}};
    case VoiceType::mezzo:
        return GenericPassaggio{to_word("mezzo-soprano"), {'E', 0, 4}, {'E', 0, 5}};
    case VoiceType::soprano:
        return GenericPassaggio{to_word("soprano"), {'E', -1, 4}, {'F', 1, 5}};
    case VoiceType::countertenor:
    case VoiceType::treble:
    case VoiceType::other:
        break;
    }
    return std::nullopt;
}

} // namespace vowelway::plan
