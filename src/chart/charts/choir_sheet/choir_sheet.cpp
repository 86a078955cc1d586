// SPDX-License-Identifier: MIT
// The choir sheet: for the director at rehearsal. What to rehearse first, in a few lines; then the systems in
// which it stands, with its number over the chord and, at whom to ask, the letter to aim at.
#include "chart/charts/choir_sheet/choir_sheet.hpp"

#include "chart/canvas/style.hpp"
#include "chart/charts/choir_sheet/aligned.hpp"
#include "chart/engraving/engrave.hpp"
#include "chart/page/marks.hpp"
#include "chart/page/over_staff.hpp"
#include "chart/page/text.hpp"
#include "chart/page/title.hpp"
#include "chart/page/words_under.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/plan/choir_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <map>

namespace vowelway::chart {
namespace {

constexpr std::size_t most_to_rehearse = 6; // more nobody takes to a rehearsal: our choice
constexpr double names_width = 50, between_staves = 7, between_scores = 18;

/// Which words have a number: those listed, and their chords that come again.
std::map<std::size_t, std::size_t> numbers_of(plan::Choir const& choir) {
    std::map<std::size_t, std::size_t> out;
    for (std::size_t i = 0; i < std::min(most_to_rehearse, choir.rehearse.size()); ++i) {
        out[choir.rehearse[i]] = i + 1;
        for (auto const again : choir.words[choir.rehearse[i]].also) out[again] = i + 1;
    }
    return out;
}

std::size_t sung_note(plan::Choir const& choir, plan::SungTogether const& section) {
    return choir.parts[section.part].plan.notes[section.note].note;
}

/// Where a sung note begins in a system.
double const* x_of_note(System const& system, std::size_t note) {
    for (auto const& a : system.atoms)
        if (a.begins_note && a.note == note) return &a.x;
    return nullptr;
}

/// One system of all parts, drawn; its first staff's top line is at 0.
struct ChoirBlock {
    Drawing drawing;
    double top = 0, bottom = 0;
    bool marked = false; ///< something with a number stands in it
};

class Score {
  public:
    Score(plan::Choir const& choir, double width, TextMeasurer const& measurer)
        : choir_(choir), measurer_(measurer), numbers_(numbers_of(choir)),
          score_(aligned(choir, width - names_width, measurer)) {
        for (auto const& staff : score_.staves) {
            engravers_.emplace_back(staff);
            words_.emplace_back(Under::words);
        }
    }

    std::vector<ChoirBlock> blocks() {
        std::vector<ChoirBlock> out;
        for (auto const& system : score_.systems) out.push_back(block(system));
        return out;
    }

  private:
    Drawing staff(ChoirSystem const& system, std::size_t part) {
        Drawing out(measurer_);
        engravers_[part].draw(system.parts[part], out);
        auto const style = bold(type::heading);
        for (auto const& [word, number] : numbers_)
            for (auto const& section : choir_.words[word].sections) {
                if (section.part != part || section.ask.empty()) continue;
                if (auto const* x = x_of_note(system.parts[part], sung_note(choir_, section)))
                    out.write({*x, std::min(out.top(*x - 8, *x + 8, 0), 0.0) - 4}, section.shade.ipa(), style,
                              Align::centre);
            }
        words_[part].draw(system.parts[part], out);
        if (part == 0) draw_over_staff(system.parts[part], score_.staves[part], {}, out);
        return out;
    }

    /// The numbers over the uppermost staff.
    void draw_numbers(ChoirSystem const& system, ChoirBlock& block) {
        std::map<double, std::size_t> at;
        for (auto const& [word, number] : numbers_)
            for (auto const& section : choir_.words[word].sections)
                if (auto const* x = x_of_note(system.parts[section.part], sung_note(choir_, section)))
                    at[*x] = number;
        for (auto const& [x, number] : at) {
            double const over = names_width + x;
            double const y = std::min(block.drawing.top(over - 9, over + 9, 0), 0.0) - 5;
            block.drawing.write({over, y}, fmt::format("{}", number), bold(type::title * 0.7, ink::modify),
                                Align::centre);
            block.marked = true;
        }
    }

    ChoirBlock block(ChoirSystem const& system) {
        ChoirBlock out{Drawing(measurer_)};
        double y = 0, lowest = 0;
        for (std::size_t part = 0; part < choir_.parts.size(); ++part) {
            auto const one = staff(system, part);
            if (part > 0) y += between_staves - std::min(one.top(-1e6, 1e6, 0), 0.0);
            one.replay(out.drawing, {names_width, y});
            auto const name = fitted(measurer_, choir_.parts[part].name, plain(type::label), names_width - 6);
            out.drawing.write({names_width - 6, y + 2.6 * space}, name, plain(type::label), Align::right);
            lowest = y + 4 * space;
            y += std::max(one.bottom(-1e6, 1e6, 4 * space), 4 * space);
        }
        out.drawing.line({names_width, 0}, {names_width, lowest}, {.width = 0.8});
        draw_numbers(system, out);
        out.top = out.drawing.top(-1e6, 1e6, 0);
        out.bottom = out.drawing.bottom(-1e6, 1e6, lowest);
        return out;
    }

