// SPDX-License-Identifier: MIT
// The keys of a song for one singer: one page.
#include "chart/canvas/style.hpp"
#include "chart/charts/charts.hpp"
#include "chart/charts/keys_compared/rows.hpp"
#include "chart/page/marks.hpp"
#include "chart/page/one_page.hpp"
#include "chart/page/text.hpp"
#include "chart/page/title.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>

namespace vowelway::chart {
namespace {

double paragraph(Canvas& canvas, double y, double width, std::string_view text) {
    for (auto const& line : wrapped(canvas.measurer(), text, plain(type::body), width))
        canvas.write({0, y += 12.5}, line, plain(type::body));
    return y;
}

/// The first three, reworded, beside each other.
template <class Words> std::string listed(Words const& words) {
    std::string all;
    for (std::size_t i = 0; i < words.size() && i < 3; ++i)
        all += (i > 0 ? ", " : "") + std::string(reworded(words[i]));
    return all;
}

/// "The key proposed: 2 semitones lower (B♭3 to E5, 2 flats). Against it as written: lies high."
std::string proposal(plan::KeysPlan const& keys) {
    auto const& best = keys.recommended();
    auto const key = plan::words_of_key(best.semitones);
    auto out = best.fifths
                   ? worded("The key proposed: {0} ({1} to {2}; {3}).", key, best.low.str(), best.high.str(),
                            plan::words_of_signature(*best.fifths))
                   : worded("The key proposed: {0} ({1} to {2}).", key, best.low.str(), best.high.str());
    if (auto const* written = keys.as_written(); written && written != &best)
        if (auto const why = plan::against(*written, best); !why.empty())
            out += " " + worded("Against it as written: {0}.", listed(why));
    std::vector<std::string> good;
    for (std::size_t i = 1; i < keys.as_good(); ++i)
        good.push_back(plan::words_of_key(keys.keys[keys.best[i]].semitones));
    if (!good.empty()) out += " " + worded("As good: {0}.", listed(good));
    return out;
}

double draw_sheet(Canvas& canvas, plan::KeysPlan const& keys, Head const& head, double width) {
    double y = draw_title(canvas, head, width);
    y = paragraph(canvas, y - 4, width, proposal(keys)) + 12;
    auto const columns = key_columns(keys, width);
    y = draw_line(canvas, keys, columns, y);
    double most = 0;
    for (auto const& key : keys.keys) most = std::max(most, key.terms.total());
    for (auto key = keys.keys.rbegin(); key != keys.keys.rend(); ++key)
        y = draw_key(canvas, keys, *key, columns, most, y);
    y = draw_key_legend(canvas, keys, y + 6, width);
    return paragraph(canvas, y, width,
                     worded("A proposal, never an order: how the voice feels on the day decides."));
}

} // namespace

std::vector<Page> keys_compared(std::vector<plan::KeysPlan> const& singers, Size paper,
                                TextMeasurer const& measurer) {
    std::vector<Page> pages;
    for (auto const& keys : singers) {
        auto head = head_of(keys.singer, keys.technique);
        head.title = keys.passage.title.empty() ? worded("Song") : keys.passage.title;
        head.aside = keys.passage.composer;
        head.sentence =
            worded("Which key: in every row the song in another key, and what each note asks for there.");
        pages.push_back(on_one_page(head, worded("keys"), paper, measurer, [&](Canvas& canvas, double width) {
            return draw_sheet(canvas, keys, head, width);
        }));
    }
    return pages;
}

} // namespace vowelway::chart
