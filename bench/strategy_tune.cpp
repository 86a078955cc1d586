// SPDX-License-Identifier: MIT
// Where weights of a technique come from: a random search for the weights with which published strategy
// emerges (docs/strategy.md). strategy_tune classical|belt TRIALS
#include "plan/strategy.hpp"
#include "vowelway/io/profile/built_in.hpp"
#include "vowelway/io/technique/read_technique.hpp"

#include <fmt/format.h>

#include <cmath>
#include <cstdlib>
#include <random>

using namespace vowelway;

namespace {

struct Line {
    std::string vowel;
    double home = 0;
    std::vector<double> fo, r1;
    std::vector<plan::Advice> advice;
};

Line scale(Singer const& singer, std::string const& vowel, Technique const& technique) {
    auto const* known = singer.find(parse_vowel(vowel));
    plan::Strategy strategy(singer, technique, {*known}, *singer.range);
    std::vector<plan::Task> tasks;
    for (double key = singer.range->low.key_number(); key <= singer.range->high.key_number(); ++key)
        tasks.push_back({0, singer.tuning.pitch(key), Decibels{0}, seconds(1), 0.5});
    auto const found = strategy.decide(tasks, 0);
    Line out{vowel, in_hertz(known->r1.centre), {}, {}, {}};
    for (std::size_t i = 0; i < tasks.size(); ++i) {
        out.fo.push_back(in_hertz(tasks[i].pitch.frequency()));
        out.r1.push_back(out.home * std::exp2(strategy.grid().d1(found.choices[i].shape) / 12.0));
        out.advice.push_back(found.choices[i].advice);
    }
    return out;
}

double st(double ratio) { return 12 * std::log2(ratio); }

// Mean departure of a scale, in semitones, by `departure(fo, fR1)` at each pitch; printed with the course if
// asked for.
template <class Departure>
double mean_departure(VoiceType voice, Line const& line, bool print, Departure departure) {
    double sum = 0;
    for (std::size_t i = 0; i < line.fo.size(); ++i) sum += departure(line.fo[i], line.r1[i]);
    double const mean = sum / static_cast<double>(line.fo.size());
    if (print) {
        fmt::print("{:9} {} {:5.2f} ", to_string(voice), line.vowel, mean);
        for (double r1 : line.r1) fmt::print("{:3.0f}", st(r1 / line.home));
        fmt::print("\n");
    }
    return mean;
}

// How far the scales are from what was measured of classical singers.
double classical_penalty(Technique const& t, bool print) {
    double total = 0;
    for (auto voice : {VoiceType::soprano, VoiceType::mezzo, VoiceType::tenor, VoiceType::baritone}) {
        auto const singer = io::built_in_voice(voice);
        bool const woman = voice == VoiceType::soprano || voice == VoiceType::mezzo;
        for (std::string const vowel : {"i", "ɛ", "a", "ɔ", "u"}) {
            auto const line = scale(singer, vowel, t);
            total += mean_departure(voice, line, print, [&](double fo, double r1) {
                if (st(fo / line.home) < -5) return std::abs(st(r1 / line.home)); // the low range stays
                if (st(fo / line.home) <= 0) return std::max(0.0, std::abs(st(r1 / line.home)) - 2);
                if (woman)
                    return fo < 1000 ? std::max(0.0, std::abs(st(r1 / fo) - 0.5) - 1) : 0.0; // fR1 follows fo
                return std::max(0.0, st(r1 / line.home) - st(fo / line.home) - 2); // no farther than fo
            });
        }
    }
    return total;
}

// And of belting women.
double belt_penalty(Technique const& t, bool print) {
    double total = 0;
    for (auto voice : {VoiceType::mezzo, VoiceType::soprano}) {
        auto const singer = io::built_in_voice(voice);
        for (std::string const vowel : {"ɛ", "ɔ", "a"}) {
            auto const line = scale(singer, vowel, t);
            total += mean_departure(voice, line, print, [&](double fo, double r1) {
                double const turn = st(2 * fo / line.home);
                if (fo > 530) return 0.0;
                if (turn < -4) return std::abs(st(r1 / line.home));
                if (turn < 1) return std::max(0.0, std::abs(st(r1 / line.home)) - 2);
                return std::max(0.0, std::abs(st(r1 / (2 * fo)) - 0.5) - 1);
            });
        }
    }
    return total;
}

} // namespace

int main(int argc, char** argv) {
    bool const belt = argc > 1 && std::string(argv[1]) == "belt";
    int const trials = argc > 2 ? std::atoi(argv[2]) : 0;
    auto best = io::find_technique(belt ? "belt" : "classical"); // the search goes on from what is shipped
    auto const penalty = belt ? belt_penalty : classical_penalty;
    double least = penalty(best, true);
    fmt::print("start {:.3f}\n", least);
    std::mt19937 random(1);
    std::normal_distribution<double> normal;
    for (int n = 0; n < trials; ++n) {
        auto t = best;
        auto const vary = [&](double& v, double size) {
            if (random() % 3 == 0) v *= std::exp(size * normal(random));
        };
        vary(t.text, 0.3);
        vary(t.ring, 0.3);
        vary(t.ring_tolerance.value, 0.3);
        vary(t.level_per_octave.value, 0.1);
        vary(t.upper_level_per_octave.value, 0.15);
        vary(t.stability, 0.3);
        vary(t.effort, 0.3);
        vary(t.attention, 0.3);
        vary(t.line, 0.3);
        for (auto& r : t.relations) vary(r.weight, 0.3);
        double const p = penalty(t, false);
        if (p < least) {
            least = p;
            best = t;
            fmt::print("{:4} {:.3f} text {:.3f} ring {:.3f} tolerance {:.2f} octave {:.1f} upper {:.1f} "
                       "stability {:.3f} effort {:.3f} attention {:.3f} line {:.3f}",
                       n, p, t.text, t.ring, t.ring_tolerance.value, t.level_per_octave.value,
                       t.upper_level_per_octave.value, t.stability, t.effort, t.attention, t.line);
            for (auto& r : t.relations) fmt::print(" relation {:.3f}", r.weight);
            fmt::print("\n");
            std::fflush(stdout);
        }
    }
    penalty(best, true);
}
