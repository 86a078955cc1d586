// SPDX-License-Identifier: MIT
#include "vowelway/acoustics/reachable.hpp"

#include "acoustics/reach_body.hpp"
#include "acoustics/reach_search.hpp"
#include "acoustics/series_tube.hpp"
#include "vowelway/acoustics/area_from_resonances.hpp"

#include <algorithm>
#include <cmath>

namespace vowelway::acoustics {

Frequency highest_r1(Frequency quarter) { return std::min(2.15 * quarter, hertz(1300)); }

Shape ReachableSet::Body::shape_of(tube::Posture const& posture) const {
    Shape out;
    out.gesture = posture.gesture;
    double sum = 0;
    for (std::size_t p = 0; p < cost.size(); ++p)
        sum += cost[p] * cost[p] * posture.gesture[p] * posture.gesture[p];
    out.effort = std::sqrt(sum);
    for (std::size_t k = 0; k < 4; ++k) {
        auto& peak = out.resonances.peaks[k];
        peak = own.peaks[k];
        if (k < posture.poles.size())
            peak.centre *= tube::frequency_of(posture.poles[k]) / tube::frequency_of(mouth.home().poles[k]);
        // Neighbours repel, in the tract and here; the ratios of a model whose home differs a little may
        // cross.
        if (k > 1) peak.centre = std::max(peak.centre, out.resonances.peaks[k - 1].centre + hertz(150));
        // A measured bandwidth changes as the published model's does.
        peak.bandwidth *= bandwidth(BandwidthModel::swept_tone, peak.centre).value() /
                          bandwidth(BandwidthModel::swept_tone, own.peaks[k].centre).value();
    }
    out.compliant_to = out.resonances.r1() * compliant_ratio;
    return out;
}

namespace {

// Upper end of the compliant band above fR1 over fR1; 1 when there is none.
double compliant_ratio(tube::Tube const& t, double r1, double r2) {
    bool inside = false;
    for (double f = r1 * 0.97; f < r2; f += 10) {
        bool const compliant = tube::input_impedance(t, f).imag() < 0;
        if (inside && !compliant) return f / r1;
        inside = inside || compliant;
    }
    return inside ? r2 / r1 : 1;
}

// How far each part can go, of its whole travel, from where the vowel has it by its place on the IPA chart.
struct Travel {
    GestureVector least, most, size; // size: the whole travel against that of a neutral vowel
};
Travel travel_from(Vowel const& vowel) {
    auto const place = chart_place(vowel);
    double const open = std::clamp(place.height / 6, 0.0, 1.0),
                 back = std::clamp(place.backness / 2, 0.0, 1.0);
    double const round = std::clamp(place.rounding, 0.0, 1.0);
    // Nearly closed lips have farther to open and to spread; the tongue is not drawn back far (choices).
    double const pursed = round * (1 - open);
    return {{-0.6 - 0.4 * open, -1 + 0.3 * round, -1 + 0.3 * (1 - round), -1 + 0.5 * open, -0.8 + 0.4 * back,
             -1, -0.5},
            {1 - 0.2 * open, 1, 1 - 0.5 * round, 0.5 + 0.5 * open, 0.5 + 0.5 * back, 1, 1},
            {1, 1 + 0.5 * pursed, 1 + 0.4 * pursed, 1, 1, 1, 1}};
}

} // namespace

GestureVector usual_cost(Vowel const& vowel) {
    auto const place = chart_place(vowel);
    double const back = std::clamp(place.backness / 2, 0.0, 1.0);
    double const open = std::clamp(place.height / 6, 0.0, 1.0), round = std::clamp(place.rounding, 0.0, 1.0);
    double const front_rounded = round * (1 - back);
    double const lips = 1.5 - round * (0.5 + 0.6 * open + 0.3 * (1 - back)),
                 spreading = 1.8 - round * (1.1 - 0.4 * open);
    double const pursed = round * (1 - open);
    return {2.4 - 1.6 * open - 0.9 * front_rounded,
            lips * (1 + 0.5 * pursed),
            spreading * (1 + 0.4 * pursed),
            0.8 + open,
            1.4,
            2,
            2};
}

ReachableSet::ReachableSet(ReachableSet&&) noexcept = default;
ReachableSet& ReachableSet::operator=(ReachableSet&&) noexcept = default;
ReachableSet::~ReachableSet() = default;

ReachableSet::ReachableSet(VowelResonances const& vowel, Length tract, ReachOptions const& options)
    : options_(options) {
    auto const steps = [&](Cents span) {
        return std::max(0, static_cast<int>(std::lround(span / options_.step)));
    };
    up_ = steps(options_.farthest_up);
    down_ = steps(options_.farthest_down);
    aside_ = steps(options_.farthest_r2);
    model(vowel, tract);
    index_.assign(static_cast<std::size_t>(up_ + down_ + 1) * (2 * aside_ + 1), -1);
    Search search(*this);
    if (!body_->usable()) return;
    search.follow_neighbours(false);
    search.follow_neighbours(true);
    search.fill_gaps();
}

void ReachableSet::model(VowelResonances const& vowel, Length tract) {
    auto const quarter = quarter_wave(tract);
    auto const own = resonance_set(vowel, quarter);
    double const cm = in_centimetres(tract);
    // A length that is only an estimate gives way a little rather than twist the shape. A singer whose vowel
    // cannot be made like the published one may still make it otherwise.
    ResonanceTargets const targets{own.r1(), own.r2(), own.peaks[2].centre};
    auto solved = area_from_resonances(targets, tract, options_.length_sd, vowel.vowel);
    if (!solved.human()) solved = area_from_resonances(targets, tract, options_.length_sd);
    objection_ = solved.objection;
    auto const& series = solved.series;
    tube::Tube start = tube::series_tube(series, solved.residual < 0.05 ? in_centimetres(solved.length) : cm,
                                         TractLoss::closed_glottis);
    auto const travel = travel_from(vowel.vowel);
    tube::Mouth mouth(std::move(start), travel.least, travel.most, travel.size);
    auto const& home = mouth.home();
    double const ratio = home.poles.size() < 2 ? 1
                                               : compliant_ratio(home.tube, tube::frequency_of(home.poles[0]),
                                                                 tube::frequency_of(home.poles[1]));
    body_.reset(new Body{std::move(mouth), own, options_.cost, ratio, acoustics::highest_r1(quarter)});
}

Shape const* ReachableSet::at(int i, int j) const {
    if (i < -down_ || i > up_ || j < -aside_ || j > aside_) return nullptr;
    int const k = index_[cell(i, j)];
    return k < 0 ? nullptr : &shapes_[k];
}

AreaFunction ReachableSet::tract(GestureVector const& gesture) const {
    auto const made = body_->mouth.shaped(gesture);
    AreaFunction out;
    for (std::size_t i = 0; i < made.size(); ++i)
        out.push_back({centimetres(made.length[i]), square_centimetres(made.area[i])});
    return out;
}

std::optional<Shape> ReachableSet::reach(Frequency r1, Frequency r2) const {
    auto const& mouth = body_->mouth;
    if (mouth.home().poles.size() < 2) return std::nullopt;
    // Start from the nearest shape of the grid.
    auto const gap = [&](Shape const& s) {
        return std::hypot(std::log(s.resonances.r1().value() / r1.value()),
                          std::log(s.resonances.r2().value() / r2.value()));
    };
    auto const nearest = std::min_element(shapes_.begin(), shapes_.end(),
                                          [&](Shape const& a, Shape const& b) { return gap(a) < gap(b); });
    auto const start = mouth.moved(mouth.home(), nearest->gesture);
    if (!start) return std::nullopt;
    auto const posture = mouth.towards(*start, r1.value() / body_->own.r1().value(),
                                       r2.value() / body_->own.r2().value(), options_.cost, 0.01, 8);
    if (!posture) return std::nullopt;
    return body_->shape_of(*posture);
}

} // namespace vowelway::acoustics
