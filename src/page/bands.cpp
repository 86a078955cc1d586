// SPDX-License-Identifier: MIT
#include "page/bands.hpp"

#include <algorithm>
#include <iterator>

namespace vowelway::page {

namespace {

constexpr double least_height = 60, least_gap = 2, above_ink = 1; // points

/// Where a page can be cut, from its top to its foot.
std::vector<double> cuts_of(chart::Page const& page) {
    std::vector<chart::Box> boxes;
    for (auto const& mark : page.drawing.marks())
        if (mark.box.bottom() < page.size.height) boxes.push_back(mark.box);
    std::sort(boxes.begin(), boxes.end(), [](auto const& a, auto const& b) { return a.top < b.top; });
    std::vector<double> cuts{0};
    double ink = 0;
    for (auto const& box : boxes) {
        double const cut = box.top - above_ink;
        if (box.top - ink >= least_gap && cut - cuts.back() >= least_height) cuts.push_back(cut);
        ink = std::max(ink, box.bottom());
    }
    cuts.push_back(page.size.height);
    return cuts;
}

/// Hands each stroke to the band it lies in.
class Divided : public chart::Canvas {
  public:
    Divided(std::vector<Band>& bands, chart::TextMeasurer const& measurer)
        : bands_(&bands), measurer_(&measurer) {}

    using Canvas::fill;
    void fill(chart::Path const& path, Ink color) override {
        if (auto* band = at(path.bounds())) band->drawing.fill(path.moved({0, -band->top}), color);
    }
    void stroke(chart::Path const& path, chart::Pen const& pen) override {
        if (auto* band = at(path.bounds())) band->drawing.stroke(path.moved({0, -band->top}), pen);
    }
    void text(chart::Point where, std::string_view utf8, chart::TextStyle const& style) override {
        if (auto* band = at(measurer_->measure(utf8, style).box(where)))
            band->drawing.text({where.x, where.y - band->top}, utf8, style);
    }
    chart::TextMeasurer const& measurer() const override { return *measurer_; }

  private:
    Band* at(chart::Box const& box) {
        double const middle = box.top + box.height / 2;
        if (middle > bands_->back().top + bands_->back().height) return nullptr;
        auto const after = std::upper_bound(bands_->begin(), bands_->end(), middle,
                                            [](double y, Band const& band) { return y < band.top; });
        return &(after == bands_->begin() ? bands_->front() : *std::prev(after));
    }
    std::vector<Band>* bands_;
    chart::TextMeasurer const* measurer_;
};

} // namespace

std::vector<Band> bands_of(chart::Page const& page) {
    auto const& measurer = page.drawing.measurer();
    auto const cuts = cuts_of(page);
    std::vector<Band> bands;
    for (std::size_t i = 0; i + 1 < cuts.size(); ++i)
        bands.push_back({cuts[i], cuts[i + 1] - cuts[i], chart::Drawing(measurer)});
    Divided canvas(bands, measurer);
    page.drawing.replay(canvas);
    return bands;
}

} // namespace vowelway::page
