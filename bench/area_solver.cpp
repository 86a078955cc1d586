// SPDX-License-Identifier: MIT
// Area functions from the resonances of every utterance of a table with the columns group, speaker, ipa,
// F1..F4: share solved, worst residual, processor time each. area_solver [TABLE], by default Hillenbrand et
// al. 1995 in the tests' data, from the root of the sources.
#include "vowelway/acoustics/area_from_resonances.hpp"

#include <algorithm>
#include <cmath>
#include <ctime>
#include <fmt/format.h>
#include <fstream>
#include <map>
#include <sstream>
#include <string>
#include <vector>

using namespace vowelway;

namespace {

double processor_seconds() {
    timespec t;
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &t);
    return static_cast<double>(t.tv_sec) + 1e-9 * static_cast<double>(t.tv_nsec);
}

std::map<std::string, std::vector<VowelResonances>> speakers(char const* file) {
    std::ifstream in(file);
    std::string line, cell;
    std::getline(in, line);
    std::map<std::string, std::size_t> place;
    std::istringstream names(line);
    for (std::size_t k = 0; std::getline(names, cell, ','); ++k) place[cell] = k;
    std::map<std::string, std::vector<VowelResonances>> out;
    while (std::getline(in, line)) {
        std::vector<std::string> fields;
        std::istringstream cells(line);
        while (std::getline(cells, cell, ',')) fields.push_back(cell);
        auto const number = [&](char const* name) {
            auto const k = place.at(name);
            return k < fields.size() && !fields[k].empty() ? std::stod(fields[k]) : 0.0;
        };
        VowelResonances v;
        v.vowel = parse_ipa(fields[place.at("ipa")]);
        v.r1.centre = hertz(number("F1"));
        v.r2.centre = hertz(number("F2"));
        if (number("F3") > 0) v.r3.emplace().centre = hertz(number("F3"));
        if (number("F4") > 0) v.r4.emplace().centre = hertz(number("F4"));
        if (number("F1") > 0 && number("F2") > 0)
            out[fields[place.at("group")] + fields[place.at("speaker")]].push_back(v);
    }
    return out;
}

struct Tally {
    int all = 0, solved = 0, human = 0, speakers = 0;
    double worst = 0, seconds = 0, slowest = 0, length = 0, given_way = 0;
};

} // namespace

int main(int argc, char** argv) {
    auto const table = speakers(argc > 1 ? argv[1] : "tests/data/acoustics/hillenbrand1995_steady.csv");
    for (double give : {0.0, 0.05}) {
        fmt::print("length {}\n", give > 0 ? "may give way by about 5 %" : "as estimated");
        std::map<char, Tally> tallies;
        for (auto const& [name, vowels] : table) {
            auto& tally = tallies[name.front()];
            auto const length = acoustics::estimate_tract_length(vowels);
            tally.length += in_centimetres(length);
            ++tally.speakers;
            for (auto const& v : vowels) {
                if (!v.r3) continue;
                double const start = processor_seconds();
                auto const found =
                    acoustics::area_from_resonances({v.r1.centre, v.r2.centre, v.r3->centre}, length, give);
                double const took = processor_seconds() - start;
                ++tally.all;
                tally.solved += found.residual < 1e-3;
                tally.human += found.human();
                tally.worst = std::max(tally.worst, found.residual);
                tally.seconds += took;
                tally.slowest = std::max(tally.slowest, took);
                tally.given_way = std::max(tally.given_way, std::abs(std::log(found.length / length)));
            }
        }
        for (auto const& [group, t] : tallies)
            fmt::print("  {}: {} utterances, {:.2f} % solved to 0.1 %, worst residual {:.4f} %, {:.1f} % "
                       "human; {:.0f} us each, slowest "
                       "{:.0f}; mean length {:.1f} cm, changed at most {:.0f} %\n",
                       group, t.all, 100.0 * t.solved / t.all, 100 * t.worst, 100.0 * t.human / t.all,
                       1e6 * t.seconds / t.all, 1e6 * t.slowest, t.length / t.speakers, 100 * t.given_way);
    }
}
