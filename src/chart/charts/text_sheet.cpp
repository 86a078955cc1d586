// SPDX-License-Identifier: MIT
// The text sheet: verse lines, their sounds under the words, and the signs at the end.
#include "chart/canvas/style.hpp"
#include "chart/charts/charts.hpp"
#include "chart/page/marks.hpp"
#include "chart/page/text.hpp"
#include "vowelway/core/wording.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <functional>

namespace vowelway::chart {
namespace {

constexpr double word_size = 12, ipa_size = 11, text_row = 31.5, stanza_gap = 11, between_words = 7.5,
                 hanging = 24, sign_height = 13;

TextStyle word_style() { return plain(word_size); }
TextStyle ipa_style() { return plain(ipa_size, ink::soft); }

/// What goes together onto a page: its height, and how it is drawn from a height on.
struct TextBlock {
    double height = 0, gap_before = 0;
    std::function<void(Canvas&, Point at)> draw;
};

std::string sounds_of(TextWord const& word) {
    return word.ipa + (word.guessed ? "?" : "") + (word.joined ? "‿" : "");
}

struct PlacedWord {
    std::string word, sounds;
    double x = 0;
    std::size_t row = 0;
};

/// The words of a line from left to right, in more rows where they do not fit one.
std::vector<PlacedWord> placed(VerseLine const& line, double width, TextMeasurer const& m) {
    std::vector<PlacedWord> out;
    double x = 0;
    std::size_t row = 0;
    auto const add = [&](std::string word, std::string sounds) {
        double const wide =
            std::max(m.measure(word, word_style()).advance, m.measure(sounds, ipa_style()).advance);
        if (x + wide > width && x > hanging) {
            ++row;
            x = hanging;
        }
        out.push_back(
            {fitted(m, word, word_style(), width - x), fitted(m, sounds, ipa_style(), width - x), x, row});
        x += wide + between_words;
    };
    for (auto const& word : line.words) add(word.written, sounds_of(word));
    if (line.times > 1) add(fmt::format("({}×)", line.times), "");
    return out;
}

TextBlock line_block(VerseLine const& line, double width, TextMeasurer const& m) {
    auto words = placed(line, width, m);
    double const rows = words.empty() ? 0 : static_cast<double>(words.back().row + 1);
    return {rows * text_row, line.begins_stanza ? stanza_gap : 0, [words](Canvas& canvas, Point at) {
                for (auto const& one : words) {
                    double const top = at.y + static_cast<double>(one.row) * text_row, x = at.x + one.x;
                    canvas.write({x, top + 12}, one.word, word_style());
                    canvas.write({x, top + 24.5}, one.sounds, ipa_style());
                }
            }};
}

void draw_sign(Canvas& canvas, SignMeaning const& sign, double x, double y, double width) {
    auto const& m = canvas.measurer();
    auto const example = slanted(type::label, ink::soft);
    double const shown = std::min(m.measure(sign.example, example).advance, width * 0.4);
    canvas.write({x, y}, sign.sign, plain(ipa_size));
    canvas.write({x + 24, y}, fitted(m, sign.says, plain(type::label), width - 24 - shown - 8),
                 plain(type::label));
    canvas.write({x + width, y}, fitted(m, sign.example, example, shown + 0.1), example, Align::right);
}

/// Two signs beside each other, the list read down the columns; on one page.
TextBlock signs_block(SungText const& text, double width) {
    std::size_t const columns = width > 380 ? 2 : 1, rows = (text.key.size() + columns - 1) / columns;
    double const gutter = 28,
                 column = (width - gutter * static_cast<double>(columns - 1)) / static_cast<double>(columns);
    auto draw = [&text, width, rows, column, gutter](Canvas& canvas, Point at) {
        double const top = draw_heading(canvas, 0, at.y + 6, width, worded("The signs")) - 4;
        for (std::size_t i = 0; i < text.key.size(); ++i)
            draw_sign(canvas, text.key[i], static_cast<double>(i / rows) * (column + gutter),
                      top + sign_height * static_cast<double>(1 + i % rows), column);
    };
    return {27 + sign_height * static_cast<double>(rows), 8, draw};
}

TextBlock notes_block(SungText const& text, double width, TextMeasurer const& m) {
    std::string all;
    for (auto const& note : text.notes) all += (all.empty() ? "" : " ") + note;
    auto const style = plain(type::label, ink::soft);
    auto const lines = static_cast<double>(wrapped(m, all, style, width).size());
    return {12 * lines, 4, [all, width, style](Canvas& canvas, Point at) {
                paragraph(canvas, 0, at.y - 3, width, all, style);
            }};
}

double draw_head(Canvas& canvas, SungText const& text, double width) {
    auto const& m = canvas.measurer();
    auto const aside = slanted(type::body, ink::soft);
    auto const by = fitted(m, text.composer, aside, width * 0.45);
    canvas.write({width, 17}, by, aside, Align::right);
    auto const title = text.title.empty() ? worded("Text sheet") : text.title;
    double const room = width - m.measure(by, aside).advance - 14;
    canvas.write({0, 17}, fitted(m, title, bold(type::title), room), bold(type::title));
    canvas.line({0, 26}, {width, 26}, {.width = 1.2});
    return 42;
}

void draw_foot(Canvas& canvas, SungText const& text, Size paper, std::size_t page, std::size_t pages) {
    auto const style = plain(type::small, ink::soft);
    double const right = paper.width - margin_side;
    canvas.write({right, paper.height - 26}, fmt::format("{} / {}", page, pages), style, Align::right);
    if (page == 1) return;
    auto const title = fitted(canvas.measurer(), text.title, style, right - margin_side);
    canvas.write({margin_side, margin_top - 12}, title, style);
}

double height_of(std::vector<TextBlock> const& blocks, std::size_t from, std::size_t to) {
    double out = 0;
    for (std::size_t i = from; i < to; ++i) out += blocks[i].height + (i > from ? blocks[i].gap_before : 0);
    return out;
}

/// The first block that no longer fits a column of that height; one at least does.
std::size_t filled(std::vector<TextBlock> const& blocks, std::size_t from, double height) {
    std::size_t to = from;
    while (to < blocks.size() && (to == from || height_of(blocks, from, to + 1) <= height)) ++to;
    return to;
}

/// The least height at which two columns hold all that is left, as far as there is room.
double balanced(std::vector<TextBlock> const& blocks, std::size_t from, double room) {
    for (double height = height_of(blocks, from, blocks.size()) / 2; height < room; height += 6)
        if (filled(blocks, filled(blocks, from, height), height) >= blocks.size()) return height;
    return room;
}

/// Pages filled from top to bottom.
class Sheets {
  public:
    Sheets(SungText const& text, Size paper, TextMeasurer const& measurer)
        : text_(text), paper_(paper), measurer_(measurer), room_(paper.height - margin_top - margin_bottom) {
        sheets_.emplace_back(measurer);
        y_ = draw_head(sheets_.back(), text, paper.width - 2 * margin_side);
    }

