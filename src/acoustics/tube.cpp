// SPDX-License-Identifier: MIT
#include "acoustics/tube.hpp"

#include <cmath>
#include <numbers>

namespace vowelway::tube {

namespace {

constexpr double pi = std::numbers::pi;

// Constants of Sondhi & Schroeter 1987: friction and heat, and the wall as mass, spring and resistance.
constexpr double wall_damping = 130 * pi, wall_spring = (30 * pi) * (30 * pi), friction = 4;
constexpr double wall_mass = (406 * pi) * (406 * pi);
// Story, Laukkanen & Titze 2000, as the model is used by its author: a constant in place of the frictional term of
// the impedance, and a wall resonating at 200 Hz in the closed tract.
constexpr double voiced_resistance = 408, voiced_wall_mass = (400 * pi) * (400 * pi);

// What all sections share at one complex frequency.
struct Medium {
    Complex sigma; // propagation constant times c
    Complex gamma; // characteristic impedance over rho c / A
};

Medium medium(TractLoss loss, Complex s) {
    if (loss == TractLoss::none || loss == TractLoss::radiation) return {s, 1.0};
    Complex const alpha = std::sqrt(s * friction);
    bool const voiced = loss == TractLoss::voiced;
    Complex const wall = s * (voiced ? voiced_wall_mass : wall_mass) / ((s + wall_damping) * s + wall_spring);
    Complex const beta = wall + alpha;
    Complex const gamma = std::sqrt(((voiced ? Complex(voiced_resistance) : alpha) + s) / (beta + s));
    return {gamma * (beta + s), gamma};
}

// Radiation load and its derivative with the logarithm of the lip area.
struct Load {
    Complex impedance, by_log_area;
};

Load load(Tube const& t, Complex s) {
    if (t.loss == TractLoss::none) return {0.0, 0.0};
    double const area = t.area.back();
    double const r = 128 * rho * c / (9 * pi * pi * area);
    Complex const x = s * (8 * rho / (3 * pi * std::sqrt(pi * area)));
    Complex const z = x * r / (r + x);
    return {z, z * (-1.5 + (r + 0.5 * x) / (r + x))};
}

// One section's matrix [P U]lipward = [ch, -Z sh; -sh/Z, ch] [P U]glottisward. Sections of one length share it.
class Chain {
  public:
    Chain(Tube const& t, Complex s) : tube_(t), medium_(medium(t.loss, s)) {}

    struct Step {
        Complex ch, sh, z;
    };
    Step step(std::size_t i) {
        if (tube_.length[i] != length_) {
            length_ = tube_.length[i];
            Complex const e = std::exp(medium_.sigma * (length_ / c)), back = 1.0 / e;
            ch_ = 0.5 * (e + back);
            sh_ = 0.5 * (e - back);
        }
        return {ch_, sh_, medium_.gamma * (rho * c / tube_.area[i])};
    }
    Medium const& medium_here() const { return medium_; }

