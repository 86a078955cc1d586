// SPDX-License-Identifier: MIT
// The files of tests/data/measuring as values.
#pragma once

#include "support/source_dir.hpp"

#include <array>
#include <cstdint>
#include <cstring>
#include <fstream>
#include <iterator>
#include <sstream>
#include <stdexcept>
#include <string>
#include <vector>

namespace measuring_data {

inline std::string path(std::string const& name) {
    return vowelway::test::source_dir() + "/tests/data/measuring/" + name;
}

inline std::vector<std::vector<std::string>> rows(std::string const& name) {
    std::ifstream file(path(name));
    std::vector<std::vector<std::string>> all;
    std::string line, cell;
    std::getline(file, line);
    while (std::getline(file, line)) {
        std::istringstream cells(line);
        all.emplace_back();
        while (std::getline(cells, cell, ',')) all.back().push_back(cell);
    }
    if (all.empty()) throw std::runtime_error("no rows in " + name);
    return all;
}

struct Token {
    std::string group, ipa;
    std::array<double, 3> formants;
};
inline std::vector<Token> peterson_barney() {
    std::vector<Token> tokens;
    for (auto const& r : rows("pb1952_first_repetition.csv"))
        tokens.push_back({r.at(0), r.at(2), {std::stod(r.at(4)), std::stod(r.at(5)), std::stod(r.at(6))}});
    return tokens;
}

struct AreaFunction {
    std::string source, vowel;
    double section_cm;
    std::vector<double> areas;
};
inline std::vector<AreaFunction> area_functions() {
    std::vector<AreaFunction> all;
    for (auto const& r : rows("area_functions.csv")) {
        std::istringstream areas(r.at(3));
        all.push_back({r.at(0), r.at(1), std::stod(r.at(2)), {std::istream_iterator<double>(areas), {}}});
    }
    return all;
}

/// A mono 16-bit WAV file at 16 kHz.
inline std::vector<float> wav(std::string const& name) {
    std::ifstream file(path(name), std::ios::binary);
    std::string const bytes{std::istreambuf_iterator<char>(file), {}};
    auto const data = bytes.find("data");
    if (data == std::string::npos) throw std::runtime_error("no sound in " + name);
    std::vector<float> samples((bytes.size() - data - 8) / 2);
    for (std::size_t n = 0; n < samples.size(); ++n) {
        std::int16_t value = 0;
        std::memcpy(&value, bytes.data() + data + 8 + 2 * n, 2);
        samples[n] = static_cast<float>(value) / 32768.0F;
    }
    return samples;
}

} // namespace measuring_data
