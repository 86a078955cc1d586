// SPDX-License-Identifier: MIT
#include "acoustics/tube.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace vowelway::acoustics::tube {

namespace {

constexpr double pi = std::numbers::pi;

// Constants of Sondhi & Schroeter 1987: friction and heat, and the wall as mass, spring and resistance.
constexpr double wall_damping = 130 * pi, wall_spring = (30 * pi) * (30 * pi), friction = 4;
constexpr double wall_mass = (406 * pi) * (406 * pi);
// Story, Laukkanen & Titze 2000, as the model is used by its author: a constant in place of the frictional
// term of the impedance, and a wall resonating at 200 Hz in the closed tract.
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

// A product without the library's search for infinities, which costs as much as the product.
inline Complex times(Complex const& a, Complex const& b) {
    return {a.real() * b.real() - a.imag() * b.imag(), a.real() * b.imag() + a.imag() * b.real()};
}

// One section's matrix [P U]lipward = [ch, -Z sh; -sh/Z, ch] [P U]glottisward, Z = gamma rho c / A. With V =
// gamma rho c U it is [P V]lipward = [ch, -sh/A; -A sh, ch] [P V]glottisward. Sections of one length share ch
// and sh.
class Chain {
  public:
    Chain(Tube const& t, Complex s) : tube_(t), medium_(medium(t.loss, s)) {}

    /// Makes ch and sh those of section i.
    void at(std::size_t i) {
        if (tube_.length[i] == length_) return;
        length_ = tube_.length[i];
        Complex const e = std::exp(medium_.sigma * (length_ / c)), back = 1.0 / e;
        ch = 0.5 * (e + back);
        sh = 0.5 * (e - back);
    }
    /// V over U.
    Complex scale() const { return medium_.gamma * (rho * c); }
    Complex sigma() const { return medium_.sigma; }

    Complex ch, sh;

