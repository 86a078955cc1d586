// SPDX-License-Identifier: MIT
#include "vowelway/acoustics/tract.hpp"

#include "acoustics/tube.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"

#include <array>
#include <stdexcept>
#include <string>

namespace vowelway::acoustics {

Length length_of(AreaFunction const& tract) {
    Length sum;
    for (auto const& section : tract) sum += section.length;
    return sum;
}

namespace {

constexpr std::array<std::pair<TractLoss, std::string_view>, 4> loss_names{
    {{TractLoss::none, "none"},
     {TractLoss::radiation, "radiation"},
     {TractLoss::closed_glottis, "closed-glottis"},
     {TractLoss::voiced, "voiced"}}};

} // namespace

tube::Tube tube::checked(AreaFunction const& tract, TractLoss loss) {
    constexpr std::size_t most = 512;
    if (tract.empty())
        throw InputError(worded("the area function has no sections"), worded("give at least one section"));
    if (tract.size() > most)
        throw InputError(worded("the area function has {0} sections", tract.size()),
                         worded("give at most {0}", most));
    Tube out;
    out.loss = loss;
    for (std::size_t i = 0; i < tract.size(); ++i) {
        double const length = in_centimetres(tract[i].length), area = in_square_centimetres(tract[i].area);
        auto const refuse = [&](std::string const& what) {
            throw InputError(
                worded("section {0} from the glottis is {1}", i + 1, what),
                worded(
                    "lengths are 0.01..30 cm and areas 0.001..100 cm²; a closed airway has no resonances"));
        };
        if (!(length >= 0.01 && length <= 30)) refuse(worded("{0} cm long", std::to_string(length)));
        if (!(area >= 0.001 && area <= 100)) refuse(worded("{0} cm² wide", std::to_string(area)));
        out.length.push_back(length);
        out.area.push_back(area);
    }
    if (double const total = in_centimetres(length_of(tract)); total > 100)
        throw InputError(worded("the tract is {0} cm long", static_cast<int>(total)),
                         worded("give at most 100 cm; is each section as long as the whole tract?"));
    return out;
}

std::string_view to_string(TractLoss loss) {
    for (auto const& [value, name] : loss_names)
        if (value == loss) return name;
    return "";
}

std::optional<TractLoss> parse_tract_loss(std::string_view name) {
    for (auto const& [value, known] : loss_names)
        if (known == name) return value;
    return std::nullopt;
}

std::vector<TractResonance> resonances(AreaFunction const& tract, TractLoss loss, Frequency up_to) {
    auto const t = tube::checked(tract, loss);
    std::vector<TractResonance> out;
    // Losses shift a resonance by far less than the 400 Hz of margin here.
    for (auto const& pole : tube::poles_below(t, up_to.value() + 400)) {
        TractResonance const found{hertz(tube::frequency_of(pole)), hertz(tube::bandwidth_of(pole))};
        if (found.centre <= up_to) out.push_back(found);
    }
    return out;
}

AcousticImpedance input_impedance(AreaFunction const& tract, Frequency f, TractLoss loss) {
    auto const z = tube::input_impedance(tube::checked(tract, loss), f.value());
    return {{z.real()}, {z.imag()}};
}

std::vector<Band> compliant_bands(AreaFunction const& tract, TractLoss loss, Frequency up_to) {
    auto const t = tube::checked(tract, loss);
    auto const compliant = [&](double f) { return tube::input_impedance(t, f).imag() < 0; };
    constexpr double step = 4, lowest = 60;
    std::vector<Band> out;
    bool inside = compliant(lowest);
    double from = lowest;
    for (double f = lowest + step; f < up_to.value() + step; f += step) {
        double const here = std::min(f, up_to.value());
        if (compliant(here) == inside) continue;
        double low = here - step, high = here;
        while (high - low > 0.05) (compliant((low + high) / 2) == inside ? low : high) = (low + high) / 2;
        if (inside)
            out.push_back({hertz(from), hertz(high)});
        else
            from = high;
        inside = !inside;
    }
    if (inside && from < up_to.value()) out.push_back({hertz(from), up_to});
    return out;
}

Sensitivity sensitivity(AreaFunction const& tract, int number, TractLoss loss) {
    auto const t = tube::checked(tract, loss);
    auto const poles = number >= 1 && tube::lossless_resonance(t, number) < 8000
                           ? tube::first_poles(t, number)
                           : std::vector<tube::Complex>{};
    if (number < 1 || poles.size() < static_cast<std::size_t>(number))
        throw std::out_of_range("sensitivity: no resonance " + std::to_string(number));
    Sensitivity out;
    tube::sensitivities(t, poles.back(), out.area, &out.length);
    return out;
}

} // namespace vowelway::acoustics
