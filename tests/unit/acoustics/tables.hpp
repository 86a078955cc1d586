// SPDX-License-Identifier: MIT
// Published tables the tests read from tests/data/acoustics (MANIFEST.md names their sources).
#pragma once

#include "support/source_dir.hpp"
#include "vowelway/acoustics/tract.hpp"

#include <fstream>
#include <map>
#include <sstream>
#include <stdexcept>
#include <string>
#include <vector>

namespace tables {

/// Rows of a comma-separated file without quotes, keyed by its header.
inline std::vector<std::map<std::string, std::string>> read(std::string const& name) {
    std::ifstream in(vowelway::test::source_dir() + "/tests/data/acoustics/" + name);
    if (!in) throw std::runtime_error("missing test data " + name);
    auto const split = [](std::string const& line) {
        std::vector<std::string> out(1);
        for (char c : line)
            if (c == ',')
                out.emplace_back();
            else if (c != '\r')
                out.back() += c;
        return out;
    };
    std::string line;
    std::getline(in, line);
    auto const names = split(line);
    std::vector<std::map<std::string, std::string>> rows;
    while (std::getline(in, line)) {
        auto const fields = split(line);
        auto& row = rows.emplace_back();
        for (std::size_t k = 0; k < names.size() && k < fields.size(); ++k) row[names[k]] = fields[k];
    }
    return rows;
}

/// Area functions by vowel.
inline std::map<std::string, vowelway::acoustics::AreaFunction> area_functions(std::string const& name) {
    std::map<std::string, vowelway::acoustics::AreaFunction> out;
    for (auto& row : read(name))
        out[row["vowel"]].push_back({vowelway::centimetres(std::stod(row["section_length_cm"])),
                                     vowelway::square_centimetres(std::stod(row["area_cm2"]))});
    return out;
}

/// An utterance of Hillenbrand et al. 1995 at its steadiest point, Hz; 0 where it could not be measured.
struct Utterance {
    std::string group, speaker, vowel;
    double fo, f1, f2, f3, f4;
};
inline std::vector<Utterance> utterances() {
    std::vector<Utterance> out;
    auto const number = [](std::string const& s) { return s.empty() ? 0.0 : std::stod(s); };
    for (auto& row : read("hillenbrand1995_steady.csv"))
        out.push_back({row["group"], row["speaker"], row["ipa"], number(row["f0"]), number(row["F1"]),
                       number(row["F2"]), number(row["F3"]), number(row["F4"])});
    return out;
}

} // namespace tables
