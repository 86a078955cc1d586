// SPDX-License-Identifier: MIT
#include "vowelway/report/keys_report.hpp"

#include "report/csv.hpp"
#include "report/json_parts.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/report/table.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cmath>

namespace vowelway::report {

namespace {

std::string percent(double share) { return fmt::format("{:.0f} %", 100 * share); }

std::string minutes(Duration t) {
    auto const s = std::lround(in_seconds(t));
    return fmt::format("{}:{:02}", s / 60, s % 60);
}

/// The first of them, "lies high, vowels lost".
std::string listed(std::vector<std::string_view> const& words, std::size_t most) {
    std::string out;
    for (std::size_t i = 0; i < words.size() && i < most; ++i)
        out += (i > 0 ? ", " : "") + std::string(reworded(words[i]));
    return out;
}

bool is_best(plan::KeysPlan const& k, plan::KeyPlan const& key) { return &key == &k.recommended(); }

std::string short_signature(int fifths) {
    return fifths == 0 ? "-" : std::to_string(std::abs(fifths)) + (fifths > 0 ? "♯" : "♭");
}

std::string short_key(int semitones) { return semitones == 0 ? "0" : fmt::format("{:+}", semitones); }

std::string table_of(plan::KeysPlan const& k) {
    using A = Table::Align;
    Table table({{worded("key"), A::right},
                 {worded("signs")},
                 {worded("from")},
                 {worded("to")},
                 {worded("mostly")},
                 {worded("change"), A::right},
                 {worded("long"), A::right},
                 {worded("against"), A::right},
                 {worded("by what")}});
    for (auto key = k.keys.rbegin(); key != k.keys.rend(); ++key) {
        table.row({(is_best(k, *key) ? "* " : "") + short_key(key->semitones),
                   key->fifths ? short_signature(*key->fifths) : "", key->low.str(), key->high.str(),
                   key->quartile1.str() + ".." + key->quartile3.str(), percent(key->demand.time.modify),
                   fmt::format("{}", key->long_on_turn.size()), fmt::format("{:.2f}", key->terms.total()),
                   listed(plan::against(*key, k.recommended()), 2)});
    }
    return table.str();
}

std::string one_singer(plan::KeysPlan const& k) {
    auto const& load = k.recommended().demand.load;
    auto out = fmt::format("{}: {}\n\n{}\n", k.singer.name, key_sentence(k), table_of(k));
    out += worded("Sung {0} of {1}; in the key proposed the folds close {2} thousand times.",
                  minutes(load.voiced), minutes(load.whole), std::lround(load.cycles / 1000));
    if (k.dwelling) out += " " + worded("This voice may dwell on {0}.", k.dwelling->str());
    return out + "\n";
}

std::string shared(std::vector<plan::KeysPlan> const& singers) {
    if (singers.size() < 2) return "";
    auto const key = plan::common_key(singers);
    if (!key) return "\n" + worded("No key lies within what all of these singers can sing.") + "\n";
    return "\n" + worded("One key for all: {0}.", plan::words_of_key(*key)) + "\n";
}

Json terms_json(plan::KeyTerms const& terms) {
    Json out;
    for (auto const& term : plan::key_term_names)
        out[std::string(term.name)] = rounded(terms.*term.value, 0.001);
    out["total"] = rounded(terms.total(), 0.001);
    return out;
}

Json load_json(plan::Load const& load) {
    Json out{{"whole_s", rounded(in_seconds(load.whole), 0.001)},
             {"voiced_s", rounded(in_seconds(load.voiced), 0.001)},
             {"cycles", rounded(load.cycles, 1)},
             {"median_hz", hz(load.tessitura.median.frequency())}};
    if (load.reserve_below) {
        out["reserve_below_semitones"] = rounded(in_semitones(*load.reserve_below), 0.01);
        out["reserve_above_semitones"] = rounded(in_semitones(*load.reserve_above), 0.01);
        out["below_range_s"] = rounded(in_seconds(load.below), 0.001);
        out["above_range_s"] = rounded(in_seconds(load.above), 0.001);
    }
    return out;
}

Json key_json(plan::KeyPlan const& key) {
    auto const& d = key.demand;
    Json out{{"semitones", key.semitones},
             {"fifths", key.fifths ? Json(*key.fifths) : Json()},
             {"low", key.low.str()},
             {"high", key.high.str()},
             {"quartile1", key.quartile1.str()},
             {"quartile3", key.quartile3.str()},
             {"load", load_json(d.load)}};
    out["shares"] = {{"hold", rounded(d.time.hold, 0.001)},       {"migrate", rounded(d.time.migrate, 0.001)},
                     {"modify", rounded(d.time.modify, 0.001)},   {"turning", rounded(d.time.turning, 0.001)},
                     {"meeting", rounded(d.time.meeting, 0.001)}, {"turned", rounded(d.time.turned, 0.001)},
                     {"above", rounded(d.time.above, 0.001)}};
    out["turns"] = d.turns;
    out["turns_on_a_peak"] = d.exposed;
    out["long_on_turn"] = key.long_on_turn;
    out["against"] = terms_json(key.terms);
    return out;
}

Json singer_json(plan::KeysPlan const& k) {
    Json out{{"singer", k.singer.name},
             {"voice", to_string(k.singer.voice)},
             {"average", k.singer.average},
             {"dwelling", k.dwelling ? Json(k.dwelling->str()) : Json()},
             {"recommended", k.recommended().semitones},
             {"says", key_sentence(k)},
             {"best", Json::array()},
             {"keys", Json::array()}};
    for (auto const at : k.best) out["best"].push_back(k.keys[at].semitones);
    for (auto const& key : k.keys) out["keys"].push_back(key_json(key));
    out["warnings"] = warnings_json(k.remarks);
    return out;
}

} // namespace

std::string key_sentence(plan::KeysPlan const& k) {
    auto const& best = k.recommended();
    auto out =
        fmt::format("{} ({}..{}).", plan::words_of_key(best.semitones), best.low.str(), best.high.str());
    if (auto const why = plan::against_as_written(k, 3); !why.empty())
        out += " " + worded("Against the key as written: {0}.", why);
    if (auto const good = plan::as_good_words(k); !good.empty()) out += " " + worded("As good: {0}.", good);
    return out;
}

std::string keys_text(std::vector<plan::KeysPlan> const& singers) {
    auto const& passage = singers.front().passage;
    auto out = worded("{0}: which key, technique {1}", passage.title.empty() ? worded("Song") : passage.title,
                      singers.front().technique) +
               "\n";
    for (auto const& one : singers) out += "\n" + one_singer(one);
    out += shared(singers);
    return out + "\n" +
           worded("* the key proposed; key: semitones from where the song stands; mostly: half of the time "
                  "sung lies "
                  "there.") +
           "\n" +
           worded("change: time on notes that ask for another shape; long: notes of a second or more where "
                  "the vowel "
                  "turns over or fo meets fR1; against: all that speaks against a key (1: every vowel is "
                  "lost).") +
           "\n" + worded("A proposal, never an order: how the voice feels on the day decides.") + "\n";
}

std::string keys_csv(std::vector<plan::KeysPlan> const& singers) {
    std::string out;
    std::vector<std::string> heads{"singer",    "semitones", "fifths",  "low",    "high",         "quartile1",
                                   "quartile3", "hold",      "migrate", "modify", "long_on_turn", "rank"};
    for (auto const& term : plan::key_term_names) heads.emplace_back(term.name);
    heads.emplace_back("total");
    csv_line(out, heads);
    for (auto const& k : singers)
        for (std::size_t i = 0; i < k.keys.size(); ++i) {
            auto const& key = k.keys[i];
            auto const& time = key.demand.time;
            auto const rank = std::find(k.best.begin(), k.best.end(), i) - k.best.begin() + 1;
            std::vector<std::string> row{k.singer.name,
                                         std::to_string(key.semitones),
                                         key.fifths ? std::to_string(*key.fifths) : "",
                                         key.low.str(),
                                         key.high.str(),
                                         key.quartile1.str(),
                                         key.quartile3.str(),
                                         number(time.hold, 3),
                                         number(time.migrate, 3),
                                         number(time.modify, 3),
                                         std::to_string(key.long_on_turn.size()),
                                         std::to_string(rank)};
            for (auto const& term : plan::key_term_names) row.push_back(number(key.terms.*term.value, 3));
            row.push_back(number(key.terms.total(), 3));
            csv_line(out, row);
        }
    return out;
}

std::string keys_json(std::vector<plan::KeysPlan> const& singers) {
    auto const& first = singers.front();
    Json out{{"vowelway", 1}, {"title", first.passage.title}, {"technique", first.technique}};
    auto const common = singers.size() > 1 ? plan::common_key(singers) : std::nullopt;
    out["common_key"] = common ? Json(*common) : Json();
    out["singers"] = Json::array();
    for (auto const& one : singers) out["singers"].push_back(singer_json(one));
    return text_of(out);
}

} // namespace vowelway::report
