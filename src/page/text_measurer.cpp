// SPDX-License-Identifier: MIT
#include "page/text_measurer.hpp"

#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"

#include <emscripten/emscripten.h>

// Five numbers into `out`: advance, left, right, above, below. 0 when the page cannot measure.
// clang-format off
EM_JS(int, vowelway_measure_text, (char const* text, std::size_t size, char const* family, double points,
                                   int bold, int italic, double* out), {
    if (!Module["measure_text"]) return 0;
    const extent = Module["measure_text"](
        new TextDecoder().decode(HEAPU8.slice(text, text + size)),
        { "family": UTF8ToString(family), "size": points, "bold": !!bold, "italic": !!italic });
    ["advance", "left", "right", "above", "below"].forEach((name, i) => { HEAPF64[(out >> 3) + i] = extent[name]; });
    return 1;
})
// clang-format on

namespace vowelway::page {

chart::TextExtent TextMeasurer::measure(std::string_view utf8, chart::TextStyle const& style) const {
    Key key{utf8, style.size, style.bold, style.italic, style.face};
    if (auto const found = known_.find(key); found != known_.end()) return found->second;
    auto const& family = style.face == chart::Face::music ? music_ : text_;
    double n[5] = {};
    if (vowelway_measure_text(utf8.data(), utf8.size(), family.c_str(), style.size, style.bold, style.italic,
                              n) == 0)
        throw InputError(worded("the page gives no way to measure a text"),
                         worded("give the module measure_text"));
    return known_[std::move(key)] = {n[0], n[1], n[2], n[3], n[4]};
}

} // namespace vowelway::page
