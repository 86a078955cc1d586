// SPDX-License-Identifier: MIT
// Makes the profiles of the average voices from the published tables in data/. What is done, and why,
// is told in README.md beside this file; every constant here is named there.
//
//   derive_profiles DATA OUT            writes OUT/<voice>.yaml and OUT/sung/<voice>.yaml
//   derive_profiles DATA OUT --check    compares instead, and fails on the first byte that differs
//   derive_profiles DATA - --report     prints the figures that README.md quotes
#include "vowelway/core/singer.hpp"
#include "vowelway/core/vowel.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <exception>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <map>
#include <numbers>
#include <set>
#include <sstream>
#include <stdexcept>
#include <string>
#include <string_view>
#include <vector>

namespace {

using vowelway::VoiceType;

constexpr double men_length = 16.9, women_length = 14.1; // cm; Stevens (1998), Acoustic Phonetics
constexpr double most_speakers = 10;                     // no study weighs more than this many voices
constexpr double estimate_factor = std::numbers::sqrt2;  // our choice: wider where no one measured

struct Voice {
    VoiceType type;
    char const* group; // whose spread between speakers it takes: m, w, c
    double length;     // cm; 0: the length at which the scaling gives the children's resonances
    char const* range;
};
constexpr Voice voices[] = {
    {VoiceType::bass, "m", 18.0, "E2..E4"},    {VoiceType::baritone, "m", 17.2, "A2..A4"},
    {VoiceType::tenor, "m", 16.4, "C3..C5"},   {VoiceType::countertenor, "m", 16.4, "E3..E5"},
    {VoiceType::alto, "w", 14.9, "F3..F5"},    {VoiceType::mezzo, "w", 14.4, "A3..A5"},
    {VoiceType::soprano, "w", 13.9, "C4..C6"}, {VoiceType::treble, "c", 0, "C4..A5"},
};

// A vowel of the profiles: whose spread it takes among the American vowels, and, where no table has
// it, the vowels whose geometric mean stands for it.
struct Entry {
    char const* vowel;
    char const* spread_of;
    std::vector<std::string> made_of = {};
};
std::vector<Entry> const entries = {
    {"i", "i"},
    {"y", "i"},
    {"ɪ", "ɪ"},
    {"ʏ", "ɪ"},
    {"e", "e"},
    {"ø", "e"},
    {"ɛ", "ɛ"},
    {"œ", "ɛ"},
    {"æ", "æ"},
    {"a", "ɑ"},
    {"ɐ", "ʌ", {"ə", "a"}},
    {"ə", "ʌ"},
    {"ɜ", "ɝ"},
    {"ʌ", "ʌ"},
    {"ɑ", "ɑ"},
    {"ɒ", "ɔ"},
    {"ɔ", "ɔ"},
    {"o", "o"},
    {"ʊ", "ʊ"},
    {"u", "u"},
    {"ɛ̃", "ɛ", {"ɛ"}},
    {"œ̃", "ɛ", {"œ"}},
    {"ɑ̃", "ɑ", {"ɑ"}},
    {"ɔ̃", "ɔ", {"o", "ɔ"}},
};
// Vowels for which the American speakers are a study like the others; their /i e ɛ ɔ o u/ glide or
// have moved away from what is sung under the same sign.
std::set<std::string> const american_too = {"ɪ", "ʊ", "æ", "ʌ", "ɑ"};

constexpr std::size_t resonances = 3;

/// Weighted mean and spread of logarithms.
struct Moments {
    double weight = 0, weight2 = 0, sum = 0, sum2 = 0;
    int count = 0;
    void add(double hz, double w = 1) {
        double const x = std::log(hz);
        weight += w, weight2 += w * w, sum += w * x, sum2 += w * x * x, ++count;
    }
    double mean() const { return sum / weight; }
    double variance() const { // unbiased for weights that are counts of independent things
        double const v = sum2 / weight - mean() * mean();
        return count < 2 ? 0 : std::max(0.0, v) / (1 - weight2 / (weight * weight));
    }
    double variance_of_mean() const { return variance() * weight2 / (weight * weight); }
};
using Three = std::array<Moments, resonances>;

using Row = std::map<std::string, std::string>;
std::vector<Row> read_csv(std::filesystem::path const& path) {
    std::ifstream in(path);
    if (!in) throw std::runtime_error("cannot read " + path.string());
    auto const split = [](std::string const& line) {
        std::vector<std::string> out(1);
        for (char c : line) c == ',' ? out.emplace_back() : out.back() += std::string(1, c);
        return out;
    };
    std::string line;
    std::getline(in, line);
    auto const names = split(line);
    std::vector<Row> rows;
    while (std::getline(in, line)) {
        auto const cells = split(line);
        if (cells.size() != names.size())
            throw std::runtime_error(path.string() + ": a row of another width: " + line);
        Row row;
        for (std::size_t i = 0; i < names.size(); ++i) row[names[i]] = cells[i];
        rows.push_back(std::move(row));
    }
    return rows;
}

void add_row(Three& to, Row const& row, double weight) {
    for (std::size_t k = 0; k < resonances; ++k) {
        auto const& cell = row.at("F" + std::to_string(k + 1));
        if (!cell.empty()) to[k].add(std::stod(cell), weight);
    }
}

// How far fR2 and fR3 go from where a vowel is spoken toward where singing is synthesised: half of the way
// (our choice), for the origin of those values is not told; fR1 stays.
constexpr double sung_share = 0.5;
using Shifts = std::map<std::string, std::array<double, resonances>>; // of the logarithms, by vowel

struct Data {
    std::map<std::string, Three> men;                       // by vowel: one value a study
    std::map<std::string, std::map<std::string, int>> from; // by vowel: languages and their studies
    // By study, group and vowel: one value a speaker.
    std::map<std::string, std::map<std::string, std::map<std::string, Three>>> speakers;
    std::array<double, resonances> exponent{};
    double child_length = 0;
    Shifts sung;
};

Data gather(std::filesystem::path const& folder) {
    Data data;
    for (auto const& row : read_csv(folder / "men_by_language.csv")) {
        add_row(data.men[row.at("vowel")], row, std::min(most_speakers, std::stod(row.at("speakers"))));
        ++data.from[row.at("vowel")][row.at("language")];
    }
    for (auto const& row : read_csv(folder / "american_speakers.csv"))
        add_row(data.speakers[row.at("study")][row.at("group")][row.at("vowel")], row, 1);

    // Women against men, and children against men: the mean over vowels and studies of the logarithm.
    std::array<Moments, resonances> women, children;
    for (auto& [study, groups] : data.speakers)
        for (auto& [vowel, men] : groups["m"])
            for (std::size_t k = 0; k < resonances; ++k) {
                women[k].add(std::exp(groups["w"].at(vowel)[k].mean() - men[k].mean()));
                children[k].add(std::exp(groups["c"].at(vowel)[k].mean() - men[k].mean()));
            }
    double log_child_length = 0;
    for (std::size_t k = 0; k < resonances; ++k) {
        data.exponent[k] = women[k].mean() / std::log(men_length / women_length);
        log_child_length += (std::log(men_length) - children[k].mean() / data.exponent[k]) / resonances;
    }
    data.child_length = std::exp(log_child_length);

    for (auto const& vowel : american_too)
        for (auto& [study, groups] : data.speakers) {
            auto const& men = groups["m"].at(vowel);
            for (std::size_t k = 0; k < resonances; ++k)
                data.men[vowel][k].add(std::exp(men[k].mean()),
                                       std::min<double>(most_speakers, men[k].count));
            ++data.from[vowel]["eng"];
        }
    return data;
}

/// Variance of the logarithm between the speakers of one group, both studies together.
double speaker_variance(Data const& data, std::string const& group, std::string const& vowel, std::size_t k) {
    double sum = 0;
    int studies = 0;
    for (auto const& [study, groups] : data.speakers) {
        auto const found = groups.at(group).find(vowel);
        if (found == groups.at(group).end()) continue;
        sum += found->second[k].variance(), ++studies;
    }
    return sum / studies;
}

struct Value {
    double hz, sd;
};
Value spoken(Data const& data, Voice const& voice, double length, Entry const& entry, std::size_t k) {
    double log_hz = 0, variance = 0;
    auto const parts = entry.made_of.empty() ? std::vector<std::string>{entry.vowel} : entry.made_of;
    for (auto const& part : parts) {
        auto const& men = data.men.at(part)[k];
        log_hz += men.mean() / static_cast<double>(parts.size());
        variance += men.variance_of_mean() / static_cast<double>(parts.size());
    }
    variance += speaker_variance(data, voice.group, entry.spread_of, k);
    log_hz += data.exponent[k] * std::log(men_length / length);
    double const hz = std::exp(log_hz), widen = entry.made_of.empty() ? 1 : estimate_factor;
    return {hz, hz * std::sqrt(variance) * widen};
}

double length_of(Data const& data, Voice const& voice) {
    return voice.length > 0 ? voice.length : std::round(10 * data.child_length) / 10;
}

/// From spoken to synthesised as sung: for each of the five vowels the median over the voices.
Shifts gather_sung(Data const& data, std::filesystem::path const& folder) {
    std::map<std::string, std::array<std::vector<double>, resonances>> found;
    for (auto const& row : read_csv(folder / "sung_synthesis.csv"))
        for (std::size_t k = 1; k < resonances; ++k) {
            auto const voice =
                std::ranges::find(voices, *vowelway::parse_voice_type(row.at("voice")), &Voice::type);
            auto const entry = std::ranges::find(entries, row.at("vowel"), &Entry::vowel);
            found[row.at("vowel")][k].push_back(
                std::log(std::stod(row.at("F" + std::to_string(k + 1))) /
                         spoken(data, *voice, length_of(data, *voice), *entry, k).hz));
        }
    Shifts out;
    for (auto& [vowel, by_resonance] : found)
        for (std::size_t k = 1; k < resonances; ++k) {
            auto& ratios = by_resonance[k];
            auto const middle = ratios.begin() + static_cast<std::ptrdiff_t>(ratios.size() / 2);
            std::nth_element(ratios.begin(), middle, ratios.end());
            out[vowel][k] = sung_share * *middle;
        }
    return out;
}

/// Of a vowel between the five that are known, by their distance on the vowel chart.
double sung_shift(Shifts const& sung, std::string const& vowel, std::size_t k) {
    double sum = 0, weights = 0;
    for (auto const& [known, shift] : sung) {
        double const apart =
            vowelway::chart_distance(vowelway::parse_vowel(vowel), vowelway::parse_vowel(known));
        double const weight = 1 / (0.01 + apart * apart);
        sum += weight * shift[k], weights += weight;
    }
    return sum / weights;
}

Value derive(Data const& data, Voice const& voice, double length, Entry const& entry, std::size_t k,
             bool sung) {
    auto value = spoken(data, voice, length, entry, k);
    if (!sung) return value;
    double const shift = sung_shift(data.sung, entry.vowel, k);
    double const relative = std::hypot(value.sd / value.hz, shift);
    value.hz *= std::exp(shift);
    value.sd = value.hz * relative;
    return value;
}

std::string printed(Value v, double step) {
    std::ostringstream out;
    out << std::lround(v.hz / step) * std::lround(step) << " Hz ± "
        << std::lround(v.sd / step) * std::lround(step);
    return out.str();
}

std::string origin_of(Data const& data, Entry const& entry) {
    if (!entry.made_of.empty()) {
        bool const nasal = vowelway::parse_vowel(entry.vowel).nasal;
        std::string out = "no table has it: ";
        if (entry.made_of.size() == 1)
            out += "as /" + entry.made_of[0] + "/";
        else
            out += "between /" + entry.made_of[0] + "/ and /" + entry.made_of[1] + "/";
        return out + (nasal ? ", the nose left out" : "");
    }
    std::string out = "tables:";
    for (auto const& [language, studies] : data.from.at(entry.vowel))
        out += " " + language + " " + std::to_string(studies);
    return out;
}

std::string profile_of(Data const& data, Voice const& voice, bool sung) {
    double const length = length_of(data, voice);
    auto const name = std::string(vowelway::to_string(voice.type));
    std::ostringstream out;
    out << "# The average " << name << (sung ? " as sung" : "")
        << ": many speakers, no single singer. Made by profiles/derive.cpp;\n"
        << "# profiles/README.md tells from what and how. Do not edit: measure your own instead.\n"
        << "vowelway: 1\nsinger: Average " << name << (sung ? " as sung" : "") << "\nvoice: " << name
        << "\naverage: true\nrange: " << voice.range << "\ntract_length: ";
    char text[16];
    std::snprintf(text, sizeof text, "%.1f", length);
    out << text << " cm\n"
        << "source: {method: published, note: \"spoken vowels of published tables, scaled by tract length"
        << (sung ? "; fR2 and fR3 half way to values that singing is synthesised with" : "") << "\"}\n"
        << "vowels:\n";
    for (auto const& entry : entries) {
        out << "  " << entry.vowel << ": {";
        for (std::size_t k = 0; k < resonances; ++k)
            out << (k ? ", " : "") << "fR" << k + 1 << ": "
                << printed(derive(data, voice, length, entry, k, sung), k == 0 ? 5 : 10);
        if (entry.made_of.empty())
            out << "}  # " << origin_of(data, entry) << "\n";
        else
            out << ", estimated: \"" << origin_of(data, entry) << "\"}\n";
    }
    return out.str();
}

void report(Data const& data) {
    for (std::size_t k = 0; k < resonances; ++k)
        std::printf("fR%zu goes with tract length to the power -%.2f\n", k + 1, data.exponent[k]);
    for (auto const& [vowel, shift] : data.sung)
        std::printf("sung: fR2 and fR3 of /%s/ and its like by %.1f and %.1f semitones\n", vowel.c_str(),
                    12 * shift[1] / std::log(2.0), 12 * shift[2] / std::log(2.0));
    std::printf("children: %.2f cm\n\n| vowel | studies | fR1 | fR2 | fR3 | spread between studies (%%) | "
                "between men (%%) |\n|---|---|---|---|---|---|---|\n",
                data.child_length);
    for (auto const& entry : entries) {
        if (!entry.made_of.empty()) continue;
        auto const& men = data.men.at(entry.vowel);
        std::printf("| %s | %d | %.0f | %.0f | %.0f | %.0f, %.0f | %.0f, %.0f |\n", entry.vowel, men[0].count,
                    std::exp(men[0].mean()), std::exp(men[1].mean()), std::exp(men[2].mean()),
                    100 * std::sqrt(men[0].variance()), 100 * std::sqrt(men[1].variance()),
                    100 * std::sqrt(speaker_variance(data, "m", entry.spread_of, 0)),
                    100 * std::sqrt(speaker_variance(data, "m", entry.spread_of, 1)));
    }
}

bool same(std::filesystem::path const& path, std::string const& wanted) {
    std::ifstream in(path, std::ios::binary);
    std::stringstream found;
    found << in.rdbuf();
    if (in && found.str() == wanted) return true;
    std::cerr
        << path.string()
        << " is not what the tables give; run derive_profiles without --check and read the difference\n";
    return false;
}

} // namespace

int main(int argc, char** argv) try {
    std::string const option = argc == 4 ? argv[3] : "";
    if (argc < 3 || argc > 4 || (argc == 4 && option != "--check" && option != "--report")) {
        std::cerr << "derive_profiles DATA OUT [--check|--report]\n";
        return 2;
    }
    auto data = gather(argv[1]);
    data.sung = gather_sung(data, argv[1]);
    if (option == "--report") {
        report(data);
        return 0;
    }
    bool good = true;
    for (bool const sung : {false, true})
        for (auto const& voice : voices) {
            auto const path = std::filesystem::path(argv[2]) / (sung ? "sung" : "") /
                              (std::string(vowelway::to_string(voice.type)) + ".yaml");
            auto const text = profile_of(data, voice, sung);
            if (option == "--check")
                good = same(path, text) && good;
            else if (!(std::ofstream(path, std::ios::binary) << text << std::flush))
                throw std::runtime_error("cannot write " + path.string());
        }
    return good ? 0 : 1;
} catch (std::exception const& error) {
    std::cerr << "derive_profiles: " << error.what() << "\n";
    return 1;
}