    plan::Choir const& choir_;
    TextMeasurer const& measurer_;
    std::map<std::size_t, std::size_t> numbers_;
    AlignedScore score_;
    std::vector<Engraver> engravers_;
    std::vector<WordsUnder> words_;
};

/// Why the vowels part, and what the chord's partials tell.
std::string reasons_of(plan::Choir const& choir, plan::SharedWord const& word) {
    auto const said = plan::chord_words_of(choir, word).str();
    return word.why + "." + (said.empty() ? "" : " " + said);
}

/// One after another down the pages.
class Flow {
  public:
    Flow(Size paper, TextMeasurer const& measurer)
        : measurer_(measurer), bottom_(paper.height - margin_bottom), pages_(1, Drawing(measurer)) {}

    /// From `top` down to `height` of the drawing; on a new page where it has no room on this one, smaller
    /// where it is higher than a page.
    void place(Drawing const& drawing, double top, double height, double gap) {
        if (y_ + gap + height > bottom_ && y_ > first_y) {
            pages_.emplace_back(measurer_);
            y_ = first_y;
        }
        double const scale = std::min(1.0, (bottom_ - y_ - gap) / height);
        y_ += gap;
        drawing.replay(pages_.back(), {margin_side, y_ - top * scale}, scale);
        y_ += height * scale;
    }
    std::vector<Drawing> const& pages() const { return pages_; }

  private:
    static constexpr double first_y = margin_top + 14;
    TextMeasurer const& measurer_;
    double bottom_, y_ = margin_top;
    std::vector<Drawing> pages_;
};

/// A word to rehearse, from y on; where it ends.
double draw_word(Canvas& canvas, plan::Choir const& choir, std::size_t number, double y, double width) {
    constexpr double words_x = 20;
    auto const& word = choir.words[choir.rehearse[number]];
    y += 14;
    canvas.write({0, y}, fmt::format("{}", number + 1), bold(type::heading, ink::modify));
    auto const at = canvas.write({words_x, y}, fmt::format("{} {}", word.syllable, slashed(word.vowel)),
                                 bold(type::body));
    canvas.write({at.right() + 8, y}, plan::named_bars_of(choir, word), plain(type::body));
    if (!word.homophonic)
        canvas.write({width, y}, worded("some of the parts"), plain(type::label, ink::soft), Align::right);
    y = paragraph(canvas, words_x, y, width - words_x, plan::ask_of(choir, word), plain(type::body));
    return 2 + paragraph(canvas, words_x, y, width - words_x, reasons_of(choir, word),
                         plain(type::label, ink::soft), 11);
}

double draw_legend(Canvas& canvas, double width) {
    return paragraph(
        canvas, 0, 4, width,
        worded("In the music: the number over the chord; a letter over a note: the vowel that "
               "section aims at. Easily tipped: a small change turns the vowel over; settle it before "
               "tuning. Systems with nothing to rehearse are left out."),
        plain(type::label, ink::soft));
}

/// The title, what to rehearse, and what the numbers in the music mean.
void place_front(Flow& flow, plan::Choir const& choir, Head const& head, double width,
                 TextMeasurer const& measurer) {
    auto const count = std::min(most_to_rehearse, choir.rehearse.size());
    Drawing title(measurer);
    double y = draw_title(title, head, width) - 4;
    if (count > 0) {
        y = draw_heading(title, 0, y, width, worded("To rehearse first"));
        y = draw_word(title, choir, 0, y, width); // a heading stands over something
    }
    flow.place(title, 0, y, 0);
    for (std::size_t i = 1; i < count; ++i) {
        Drawing word(measurer);
        double const height = draw_word(word, choir, i, 0, width);
        flow.place(word, 0, height, 0);
    }
    if (count == 0) return;
    Drawing legend(measurer);
    double const height = draw_legend(legend, width);
    flow.place(legend, 0, height + 8, 0);
}

Head head_of_choir(plan::Choir const& choir) {
    auto head = head_of(choir.parts.front().plan, plan::summary_of(choir));
    head.who.clear();
    for (auto const& part : choir.parts) head.who += (head.who.empty() ? "" : ", ") + part.name;
    return head;
}

} // namespace

std::vector<Page> choir_sheet(plan::Choir const& choir, Size paper, TextMeasurer const& measurer) {
    auto const head = head_of_choir(choir);
    double const width = paper.width - 2 * margin_side;
    auto blocks = Score(choir, width, measurer).blocks();
    blocks.erase(std::remove_if(blocks.begin(), blocks.end(), [](ChoirBlock const& b) { return !b.marked; }),
                 blocks.end());
    Flow flow(paper, measurer);
    place_front(flow, choir, head, width, measurer);
    for (auto const& block : blocks)
        flow.place(block.drawing, block.top, block.bottom - block.top, between_scores);
    auto const& pages = flow.pages();
    std::vector<Page> out;
    for (std::size_t p = 0; p < pages.size(); ++p) {
        Page page{paper, Drawing(measurer)};
        draw_margins(page.drawing, head, worded("choir sheet"), paper, p + 1, pages.size());
        pages[p].replay(page.drawing);
        out.push_back(std::move(page));
    }
    return out;
}

} // namespace vowelway::chart
