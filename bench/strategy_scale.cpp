// SPDX-License-Identifier: MIT
// What the optimiser does on a slow rising scale: strategy_scale VOICE VOWEL [TECHNIQUE.yaml]
// prints, a semitone a line, the shape chosen and the terms that decided.
#include "plan/strategy.hpp"
#include "vowelway/io/profile/built_in.hpp"

#include <fmt/format.h>

#include <cmath>

using namespace vowelway;

int main(int argc, char** argv) {
    if (argc < 3) return fmt::print(stderr, "usage: strategy_scale VOICE VOWEL\n"), 2;
    Remarks remarks;
    auto const singer = io::find_singer(argv[1], remarks);
    auto const vowel = parse_vowel(argv[2]);
    auto const* known = singer.find(vowel);
    if (!known) return fmt::print(stderr, "no such vowel\n"), 2;
    Technique technique;
    if (argc > 3 && std::string(argv[3]) == "belt") {
        technique.source_slope = technique.upper_slope = Decibels{-9};
        technique.relations.push_back({{2},
                                       WantedRelation::Side::below,
                                       {1},
                                       false,
                                       0.08,
                                       std::nullopt,
                                       singer.tuning.pitch(parse_spelled_pitch("C5")),
                                       std::nullopt});
        technique.text = 0.3;
    }
    plan::Strategy strategy(singer, technique, {*known}, *singer.range);
    std::vector<plan::Task> tasks;
    for (double key = singer.range->low.key_number(); key <= singer.range->high.key_number(); ++key)
        tasks.push_back({0, singer.tuning.pitch(key), Decibels{0}, seconds(1), 0.5});
    auto const choices = strategy.decide(tasks, 50);
    auto const& home = strategy.models()[0].home;
    fmt::print("{} /{}/ fR1 {:.0f} fR2 {:.0f} at ease {:.1f} dB(A)\n", singer.name, vowel.ipa(),
               in_hertz(home.r1), in_hertz(home.r2), home.at_ease.value);
    fmt::print("{:5} {:>6} {:>4} {:>4} {:>6} {:>6} {:8} {:>5} {:4} {:4} {:>6} | home: text ring stab rel | "
               "best: text ring stab rel effort\n",
               "pitch", "fo", "d1", "d2", "fR1/fo", "fR2/fo", "advice", "cert", "kept", "new", "gain");
    for (std::size_t i = 0; i < tasks.size(); ++i) {
        auto const& c = choices.choices[i];
        auto const& g = strategy.grid();
        auto const& land = strategy.landscape(tasks[i].pitch, tasks[i].loudness);
        double const r1 = in_hertz(home.r1) * std::exp2(g.d1(c.shape) / 12.0),
                     r2 = in_hertz(home.r2) * std::exp2(g.d2(c.shape) / 12.0);
        double const fo = in_hertz(tasks[i].pitch.frequency());
        auto const kept = plan::heard_cost(g, g.home(), land, home, strategy.aim()),
                   best = plan::heard_cost(g, c.shape, land, home, strategy.aim());
        fmt::print("{:5} {:6.0f} {:4} {:4} {:6.2f} {:6.2f} {:8} {:5.2f} {:4} {:4} {:6.1f} | {:.2f} {:.2f} "
                   "{:.2f} {:.2f} | {:.2f} {:.2f} {:.2f} {:.2f} {:.2f}\n",
                   singer.tuning.name(tasks[i].pitch).str(), fo, g.d1(c.shape), g.d2(c.shape), r1 / fo,
                   r2 / fo, to_string(c.advice), c.certainty,
                   strategy.space().hear(c.heard_kept, 0).vowel.ipa(),
                   strategy.space().hear(c.heard, 0).vowel.ipa(), c.gain.value, kept.text, kept.ring,
                   kept.stability, kept.relation, best.text, best.ring, best.stability, best.relation,
                   double{strategy.models()[0].efforts[c.shape]});
    }
}
