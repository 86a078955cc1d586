// SPDX-License-Identifier: MIT
#include "io/score/as_sung.hpp"

#include "io/score/lyric_lines.hpp"
#include "io/score/repeats.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>

namespace vowelway::io {

namespace {

/// Which lines of words a part has, and on which of them it has words in each bar.
struct VersesOfPart {
    std::vector<std::string> lines;
    std::vector<std::vector<int>> words; ///< by line, by bar

    VersesOfPart(Part const& part, std::vector<std::string> texts) : lines(std::move(texts)) {
        for (auto const& line : lines) {
            auto& count = words.emplace_back();
            for (auto const& bar : part.measures)
                count.push_back(static_cast<int>(
                    std::count_if(bar.events.begin(), bar.events.end(),
                                  [&](PartEvent const& e) { return lyric_on(e, line).has_value(); })));
        }
    }
    bool has(std::size_t line, std::size_t bar) const {
        return line < words.size() && bar < words[line].size() && words[line][bar] > 0;
    }
    int all(std::size_t line) const {
        int sum = 0;
        for (int n : words[line]) sum += n;
        return sum;
    }
    /// Verses for the whole piece; a line with less than half the words of the first is a variant.
    int whole() const {
        int count = 0;
        for (std::size_t k = 0; k < lines.size(); ++k)
            if (2 * all(k) >= all(0)) count = static_cast<int>(k) + 1;
        return count;
    }
    std::vector<int> in_bars(std::size_t bars) const {
        std::vector<int> out(bars, 0);
        for (std::size_t i = 0; i < bars; ++i)
            for (std::size_t k = 0; k < lines.size(); ++k)
                if (has(k, i)) out[i] = static_cast<int>(k) + 1;
        return out;
    }
};

/// The most verses that any part has in a bar, and for the whole piece.
void of_all_parts(std::vector<Part> const& parts, std::vector<int>& turns, int& whole) {
    for (auto const& part : parts) {
        VersesOfPart const verses(part, lyric_lines(part).text);
        if (verses.lines.empty()) continue;
        auto const own = verses.in_bars(turns.size());
        for (std::size_t i = 0; i < turns.size(); ++i) turns[i] = std::max(turns[i], own[i]);
        whole = std::max(whole, verses.whole());
    }
}

/// Each pass through a stretch of bars takes the line of words of that number, if it has words there.
void give_verses(Part& part, std::vector<SungBar> const& order, VersesOfPart const& verses) {
    for (std::size_t i = 0; i < order.size();) {
        auto end = i + 1;
        while (end < order.size() && order[end].section == order[i].section &&
               order[end].printed == order[end - 1].printed + 1)
            ++end;
        auto const line = static_cast<std::size_t>(order[i].section - 1);
        bool words = false;
        for (auto k = i; k < end; ++k) words |= verses.has(line, order[k].printed);
        for (auto k = i; k < end && !verses.lines.empty(); ++k)
            part.measures[k].verse = verses.lines[words ? line : 0];
        i = end;
    }
}

} // namespace

void follow_as_sung(XmlSource const& source, std::vector<Part>& parts, std::size_t own,
                    ScoreOptions const& options, Remarks& remarks) {
    try {
        auto const signs = signs_of(parts);
        VersesOfPart const verses(parts[own], lyric_lines(parts[own]).text);
        auto turns = verses.in_bars(signs.size());
        int whole = verses.whole();
        if (options.together) of_all_parts(parts, turns, whole);
        auto const order = order_of(signs, turns, whole);
        bool straight = order.size() == signs.size();
        for (std::size_t i = 0; straight && i < order.size(); ++i) straight = order[i].printed == i;
        if (straight) return;
        if (options.verse != every_verse) {
            remarks.push_back(
                {Remark::Kind::assumed,
                 worded(
                     "with its repeats and verses the music has {0} bars, of {1} printed; each is read once "
                     "(--verse all follows them)",
                     order.size(), signs.size())});
            return;
        }
        remarks.push_back(
            {Remark::Kind::assumed,
             worded("repeats, jumps and verses are followed as they are sung: {0} bars, of {1} printed",
                    order.size(), signs.size())});
        for (auto& part : parts) unfold(part, order);
        give_verses(parts[own], order, verses);
    } catch (InputError& error) {
        throw error.at({source.file(), 0, 0, {}});
    }
}

} // namespace vowelway::io
