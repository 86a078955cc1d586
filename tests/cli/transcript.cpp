// SPDX-License-Identifier: MIT
#include "transcript.hpp"

#include <sstream>
#include <stdexcept>

namespace vowelway::test {

std::vector<std::string> split_lines(std::string const& text) {
    std::vector<std::string> lines;
    std::istringstream stream(text);
    for (std::string line; std::getline(stream, line);) lines.push_back(line);
    return lines;
}

std::vector<Step> parse_transcript(std::string const& text) {
    std::vector<Step> steps;
    int number = 0;
    for (auto line : split_lines(text)) {
        ++number;
        if (line.starts_with("# ") || line == "#") continue;
        if (line.starts_with("$ ")) {
            steps.push_back({number, line.substr(2), {}, {}, 0});
            continue;
        }
        if (steps.empty()) {
            if (line.empty()) continue;
            throw std::runtime_error("line " + std::to_string(number) + ": output before the first command");
        }
        auto& step = steps.back();
        if (line.starts_with("-> "))
            step.exit_code = std::stoi(line.substr(3));
        else if (line.starts_with("! "))
            step.errors.push_back(line.substr(2));
        else if (line == "!")
            step.errors.emplace_back();
        else
            step.output.push_back(line.starts_with("\\") ? line.substr(1) : line);
    }
    if (steps.empty()) throw std::runtime_error("a transcript without a command tests nothing");
    for (auto& step : steps) // blank lines between steps are for the reader
        while (!step.output.empty() && step.output.back().empty()) step.output.pop_back();
    return steps;
}

namespace {
bool match_from(std::vector<std::string> const& expected, std::size_t e, std::vector<std::string> const& got,
                std::size_t g) {
    for (; e < expected.size(); ++e, ++g) {
        if (expected[e] == "...") {
            for (auto skip = g; skip <= got.size(); ++skip)
                if (match_from(expected, e + 1, got, skip)) return true;
            return false;
        }
        if (g >= got.size() || expected[e] != got[g]) return false;
    }
    return g == got.size();
}
} // namespace

bool lines_match(std::vector<std::string> const& expected, std::vector<std::string> const& got) {
    auto trimmed = got;
    while (!trimmed.empty() && trimmed.back().empty()) trimmed.pop_back();
    return match_from(expected, 0, trimmed, 0);
}

} // namespace vowelway::test
