// SPDX-License-Identifier: MIT
#include "cli/help/help_text.hpp"

#include "cli/help/wrap.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <numeric>

namespace vowelway::cli {

namespace {

constexpr std::size_t column = 27; // where the second column begins

void entry(std::string& out, std::string const& left, std::string const& says, std::size_t width) {
    std::string line = "  " + left;
    auto const lines = wrapped(says, width - column - 2);
    std::size_t first = 0;
    if (line.size() < column) {
        line.resize(column, ' ');
        line += lines[first++];
    }
    out += line + "\n";
    for (; first < lines.size(); ++first) out += std::string(column, ' ') + lines[first] + "\n";
}

std::string left_of(OptionWords const& option) {
    std::string out;
    for (auto const& name : option.names) out += (out.empty() ? "" : ", ") + name;
    return option.value.empty() || option.positional ? out : out + " " + option.value;
}

void paragraph(std::string& out, std::string const& text, std::size_t width) {
    for (auto const& line : wrapped(text, width)) out += line + "\n";
}

// Slips of the hand between two words: one for each letter left out, put in, changed or swapped with its
// neighbour.
std::size_t slips(std::string const& a, std::string const& b) {
    std::vector<std::vector<std::size_t>> d(a.size() + 1, std::vector<std::size_t>(b.size() + 1));
    for (std::size_t i = 0; i <= a.size(); ++i) d[i][0] = i;
    std::iota(d[0].begin(), d[0].end(), std::size_t{0});
    for (std::size_t i = 1; i <= a.size(); ++i)
        for (std::size_t j = 1; j <= b.size(); ++j) {
            d[i][j] = std::min({d[i - 1][j] + 1, d[i][j - 1] + 1, d[i - 1][j - 1] + (a[i - 1] != b[j - 1])});
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                d[i][j] = std::min(d[i][j], d[i - 2][j - 2] + 1);
        }
    return d[a.size()][b.size()];
}

} // namespace

std::string help_text(CommandWords const& command, std::string const& full_name, std::size_t width) {
    std::string out;
    paragraph(out, command.says, width);
    out += "\n" + worded("usage: {0}", full_name);
    if (!command.commands.empty()) out += " " + worded("COMMAND");
    for (auto const& o : command.options)
        if (o.positional) out += o.required ? " " + o.names.front() : " [" + o.names.front() + "]";
    out += " [" + worded("options") + "]\n\n";
    for (auto const& one : command.commands) entry(out, one.name, one.says, width);
    if (!command.commands.empty()) out += "\n";
    for (auto const& o : command.options)
        entry(out, left_of(o), o.says + (o.required && !o.positional ? " (" + worded("required") + ")" : ""),
              width);
    if (!command.footer.empty()) {
        out += "\n";
        paragraph(out, command.footer, width);
    }
    return out;
}

std::string no_such_command(CommandWords const& program, std::string const& word) {
    std::string names, nearest;
    std::size_t fewest = std::max<std::size_t>(1, word.size() / 3) + 1;
    for (auto const& command : program.commands) {
        names += (names.empty() ? "" : ", ") + command.name;
        if (auto const n = slips(word, command.name); n < fewest) {
            fewest = n;
            nearest = command.name;
        }
    }
    return worded("there is no command \"{0}\"", word) +
           (nearest.empty() ? "" : "; " + worded("did you mean {0}?", nearest)) + "\n  " +
           worded("the commands are {0}", names) + "\n  " + worded("vowelway --help tells what they do") +
           "\n";
}

} // namespace vowelway::cli
