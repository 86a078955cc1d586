// SPDX-License-Identifier: MIT
// Text by Pango, in the charts' own fonts. Only the sources of this folder see Pango and Cairo.
#pragma once

#include "vowelway/chart/canvas.hpp"
#include "vowelway/chart/letter_forms.hpp"

#include <pango/pangocairo.h>

#include <memory>
#include <string>
#include <unordered_map>

namespace vowelway::chart {

/// Gives a borrowed C handle back.
template <auto release> struct Release {
    template <class T> void operator()(T* handle) const { release(handle); }
};
template <class T, auto release> using Handle = std::unique_ptr<T, Release<release>>;

/// Threads  stays on the thread that made it.
class PangoText : public TextMeasurer, public LetterForms {
  public:
    /// Throws InputError when a font of the theme is missing, or lacks signs the charts use.
    explicit PangoText(Theme const& theme);
    TextExtent measure(std::string_view utf8, TextStyle const& style) const override;
    LetterForms const* forms() const override { return this; }
    SetText set(std::string_view utf8, TextStyle const& style) const override;
    Path outline(SetText::Letter const& letter) const override;
    /// The shaped line; lives as long as this object.
    PangoLayoutLine* line(std::string_view utf8, TextStyle const& style) const;

  private:
    struct Shaped {
        Handle<PangoLayout, g_object_unref> layout;
        PangoLayoutLine* line = nullptr;
        TextExtent extent;
    };
    Shaped const& shaped(std::string_view utf8, TextStyle const& style) const;

    std::string text_family_, music_family_;
    Handle<PangoContext, g_object_unref> context_;
    mutable std::unordered_map<std::string, Shaped> shaped_;
    mutable std::unordered_map<std::string, PangoFont*> fonts_; // by face; the shaped lines keep them
};

} // namespace vowelway::chart
