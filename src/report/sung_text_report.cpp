// SPDX-License-Identifier: MIT
#include "vowelway/report/sung_text_report.hpp"

#include "report/json_parts.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/report/table.hpp"
#include "vowelway/report/words_report.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace vowelway::report {

namespace {

constexpr std::size_t columns = 96;

/// A word over its sounds.
struct Cell {
    std::string above, below;
    std::size_t width() const { return std::max(display_width(above), display_width(below)); }
};

std::string filled_up(std::string text, std::size_t width) {
    text.append(width - display_width(text), ' ');
    return text;
}

void add_row(std::string& out, std::string above, std::string below) {
    above.erase(above.find_last_not_of(' ') + 1);
    below.erase(below.find_last_not_of(' ') + 1);
    out += above + "\n" + below + "\n";
}

Cell cell_of(TextWord const& word) {
    return {word.written, word.ipa + (word.guessed ? "?" : "") + (word.joined ? "‿" : "")};
}

void add_line(std::string& out, VerseLine const& line) {
    std::string above, below;
    std::size_t used = 0;
    auto cells = std::vector<Cell>();
    for (auto const& word : line.words) cells.push_back(cell_of(word));
    if (line.times > 1) cells.push_back({fmt::format("({}×)", line.times), ""});
    for (auto const& cell : cells) {
        if (used > 0 && used + cell.width() > columns) {
            add_row(out, above, below);
            above = below = "    ";
            used = 4;
        }
        above += filled_up(cell.above, cell.width() + 2);
        below += filled_up(cell.below, cell.width() + 2);
        used += cell.width() + 2;
    }
    add_row(out, above, below);
}

} // namespace

std::string sung_text_plain(SungText const& text) {
    std::string out;
    if (!text.title.empty())
        out += text.title + (text.composer.empty() ? "" : " · " + text.composer) + "\n\n";
    for (auto const& line : text.lines) {
        if (line.begins_stanza) out += "\n";
        add_line(out, line);
    }
    if (!text.key.empty()) {
        out += "\n";
        Table table({{worded("sign")}, {worded("stands for")}, {worded("as in")}});
        for (auto const& sign : text.key) table.row({sign.sign, sign.says, sign.example});
        out += table.str();
    }
    for (auto const& note : text.notes) out += "\n" + note;
    if (!text.notes.empty()) out += "\n";
    return out;
}

std::string sung_text_json(SungText const& text, std::vector<SungWord> const& words) {
    auto out = words_json(words, text.language);
    out.erase(out.rfind("]}"));
    auto const line_of = [](Json const& json) {
        return json.dump(-1, ' ', false, Json::error_handler_t::replace);
    };
    out += "],\n \"title\": " + line_of(text.title) + ", \"composer\": " + line_of(text.composer) +
           ", \"lines\": [";
    for (auto const& line : text.lines) {
        Json one{{"begins_stanza", line.begins_stanza}, {"times", line.times}, {"words", Json::array()}};
        for (auto const& word : line.words)
            one["words"].push_back({{"written", word.written},
                                    {"ipa", word.ipa},
                                    {"joined", word.joined},
                                    {"guessed", word.guessed}});
        out += (&line == &text.lines.front() ? "\n  " : ",\n  ") + line_of(one);
    }
    out += "\n], \"signs\": [";
    for (auto const& sign : text.key)
        out += (&sign == &text.key.front() ? "\n  " : ",\n  ") +
               line_of(Json{{"sign", sign.sign}, {"says", sign.says}, {"example", sign.example}});
    return out + "\n], \"notes\": " + line_of(Json(text.notes)) + "}\n";
}

std::string word_list_to_correct(SungText const& text) {
    std::set<std::string> known;
    std::string sure, guessed;
    for (auto const& line : text.lines)
        for (auto const& word : line.words) {
            if (word.name.empty() || word.listed.empty() || !known.insert(word.name).second) continue;
            (word.guessed ? guessed : sure) +=
                fmt::format("  {}: {}\n", Json(word.name).dump(), Json(word.listed).dump());
        }
    std::string out = "# " +
                      worded("Mend what is wrong, leave out what is right, and give the file with --words.") +
                      "\nvowelway: 1\nwords:\n";
    if (!guessed.empty())
        out += "  # " + worded("guessed") + "\n" + guessed + "  # " + worded("by rule") + "\n";
    return out + sure;
}

} // namespace vowelway::report
