// SPDX-License-Identifier: MIT
#include "vowelway/acoustics/area_from_resonances.hpp"

#include "acoustics/published_tracts.hpp"
#include "acoustics/series_tube.hpp"
#include "vowelway/acoustics/transfer.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace vowelway::acoustics {

namespace {

std::string in_whole_hertz(double f) { return std::to_string(std::lround(f)) + " Hz"; }

std::string objection_to(tube::SeriesSolution const& solved, std::vector<double> const& targets,
                         double length) {
    constexpr double accuracy = 1e-3, narrowest = 0.05, widest = 20;
    if (solved.residual > accuracy) {
        std::string wanted;
        for (std::size_t k = 0; k < targets.size(); ++k)
            wanted += (k ? ", fR" : "fR") + std::to_string(k + 1) + " = " + in_whole_hertz(targets[k]);
        return worded("no tract of {0} cm has {1}", std::lround(length), wanted);
    }
    double const scale = tube::mean_area(length) / tube::mean_area(17);
    auto const [least, most] = std::minmax_element(solved.tube.area.begin(), solved.tube.area.end());
    auto const tenths = [](double area) { return std::to_string(std::lround(area * 100)) + " mm²"; };
    if (*least < narrowest * scale) return worded("the tract would have to narrow to {0}", tenths(*least));
    if (*most > widest * scale) return worded("the tract would have to widen to {0}", tenths(*most));
    return "";
}

} // namespace

FittedTract area_from_resonances(ResonanceTargets const& wanted, Length length, double length_sd,
                                 std::optional<Vowel> const& like, TractLoss loss) {
    double const cm = in_centimetres(length);
    if (!(cm >= 5 && cm <= 25))
        throw InputError(worded("a vocal tract of {0} cm", std::to_string(cm)),
                         worded("adults measure 13..20 cm, children from 8 cm; give 5..25 cm"));
    std::vector<double> targets{wanted.r1.value(), wanted.r2.value()};
    if (wanted.r3) targets.push_back(wanted.r3->value());
    for (std::size_t k = 0; k < targets.size(); ++k)
        if (!(targets[k] > (k ? targets[k - 1] : 0.0)) || !std::isfinite(targets[k]))
            throw InputError(worded("resonance {0} is not above the one below it", k + 1),
                             worded("give 0 < fR1 < fR2 < fR3"));
    auto const solved =
        tube::solve_series(targets, like ? tube::tract_like(*like) : tube::mean_tract(), cm, length_sd, loss);
    FittedTract out;
    for (std::size_t i = 0; i < solved.tube.size(); ++i)
        out.tract.push_back({centimetres(solved.tube.length[i]), square_centimetres(solved.tube.area[i])});
    out.series = solved.series;
    out.length = centimetres(solved.length);
    out.residual = std::expm1(solved.residual);
    out.steps = solved.steps;
    out.objection = objection_to(solved, targets, solved.length);
    return out;
}

Length estimate_tract_length(std::span<VowelResonances const> vowels) {
    if (vowels.empty()) throw std::invalid_argument("estimate_tract_length: no vowels");
    std::vector<double> lengths;
    for (auto const& v : vowels) {
        constexpr double constant = 229, weight[] = {0.030, 0.082, 0.124, 0.354};
        double known = 0, all = 0, sum = 0;
        for (int k = 0; k < 4; ++k) {
            all += weight[k];
            if (auto const r = v.get({k + 1})) {
                known += weight[k];
                sum += weight[k] * r->centre.value() / (2 * k + 1);
            }
        }
        lengths.push_back(in_centimetres(tract_of(hertz(constant + sum * all / known))));
    }
    auto const middle = lengths.begin() + static_cast<std::ptrdiff_t>(lengths.size() / 2);
    std::nth_element(lengths.begin(), middle, lengths.end());
    if (lengths.size() % 2) return centimetres(*middle);
    return centimetres((*middle + *std::max_element(lengths.begin(), middle)) / 2);
}

} // namespace vowelway::acoustics
