// SPDX-License-Identifier: MIT
#include "acoustics/mouth.hpp"

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace vowelway::acoustics::tube {

namespace {

constexpr double narrowest = 0.06; // cm²: about where a vowel becomes a fricative (Stevens 1998, from memory)

// The widest section any gesture makes, for a tract of 17 cm: what area_from_resonances takes for the widest
// of a human tract, a mouth some 4.5 by 4.5 cm (our judgement); it grows with the square of the length.
constexpr double widest_of_17cm = 20;

// How much a section of raw area `a` keeps of it below the bound `most`: all far below, most/a far above.
double kept(double a, double most) { return std::pow(1 + std::pow(a / most, 4), -0.25); }
// d ln(a kept(a)) / d ln a.
double kept_slope(double a, double most) { return 1 / (1 + std::pow(a / most, 4)); }

constexpr std::size_t parts = std::tuple_size_v<GestureVector>;

// A raised cosine around `centre`, `reach` to either side; positions from 0 at the glottis to 1 at the lips.
double bump(double x, double centre, double reach) {
    double const d = std::abs(x - centre) / reach;
    return d < 1 ? 0.5 * (1 + std::cos(std::numbers::pi * d)) : 0;
}

// Change of ln area for the whole travel of each part, after the X-ray tracings and models of Lindblom &
// Sundberg 1971 (from memory): the jaw opens mouth and lips and draws the tongue's root a little into the
// pharynx; the tongue keeps its volume, so what it takes from the mouth it gives to the pharynx. The sizes
// are our judgement: a whole travel of the tongue leads from a close vowel to an open one, from a front one
// to a back one; that of the jaw brings a soprano's close vowels to the fR1 of 1000 Hz and more that is
// measured of singers (Joliveau, Smith & Wolfe 2004).
GestureVector widening(double x) {
    double const lips = bump(x, 1.0, 0.14);
    GestureVector out{};
    out[0] = 2.2 * bump(x, 0.82, 0.4) + 1.2 * lips - 0.6 * bump(x, 0.22, 0.26); // jaw
    out[1] = 1.5 * lips;                                                        // lip opening
    out[2] = -0.9 * lips;                                                       // lip protrusion
    out[3] = -2.0 * bump(x, 0.64, 0.35) + 1.2 * bump(x, 0.15, 0.32);            // tongue height
    out[4] = 1.5 * bump(x, 0.33, 0.3) - 1.1 * bump(x, 0.78, 0.25);              // tongue advancement
    out[6] = 0.9 * bump(x, 0.28, 0.26);                                         // pharynx
    return out;
}

} // namespace

Mouth::Mouth(Tube home, GestureVector const& least, GestureVector const& most, GestureVector const& travel)
    : least_(least), most_(most) {
    home_.tube = std::move(home);
    auto const& t = home_.tube;
    std::size_t const count = t.size();
    double total = 0;
    for (double l : t.length) total += l;
    double const size = total / 17;
    widest_ = widest_of_17cm * size * size;
    double at = 0, larynx = 0, lips = 0;
    std::vector<double> middle(count);
    for (std::size_t i = 0; i < count; ++i) {
        middle[i] = (at + t.length[i] / 2) / total;
        at += t.length[i];
        if (middle[i] > 0.1 && middle[i] < 0.35) larynx += t.length[i];
        if (middle[i] > 0.88) lips += t.length[i];
    }
    widening_.resize(count);
    lengthening_.assign(count, {});
    for (std::size_t i = 0; i < count; ++i) {
        widening_[i] = widening(middle[i]);
        // Protrusion adds 1 cm at the lips, the larynx takes or gives 1 cm in the lower pharynx (17 cm
        // tract): about 6 % of the length each.
        if (middle[i] > 0.88) lengthening_[i][2] = std::log1p(size / lips);
        if (middle[i] > 0.1 && middle[i] < 0.35) lengthening_[i][5] = -std::log1p(size / larynx);
        for (std::size_t p = 0; p < parts; ++p) {
            widening_[i][p] *= travel[p];
            lengthening_[i][p] *= travel[p];
        }
    }
    home_.poles = first_poles(t, 4);
}

double Mouth::growth(std::size_t section, GestureVector const& gesture) const {
    double sum = 0;
    for (std::size_t p = 0; p < gesture.size(); ++p) sum += gesture[p] * widening_[section][p];
    return sum;
}

Tube Mouth::shaped(GestureVector const& gesture) const {
    Tube t = home_.tube;
    for (std::size_t i = 0; i < t.size(); ++i) {
        double length = 0;
        for (std::size_t p = 0; p < gesture.size(); ++p) length += gesture[p] * lengthening_[i][p];
        // Relative to what home keeps, so that no gesture is no change.
        double const own = t.area[i], raw = own * std::exp(growth(i, gesture));
        t.area[i] = raw * kept(raw, widest_) / kept(own, widest_);
        if (length != 0) t.length[i] *= std::exp(length);
    }
    return t;
}

std::optional<Posture> Mouth::moved(Posture const& from, GestureVector const& gesture, std::size_t poles,
                                    Jacobian const* slopes) const {
    Posture out{gesture, shaped(gesture), {}};
    if (*std::min_element(out.tube.area.begin(), out.tube.area.end()) < narrowest) return std::nullopt;
    for (std::size_t k = 0; k < std::min(poles, from.poles.size()); ++k) {
        double shift = 0;
        if (slopes && k < slopes->size())
            for (std::size_t p = 0; p < gesture.size(); ++p)
                shift += (*slopes)[k][p] * (gesture[p] - from.gesture[p]);
        auto const found = find_pole(
            out.tube, {from.poles[k].real(), from.poles[k].imag() * std::exp(std::clamp(shift, -0.3, 0.3))});
        double const f = found ? frequency_of(*found) : 0;
        if (f < 100 || (!out.poles.empty() && f < frequency_of(out.poles.back()) + 20)) {
            if (out.poles.size() < 2) return std::nullopt;
            break;
        }
        out.poles.push_back(*found);
    }
    // The pole followed may have been left for the next one: where two come near, or after a long step.
    if (std::abs(mode_at(out.tube, frequency_of(out.poles[1])) - 2) > 0.45) return std::nullopt;
    return out;
}

Mouth::Jacobian Mouth::jacobian(Posture const& at) const {
    Jacobian out{};
    std::vector<double> by_area, by_length;
    for (std::size_t k = 0; k < 2; ++k) {
        sensitivities(at.tube, at.poles[k], by_area, &by_length);
        for (std::size_t i = 0; i < by_area.size(); ++i) {
            double const slope = kept_slope(home_.tube.area[i] * std::exp(growth(i, at.gesture)), widest_);
            for (std::size_t p = 0; p < out[k].size(); ++p)
                out[k][p] += by_area[i] * slope * widening_[i][p] + by_length[i] * lengthening_[i][p];
        }
    }
    return out;
}

namespace {

// The gesture with the least sum of (cost g)² on the plane J g = wanted, each part within its limits: parts
// that would go too far are held at their limit and the rest solved again.
GestureVector cheapest(Mouth::Jacobian const& j, Eigen::Vector2d wanted, GestureVector const& cost,
                       GestureVector const& least, GestureVector const& most) {
    GestureVector out{};
    std::array<bool, parts> held{};
    for (int round = 0; round < 7; ++round) {
        Eigen::Matrix2d normal = Eigen::Matrix2d::Identity() * 1e-7;
        for (std::size_t p = 0; p < parts; ++p) {
            if (held[p]) continue;
            Eigen::Vector2d const column(j[0][p], j[1][p]);
            normal += column * column.transpose() / (cost[p] * cost[p]);
        }
        Eigen::Vector2d const price = normal.inverse() * wanted;
        bool beyond = false;
        for (std::size_t p = 0; p < parts; ++p) {
            if (held[p]) continue;
            out[p] = (j[0][p] * price[0] + j[1][p] * price[1]) / (cost[p] * cost[p]);
            if (out[p] >= least[p] && out[p] <= most[p]) continue;
            out[p] = std::clamp(out[p], least[p], most[p]);
            held[p] = beyond = true;
            wanted -= Eigen::Vector2d(j[0][p], j[1][p]) * out[p];
        }
        if (!beyond) break;
    }
    return out;
}

} // namespace

std::optional<Posture> Mouth::towards(Posture const& from, double factor1, double factor2,
                                      GestureVector const& cost, double tolerance, int most_steps) const {
    Eigen::Vector2d const target(std::log(frequency_of(home_.poles[0]) * factor1),
                                 std::log(frequency_of(home_.poles[1]) * factor2));
    auto const miss_of = [&](Posture const& p) {
        return Eigen::Vector2d(
            target - Eigen::Vector2d(std::log(frequency_of(p.poles[0])), std::log(frequency_of(p.poles[1]))));
    };
    Posture now = from;
    double left = miss_of(now).cwiseAbs().maxCoeff();
    for (int k = 0; k < most_steps; ++k) {
        auto const j = jacobian(now);
        Eigen::Vector2d wanted = miss_of(now);
        for (std::size_t p = 0; p < parts; ++p) wanted += Eigen::Vector2d(j[0][p], j[1][p]) * now.gesture[p];
        auto gesture = cheapest(j, wanted, cost, least_, most_);
        // Half a travel at once is as far as the slopes can be trusted.
        double longest = 0;
        for (std::size_t p = 0; p < parts; ++p)
            longest = std::max(longest, std::abs(gesture[p] - now.gesture[p]));
        if (double const share = 0.5 / longest; share < 1)
            for (std::size_t p = 0; p < parts; ++p) gesture[p] = std::lerp(now.gesture[p], gesture[p], share);
        auto next = moved(now, gesture, 2, &j);
        if (!next) return std::nullopt;
        double const remains = miss_of(*next).cwiseAbs().maxCoeff();
        // No way on: every part that helps has come to its limit.
        if (remains > 0.8 * left && remains > tolerance) return std::nullopt;
        left = remains;
        now = std::move(*next);
        if (left >= tolerance) continue;
        for (std::size_t n = 2; n < from.poles.size(); ++n) {
            auto const found = find_pole(now.tube, from.poles[n]);
            if (!found || frequency_of(*found) < frequency_of(now.poles.back()) + 20) break;
            now.poles.push_back(*found);
        }
        return now;
    }
    return std::nullopt;
}

} // namespace vowelway::acoustics::tube