  private:
    Tube const& tube_;
    Medium medium_;
    double length_ = -1;
};

// Phase of the lossless tube at the lips; grows with frequency. A rotation along each section; at each joint
// the tangent is scaled, which leaves the multiples of a quarter turn where they are.
double lossless_phase(Tube const& t, double f) {
    double const k = 2 * pi * f / c;
    double phase = 0;
    for (std::size_t i = 0; i < t.size(); ++i) {
        if (i > 0) {
            double const turns = std::round(phase / pi);
            double const part = phase - turns * pi;
            // Pressure over flow is the same on both sides; the angle's tangent is flow times rho c/A over
            // pressure.
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
    Complex p = 1, v = 0;
    for (std::size_t i = 0; i < t.size(); ++i) {
        chain.at(i);
        double const area = t.area[i];
        Complex const next = times(chain.ch, p) - times(chain.sh, v) * (1 / area);
        v = times(chain.ch, v) - times(chain.sh, p) * area;
        p = next;
    }
    return p - load(t, s).impedance * v / chain.scale();
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

std::optional<Complex> find_pole(Tube const& t, Complex guess, std::vector<Complex> const& known) {
    auto const value = [&](Complex at) {
        Complex d = denominator(t, at);
        for (auto const& pole : known) d /= at - pole;
        return d;
    };
    Complex before = guess, s = guess + Complex(-3, 3);
    Complex d_before = value(before), d = value(s);
    for (int k = 0; k < 40; ++k) {
        Complex const slope = (d - d_before) / (s - before);
        Complex step = -d / slope;
        double const size = std::abs(step);
        if (!std::isfinite(size)) return std::nullopt;
        if (double const most = 0.25 * std::abs(s); size > most) step *= most / size;
        before = s;
        d_before = d;
        s += step;
        // The next step would be shorter by a factor of thousands.
        if (size < 0.5) return s;
        d = value(s);
    }
    return std::nullopt;
}

namespace {

// The pole that losses make of a lossless resonance.
std::optional<Complex> pole_from(Tube const& t, double lossless, std::vector<Complex> const& known) {
    if (t.loss == TractLoss::none) return Complex(0, 2 * pi * lossless);
    // Yielding walls raise a resonance to hypot(F, about 200 Hz): Stevens 1998. Wide resonances are looked
    // for last.
    double const f = t.loss == TractLoss::radiation ? lossless : std::hypot(lossless, 200);
    for (double bandwidth : {60.0, 300.0, 1000.0}) {
        auto const pole = find_pole(t, pole_at(f, bandwidth), known);
        if (pole && frequency_of(*pole) > 60 && bandwidth_of(*pole) > 0) return pole;
    }
    return std::nullopt;
}

template <class More> std::vector<Complex> poles_while(Tube const& t, More more) {
    std::vector<Complex> out;
    for (int n = 1;; ++n) {
        double const f = lossless_resonance(t, n);
        if (!more(n, f)) break;
        if (auto const pole = pole_from(t, f, out)) out.push_back(*pole);
    }
    std::sort(out.begin(), out.end(), [](Complex a, Complex b) { return a.imag() < b.imag(); });
    return out;
}

} // namespace

std::vector<Complex> first_poles(Tube const& t, int count) {
    return poles_while(t, [&](int n, double) { return n <= count; });
}

std::vector<Complex> poles_below(Tube const& t, double up_to) {
    return poles_while(t, [&](int, double f) { return f < up_to; });
}

TwoPort two_port(Tube const& t, Complex s, std::size_t from, std::size_t to) {
    Chain chain(t, s);
    Complex a = 1, b = 0, low = 0, d = 1; // of P and V
    for (std::size_t i = from; i < to; ++i) {
        chain.at(i);
        Complex const up = chain.sh / t.area[i], down = chain.sh * t.area[i];
        Complex const na = chain.ch * a - up * low, nb = chain.ch * b - up * d;
        low = chain.ch * low - down * a;
        d = chain.ch * d - down * b;
        a = na;
        b = nb;
    }
    return {a, b * chain.scale(), low / chain.scale(), d};
}

Complex radiation_load(Tube const& t, Complex s) { return load(t, s).impedance; }

Complex input_impedance(Tube const& t, double f) {
    Complex const s(0, 2 * pi * f);
    Chain chain(t, s);
    // Backwards from the load: Z = (Zl ch + z sh)/(ch + Zl/z sh).
    Complex p = load(t, s).impedance, v = chain.scale();
    for (std::size_t i = t.size(); i-- > 0;) {
        chain.at(i);
        double const area = t.area[i];
        Complex const next = times(chain.ch, p) + times(chain.sh, v) * (1 / area);
        v = times(chain.ch, v) + times(chain.sh, p) * area;
        p = next;
    }
    return p / v * chain.scale();
}

void sensitivities(Tube const& t, Complex pole, std::vector<double>& by_area,
                   std::vector<double>* by_length) {
    std::size_t const count = t.size();
    Chain chain(t, pole);
    std::vector<std::pair<Complex, Complex>> before(count + 1);
    before[0] = {1, 0};
    for (std::size_t i = 0; i < count; ++i) {
        chain.at(i);
        auto const& [p, v] = before[i];
        before[i + 1] = {times(chain.ch, p) - times(chain.sh, v) * (1 / t.area[i]),
                         times(chain.ch, v) - times(chain.sh, p) * t.area[i]};
    }
    auto const lips = load(t, pole);
    Complex const nudge = pole * 1e-5;
    Complex const slope = (denominator(t, pole + nudge) - denominator(t, pole - nudge)) / (2.0 * nudge);
    // A change dD of the denominator moves the pole by -dD/slope, and ln F by the imaginary part of that over
    // 2 pi F.
    Complex const share = -1.0 / slope / pole.imag();
    auto const relative = [&](Complex change) {
        return change.real() * share.imag() + change.imag() * share.real();
    };
    by_area.resize(count);
    if (by_length) by_length->resize(count);
    Complex a = 1, b = -lips.impedance / chain.scale(); // what the rest of the chain does to (P, V)
    for (std::size_t i = count; i-- > 0;) {
        chain.at(i);
        auto const& [p, v] = before[i];
        double const area = t.area[i];
        by_area[i] = relative(times(chain.sh, times(a, v) * (1 / area) - times(b, p) * area));
        if (by_length) {
            Complex const to_p = times(chain.sh, p) - times(chain.ch, v) * (1 / area),
                          to_v = times(chain.sh, v) - times(chain.ch, p) * area;
            (*by_length)[i] =
                relative(times(chain.sigma() * (t.length[i] / c), times(a, to_p) + times(b, to_v)));
        }
        Complex const next = times(a, chain.ch) - times(b, chain.sh) * area;
        b = times(b, chain.ch) - times(a, chain.sh) * (1 / area);
        a = next;
    }
    by_area[count - 1] += relative(-before[count].second / chain.scale() * lips.by_log_area);
}

} // namespace vowelway::acoustics::tube
