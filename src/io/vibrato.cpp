// SPDX-License-Identifier: MIT
#include "io/vibrato.hpp"

#include "core/text.hpp"
#include "vowelway/core/wording.hpp"

#include <fmt/format.h>

namespace vowelway::io {

namespace {

double value_of(yaml::Node const& node, std::string_view what, std::string_view unit, double low,
                double high) {
    std::string_view rest = yaml::scalar(node, what);
    auto const value = text::eat_number(rest);
    if (!value || text::trim(rest) != unit || !(*value >= low && *value <= high))
        throw yaml::error_at(
            node, worded("the vibrato's {0} is \"{1}\"", what, node.text),
            worded("write {0} to {1} {2}", fmt::format("{:g}", low), fmt::format("{:g}", high), unit));
    return *value;
}

} // namespace

Vibrato read_vibrato(yaml::Node const& node) {
    yaml::map(node, worded("the vibrato"), "vibrato: {extent: 50 cents, rate: 5.5 Hz}");
    yaml::only_keys(node, "extent rate");
    Vibrato out;
    if (auto const* n = node.find("extent"))
        out.extent = Cents{value_of(*n, "extent", "cents", 0, widest_vibrato.value)};
    if (auto const* n = node.find("rate"))
        out.rate = hertz(value_of(*n, "rate", "Hz", in_hertz(slowest_vibrato), in_hertz(fastest_vibrato)));
    return out;
}

} // namespace vowelway::io
