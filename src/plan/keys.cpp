// SPDX-License-Identifier: MIT
#include "vowelway/plan/keys.hpp"

#include "core/interval.hpp"
#include "plan/cost.hpp"
#include "plan/executor_of.hpp"
#include "vowelway/core/tessitura.hpp"
#include "vowelway/plan/phrases.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>

namespace vowelway::plan {

namespace {

constexpr int most_moved = 24, fewest_keys = 5;
constexpr auto long_note = seconds(1);

// Sizes of the terms; docs/strategy.md tells what they were chosen by. Our judgement.
constexpr double of_plan =
    0.35; // what the planner minds note by note: a high line is expected to lose some of it
constexpr double of_carrying = 0.45, of_long_turns = 0.3, of_exposed_turn = 0.05, of_high_words = 0.5;
constexpr double of_high = 0.25, of_low = 0.3, of_middle = 0.25, of_beyond = 4, of_farthest = 0.1;
constexpr double dwelling_step = 3; // semitones past the dwelling range that count as 1

double above(Pitch a, Pitch b) { return std::max(0.0, in_semitones(a - b)); }

double square(double value) { return value * value; }

/// Time-weighted mean over the notes sung of what `cost` says of each.
template <class Cost> double mean_over(Passage const& passage, Cost const& cost) {
    double sum = 0, whole = 0;
    for (auto const& note : passage.notes) {
        sum += in_seconds(note.length) * cost(note.pitch);
        whole += in_seconds(note.length);
    }
    return whole > 0 ? sum / whole : 0;
}

void put_tessitura(KeyTerms& terms, Passage const& passage, PitchRange const& dwelling, Load const& load) {
    auto const bottom = passage.tuning.pitch(dwelling.low), top = passage.tuning.pitch(dwelling.high);
    terms.high = of_high * mean_over(passage, [&](Pitch p) { return square(above(p, top) / dwelling_step); });
    terms.low =
        of_low * mean_over(passage, [&](Pitch p) { return square(above(bottom, p) / dwelling_step); });
    // The middle of the time sung away from the middle of where the voice dwells, in halves of it.
    double const half = std::max(1.0, in_semitones(top - bottom) / 2);
    double const away = in_semitones(load.tessitura.median - bottom) / half - 1;
    (away > 0 ? terms.high : terms.low) += of_middle * square(away);
}

/// The level that goes with the pitch, by the technique's own slopes, priced as the planner prices level
/// missing: what a line gives up that lies below the top of where the voice dwells.
double carrying(Passage const& passage, Technique const& technique, Pitch top) {
    Aim const aim{technique, top};
    return technique.ring * mean_over(passage, [&](Pitch p) {
               return std::max(0.0, -expected_level(Decibels{0}, aim, p).value);
           });
}

void put_beyond(KeyTerms& terms, Passage const& passage, PitchRange const& range) {
    auto const bottom = passage.tuning.pitch(range.low), top = passage.tuning.pitch(range.high);
    // Touching what cannot be reached is as bad as staying there: the farthest note counts beside the time.
    auto const [low, high] = compass(passage);
    double const farthest = std::max(above(bottom, low), above(high, top));
    terms.beyond =
        of_beyond *
            mean_over(passage, [&](Pitch p) { return std::min(1.0, above(bottom, p) + above(p, top)); }) +
        of_farthest * farthest;
}

void put_settling(KeyPlan& key, Passage const& passage) {
    double long_time = 0;
    for (auto const& each : key.demand.each) {
        auto const& note = passage.notes[each.note];
        if (note.length < long_note || (each.zone != Zone::turning && each.zone != Zone::meeting)) continue;
        key.long_on_turn.push_back(each.note);
        long_time += in_seconds(note.length);
    }
    auto const phrases = static_cast<double>(phrases_of(passage).size());
    key.terms.settle = of_long_turns * long_time / std::max(1e-9, in_seconds(key.demand.load.voiced)) +
                       of_exposed_turn * static_cast<double>(key.demand.exposed) / phrases;
}

std::optional<int> signature_of(Passage const& passage) {
    if (passage.staff.measures.empty()) return std::nullopt;
    auto const& key = passage.staff.measures.front().key;
    return key ? key->fifths : 0;
}

KeyPlan key_of(PlanRequest request, int semitones, std::optional<PitchRange> const& dwelling,
               Means const& means) {
    auto const signature = signature_of(request.passage);
    request.passage = in_key(std::move(request.passage), semitones);
    auto const passage = request.passage;
    auto const range = request.singer.range;
    auto const technique = request.technique;
    KeyPlan key{.semitones = semitones,
                .demand = demand_of(std::move(request), means),
                .terms = {},
                .low = {},
                .high = {},
                .quartile1 = {},
                .quartile3 = {},
                .fifths = {},
                .long_on_turn = {}};
    if (signature) key.fifths = *signature + interval_for_key(semitones, *signature).fifths;
    auto const& d = key.demand;
    double const weight = std::max(1e-9, d.benefit) / of_plan;
    key.terms.vowels = (d.cost.text + d.cost.stability + d.cost.relation) / weight;
    key.terms.level = d.cost.ring / weight;
    key.terms.work = (d.cost.effort + d.cost.attention + d.cost.line) / weight;
    key.terms.words = of_high_words * d.time.high_text;
    put_settling(key, passage);
    if (dwelling) {
        put_tessitura(key.terms, passage, *dwelling, d.load);
        key.terms.low += of_carrying * carrying(passage, technique, passage.tuning.pitch(dwelling->high));
    }
    if (range) put_beyond(key.terms, passage, *range);
    auto const spelled = [&](Pitch pitch) {
        return std::find_if(passage.notes.begin(), passage.notes.end(),
                            [&](auto const& n) { return n.pitch == pitch; })
            ->spelled;
    };
    key.low = spelled(d.load.tessitura.low);
    key.high = spelled(d.load.tessitura.high);
    key.quartile1 = spelled(d.load.tessitura.quartile1);
    key.quartile3 = spelled(d.load.tessitura.quartile3);
    return key;
}

/// Semitones beyond the range, on both sides, of the line moved.
double excess(Passage const& passage, PitchRange const& range, int moved_by) {
    auto const [low, high] = compass(passage);
    auto const by = semitones(moved_by);
    return above(passage.tuning.pitch(range.low), low + by) +
           above(high + by, passage.tuning.pitch(range.high));
}

std::vector<int> keys_to_plan(Passage const& passage, std::optional<PitchRange> const& range,
                              std::optional<KeyRange> const& asked) {
    std::vector<int> all;
    if (asked) {
        for (int k = asked->lowest; k <= asked->highest; ++k) all.push_back(k);
        return all;
    }
    constexpr int usual = 6; // half an octave: beyond it the other octave is nearer
    for (int k = -2 * usual; k <= 2 * usual; ++k) all.push_back(k);
    auto const past = [&](int k) {
        return range ? excess(passage, *range, k) : std::abs(k) > usual ? 1.0 : 0.0;
    };
    std::stable_sort(all.begin(), all.end(), [&](int a, int b) {
        return past(a) != past(b) ? past(a) < past(b) : std::abs(a) < std::abs(b);
    });
    auto const within =
        std::find_if(all.begin(), all.end(), [&](int k) { return past(k) > 0.5; }) - all.begin();
    all.resize(static_cast<std::size_t>(std::max<std::ptrdiff_t>(within, fewest_keys)));
    if (std::find(all.begin(), all.end(), 0) == all.end()) all.push_back(0);
    std::sort(all.begin(), all.end());
    return all;
}

/// Beside each other, in the language that is told.
template <class Words> std::string listed(Words const& words) {
    std::string out;
    for (auto const& one : words) out += (out.empty() ? "" : ", ") + std::string(reworded(one));
    return out;
}

} // namespace

std::string words_of_key(int semitones) {
    switch (semitones) {
    case 0:
        return worded("as written");
    case 1:
        return worded("a semitone higher");
    case -1:
        return worded("a semitone lower");
    case 12:
        return worded("an octave higher");
    case -12:
        return worded("an octave lower");
    default:
        return semitones > 0 ? worded("{0} semitones higher", semitones)
                             : worded("{0} semitones lower", -semitones);
    }
}

std::string words_of_signature(int fifths) {
    if (fifths == 0) return worded("no signs");
    if (fifths == 1) return worded("1 sharp");
    if (fifths == -1) return worded("1 flat");
    return fifths > 0 ? worded("{0} sharps", fifths) : worded("{0} flats", -fifths);
}

Passage in_key(Passage passage, int by) {
    if (by == 0) return passage;
    auto const interval = interval_for_key(by, signature_of(passage).value_or(0));
    for (auto& note : passage.notes) {
        note.pitch = note.pitch + semitones(by);
        note.spelled = moved(note.spelled, interval);
    }
    passage.transposed += by;
    return passage;
}

std::vector<std::string_view> against(KeyPlan const& key, KeyPlan const& beside) {
    std::vector<KeyTermName> more;
    auto const excess = [&](KeyTermName const& t) { return key.terms.*t.value - beside.terms.*t.value; };
    for (auto const& term : key_term_names)
        if (excess(term) > same_key) more.push_back(term);
    std::stable_sort(more.begin(), more.end(),
                     [&](auto const& a, auto const& b) { return excess(a) > excess(b); });
    std::vector<std::string_view> out;
    for (auto const& term : more) out.push_back(term.words);
    return out;
}

std::string against_as_written(KeysPlan const& keys, std::size_t most) {
    auto const* written = keys.as_written();
    if (!written || written == &keys.recommended()) return {};
    auto why = against(*written, keys.recommended());
    if (why.size() > most) why.resize(most);
    return listed(why);
}

std::string as_good_words(KeysPlan const& keys) {
    std::vector<std::string> good;
    for (std::size_t i = 1; i < keys.as_good(); ++i)
        good.push_back(words_of_key(keys.keys[keys.best[i]].semitones));
    return listed(good);
}

std::optional<PitchRange> dwelling_of(Singer const& singer) {
    if (singer.average || !singer.range) return tessitura_of(singer.voice, singer.range);
    if (singer.range->high.key_number() - singer.range->low.key_number() < 12)
        return singer.range; // too small to take anything off
    return PitchRange{transposed(singer.range->low, 3), transposed(singer.range->high, -5)};
}

KeyPlan const* KeysPlan::as_written() const {
    auto const at = std::find_if(keys.begin(), keys.end(), [](KeyPlan const& k) { return k.semitones == 0; });
    return at == keys.end() ? nullptr : &*at;
}

std::size_t KeysPlan::as_good() const {
    double const least = recommended().terms.total();
    return static_cast<std::size_t>(std::count_if(
        keys.begin(), keys.end(), [&](KeyPlan const& k) { return k.terms.total() <= least + same_key; }));
}

KeyPlan plan_key(PlanRequest request, int semitones, Means const& means) {
    auto const dwelling = dwelling_of(request.singer);
    return key_of(std::move(request), semitones, dwelling, means);
}

KeysPlan plan_keys(PlanRequest request, std::optional<KeyRange> asked, Means const& means) {
    if (request.passage.notes.empty())
        throw InputError(worded("there is no note to move into another key"),
                         worded("give a score with a vocal line"));
    if (asked &&
        (asked->lowest > asked->highest || asked->lowest < -most_moved || asked->highest > most_moved))
        throw InputError(worded("keys from {0} to {1}", asked->lowest, asked->highest),
                         worded("give semitones from the lower to the higher, within two octaves: -6..6"));
    auto const semitones = keys_to_plan(request.passage, request.singer.range, asked);
    KeysPlan out{
        request.singer,         request.technique.name, request.passage, dwelling_of(request.singer), {}, {},
        request.passage.remarks};
    PlanCache own;
    Means const shared{means.executor, means.cache ? means.cache : &own};
    std::vector<std::optional<KeyPlan>> found(semitones.size());
    executor_of(means).run(found.size(), [&](std::size_t i) {
        found[i] = key_of(request, semitones[i], out.dwelling, {nullptr, shared.cache});
    });
    for (auto& key : found) out.keys.push_back(std::move(*key));
    out.best.resize(out.keys.size());
    std::iota(out.best.begin(), out.best.end(), std::size_t{0});
    std::stable_sort(out.best.begin(), out.best.end(), [&](std::size_t a, std::size_t b) {
        return out.keys[a].terms.total() < out.keys[b].terms.total();
    });
    if (!out.dwelling)
        out.remarks.push_back(
            {Remark::Kind::assumed,
             worded("no voice type and no range is known: where the line lies for this voice "
                    "is not counted")});
    return out;
}

std::optional<int> common_key(std::vector<KeysPlan> const& singers) {
    std::map<int, std::pair<std::size_t, double>> regrets; // how many singers have it, and the largest
    for (auto const& one : singers)
        for (auto const& key : one.keys) {
            auto& [count, worst] = regrets[key.semitones];
            ++count;
            worst = std::max(worst, key.terms.total() - one.recommended().terms.total());
        }
    std::optional<int> best;
    for (auto const& [key, regret] : regrets)
        if (regret.first == singers.size() && (!best || regret.second < regrets[*best].second)) best = key;
    return best;
}

} // namespace vowelway::plan