    double left() const { return room_ - y_; }

    void add(std::vector<TextBlock> const& blocks) {
        for (auto const& block : blocks) {
            if (y_ > 0 && block.gap_before + block.height > left())
                turn();
            else if (y_ > 0)
                y_ += block.gap_before;
            block.draw(sheets_.back(), {0, y_});
            y_ += block.height;
        }
    }

    void add_in_columns(std::vector<TextBlock> const& blocks, double second) {
        for (std::size_t i = 0; i < blocks.size();) {
            if (i > 0 || left() < text_row) turn();
            double const height = balanced(blocks, i, left()), top = y_;
            for (double const x : {0.0, second}) {
                double y = top;
                for (std::size_t const from = i, to = filled(blocks, i, height); i < to; ++i) {
                    if (i > from) y += blocks[i].gap_before;
                    blocks[i].draw(sheets_.back(), {x, y});
                    y += blocks[i].height;
                }
                y_ = std::max(y_, y);
            }
        }
    }

    std::vector<Page> pages() const {
        std::vector<Page> out;
        for (auto const& sheet : sheets_) {
            Page page{paper_, Drawing(measurer_)};
            draw_foot(page.drawing, text_, paper_, out.size() + 1, sheets_.size());
            sheet.replay(page.drawing, {margin_side, margin_top});
            out.push_back(std::move(page));
        }
        return out;
    }

  private:
    void turn() {
        sheets_.emplace_back(measurer_);
        y_ = 0;
    }

    SungText const& text_;
    Size paper_;
    TextMeasurer const& measurer_;
    double room_, y_ = 0;
    std::vector<Drawing> sheets_;
};

} // namespace

std::vector<Page> text_sheet(SungText const& text, Size paper, TextMeasurer const& measurer) {
    double const width = paper.width - 2 * margin_side, gutter = 24, column = (width - gutter) / 2;
    bool narrow = true;
    std::vector<TextBlock> lines;
    for (auto const& line : text.lines) {
        auto const words = placed(line, width, measurer);
        auto const& last = words.back();
        double const wide = std::max(measurer.measure(last.word, word_style()).advance,
                                     measurer.measure(last.sounds, ipa_style()).advance);
        narrow = narrow && last.row == 0 && last.x + wide <= column;
        lines.push_back(line_block(line, width, measurer));
    }
    std::vector<TextBlock> signs;
    if (!text.key.empty()) signs.push_back(signs_block(text, width));
    if (!text.notes.empty()) signs.push_back(notes_block(text, width, measurer));
    Sheets sheets(text, paper, measurer);
    bool const one_page =
        height_of(lines, 0, lines.size()) + height_of(signs, 0, signs.size()) < sheets.left();
    if (narrow && !one_page)
        sheets.add_in_columns(lines, column + gutter);
    else
        sheets.add(lines);
    sheets.add(signs);
    return sheets.pages();
}

} // namespace vowelway::chart
