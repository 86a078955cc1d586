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

/// "The key proposed: 2 semitones lower (B♭3 to E5, 2 flats). Against the key as written: lies high."
std::string proposal(plan::KeysPlan const& keys) {
    auto const& best = keys.recommended();
    auto const key = plan::words_of_key(best.semitones);
    auto out = best.fifths
                   ? worded("The key proposed: {0} ({1} to {2}; {3}).", key, best.low.str(), best.high.str(),
                            plan::words_of_signature(*best.fifths))
                   : worded("The key proposed: {0} ({1} to {2}).", key, best.low.str(), best.high.str());
    if (auto const why = plan::against_as_written(keys, 3); !why.empty())
        out += " " + worded("Against the key as written: {0}.", why);
    if (auto const good = plan::as_good_words(keys); !good.empty())
        out += " " + worded("As good: {0}.", good);
    return out;
}

double draw_sheet(Canvas& canvas, plan::KeysPlan const& keys, Head const& head, double width) {
    double y = draw_title(canvas, head, width);
    y = paragraph(canvas, 0, y - 4, width, proposal(keys), plain(type::body), 12.5) + 12;
    auto const columns = key_columns(keys, width);
    y = draw_line(canvas, keys, columns, y);
    double most = 0;
    for (auto const& key : keys.keys) most = std::max(most, key.terms.total());
    for (auto key = keys.keys.rbegin(); key != keys.keys.rend(); ++key)
        y = draw_key(canvas, keys, *key, columns, most, y);
    y = draw_key_legend(canvas, keys, y + 6, width);
    return paragraph(canvas, 0, y, width,
                     worded("A proposal, never an order: how the voice feels on the day decides."),
                     plain(type::body), 12.5);
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