  private:
    Tube const& tube_;
    Medium medium_;
    double length_ = -1;
    Complex ch_, sh_;
};

// Phase of the lossless tube at the lips; grows with frequency. A rotation along each section; at each joint the
// tangent is scaled, which leaves the multiples of a quarter turn where they are.
double lossless_phase(Tube const& t, double f) {
    double const k = 2 * pi * f / c;
    double phase = 0;
    for (std::size_t i = 0; i < t.size(); ++i) {
        if (i > 0) {
            double const turns = std::round(phase / pi);
            double const part = phase - turns * pi;
            // Pressure over flow is the same on both sides; the angle's tangent is flow times rho c/A over pressure.
            phase = turns * pi + std::atan2(std::sin(part) * t.area[i - 1], std::cos(part) * t.area[i]);
        }
        phase += k * t.length[i];
    }
    if (t.loss != TractLoss::none) {
        double const inertia = 8 * rho / (3 * pi * std::sqrt(pi * t.area.back()));
        phase += std::atan(2 * pi * f * inertia * t.area.back() / (rho * c));
    }
    return phase;
}

} // namespace

double frequency_of(Complex pole) { return pole.imag() / (2 * pi); }
double bandwidth_of(Complex pole) { return 0.0 - pole.real() / pi; } // never -0
Complex pole_at(double frequency, double bandwidth) { return {-pi * bandwidth, 2 * pi * frequency}; }

Complex denominator(Tube const& t, Complex s) {
    Chain chain(t, s);
    Complex p = 1, u = 0;
    for (std::size_t i = 0; i < t.size(); ++i) {
        auto const [ch, sh, z] = chain.step(i);
        Complex const next = ch * p - z * sh * u;
        u = ch * u - sh / z * p;
        p = next;
    }
    return p - load(t, s).impedance * u;
}

double lossless_resonance(Tube const& t, int n) {
    double const wanted = (n - 0.5) * pi;
    double total = 0;
    for (double l : t.length) total += l;
    double low = 0, high = n * c / (2 * total);
    while (lossless_phase(t, high) < wanted) {
        low = high;
        high *= 1.5;
    }
    // False position with the stagnant end's weight halved (Illinois).
    double at_low = lossless_phase(t, low) - wanted, at_high = lossless_phase(t, high) - wanted;
    for (int k = 0; k < 100 && high - low > 0.01; ++k) {
        double const f = low - at_low * (high - low) / (at_high - at_low);
        double const at = lossless_phase(t, f) - wanted;
        if (std::abs(at) < 1e-9) return f;
        if (at > 0) {
            if (k > 0) at_low *= 0.5;
            high = f;
            at_high = at;
        } else {
            if (k > 0) at_high *= 0.5;
            low = f;
            at_low = at;
        }
    }
    return 0.5 * (low + high);
}

double mode_at(Tube const& t, double f) { return lossless_phase(t, f) / pi + 0.5; }

std::optional<Complex> find_pole(Tube const& t, Complex guess) {
    Complex before = guess, s = guess + Complex(-3, 3);
    Complex d_before = denominator(t, before), d = denominator(t, s);
    for (int k = 0; k < 40; ++k) {
        Complex const slope = (d - d_before) / (s - before);
        Complex step = -d / slope;
        double const size = std::abs(step);
        if (!std::isfinite(size)) return std::nullopt;
        if (double const most = 0.25 * std::abs(s); size > most) step *= most / size;
        before = s;
        d_before = d;
        s += step;
        if (size < 0.02) return s;
        d = denominator(t, s);
    }
    return std::nullopt;
}

std::optional<Complex> nth_pole(Tube const& t, int n) {
    double const f = lossless_resonance(t, n);
    if (t.loss == TractLoss::none) return Complex(0, 2 * pi * f);
    bool const walls = t.loss != TractLoss::radiation;
    // Yielding walls raise a resonance to hypot(F, about 200 Hz): Stevens 1998.
    auto const pole = find_pole(t, pole_at(walls ? std::hypot(f, 200) : f, 60));
    if (!pole || frequency_of(*pole) < 60) return std::nullopt;
    return pole;
}

Complex input_impedance(Tube const& t, double f) {
    Complex const s(0, 2 * pi * f);
    Chain chain(t, s);
    // Backwards from the load: Z = (Zl ch + z sh)/(ch + Zl/z sh).
    Complex p = load(t, s).impedance, u = 1;
    for (std::size_t i = t.size(); i-- > 0;) {
        auto const [ch, sh, z] = chain.step(i);
        Complex const next = ch * p + z * sh * u;
        u = ch * u + sh / z * p;
        p = next;
    }
    return p / u;
}

void sensitivities(Tube const& t, Complex pole, std::vector<double>& by_area, std::vector<double>* by_length) {
    std::size_t const count = t.size();
    Chain chain(t, pole);
    std::vector<Chain::Step> steps(count);
    std::vector<std::pair<Complex, Complex>> before(count + 1);
    before[0] = {1, 0};
    for (std::size_t i = 0; i < count; ++i) {
        steps[i] = chain.step(i);
        auto const& [ch, sh, z] = steps[i];
        auto const& [p, u] = before[i];
        before[i + 1] = {ch * p - z * sh * u, ch * u - sh / z * p};
    }
    auto const lips = load(t, pole);
    Complex const nudge = pole * 1e-5;
    Complex const slope = (denominator(t, pole + nudge) - denominator(t, pole - nudge)) / (2.0 * nudge);
    // A change dD of the denominator moves the pole by -dD/slope, and ln F by the imaginary part of that over 2 pi F.
    auto const relative = [&](Complex change) { return (-change / slope).imag() / pole.imag(); };
    by_area.resize(count);
    if (by_length) by_length->resize(count);
    Complex a = 1, b = -lips.impedance; // what the rest of the chain does to (P, U)
    for (std::size_t i = count; i-- > 0;) {
        auto const& [ch, sh, z] = steps[i];
        auto const& [p, u] = before[i];
        by_area[i] = relative(a * z * sh * u - b * sh / z * p);
        if (by_length)
            (*by_length)[i] = relative(chain.medium_here().sigma * (t.length[i] / c) * (a * (sh * p - z * ch * u) + b * (sh * u - ch / z * p)));
        Complex const next = a * ch - b * sh / z;
        b = b * ch - a * z * sh;
        a = next;
    }
    by_area[count - 1] += relative(-before[count].second * lips.by_log_area);
}

} // namespace vowelway::tube
