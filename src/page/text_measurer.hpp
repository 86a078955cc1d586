// SPDX-License-Identifier: MIT
// The size of a text as the page's own fonts set it.
#pragma once

#include "vowelway/chart/canvas.hpp"
#include "vowelway/core/theme.hpp"

#include <map>
#include <string>
#include <tuple>

namespace vowelway::page {

/// Asks the page, which gives `measure_text(text, {family, size, bold, italic})` to the module; sizes in
/// points. A text is asked for once. Where the page gives none, InputError says so.
class TextMeasurer : public chart::TextMeasurer {
  public:
    explicit TextMeasurer(Theme const& theme) : text_(theme.text.name), music_(theme.music.name) {}
    chart::TextExtent measure(std::string_view utf8, chart::TextStyle const& style) const override;

  private:
    std::string text_, music_;
    using Key = std::tuple<std::string, double, bool, bool, chart::Face>;
    mutable std::map<Key, chart::TextExtent> known_; // the module has one thread
};

} // namespace vowelway::page
