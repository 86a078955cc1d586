// SPDX-License-Identifier: MIT
// Quantities: what crosses a public header has a unit, or a kind of its own.
#pragma once

#include <boost/units/quantity.hpp>
#include <boost/units/systems/si/area.hpp>
#include <boost/units/systems/si/frequency.hpp>
#include <boost/units/systems/si/length.hpp>
#include <boost/units/systems/si/time.hpp>
#include <compare>

namespace vowelway {

using Frequency = boost::units::quantity<boost::units::si::frequency>; ///< hertz
using Duration = boost::units::quantity<boost::units::si::time>;       ///< seconds
using Length = boost::units::quantity<boost::units::si::length>;       ///< metres
using Area = boost::units::quantity<boost::units::si::area>;           ///< square metres

constexpr Frequency hertz(double value) { return value * boost::units::si::hertz; }
constexpr Duration seconds(double value) { return value * boost::units::si::seconds; }
constexpr Length centimetres(double value) { return value * 0.01 * boost::units::si::metres; }
constexpr Area square_centimetres(double value) { return value * 1e-4 * boost::units::si::square_metre; }

/// From one moment to another, start <= end.
struct TimeSpan {
    Duration start, end;
    Duration length() const { return end - start; }
};

constexpr double in_hertz(Frequency f) { return f.value(); }
constexpr double in_seconds(Duration t) { return t.value(); }
constexpr double in_centimetres(Length l) { return l.value() * 100; }
constexpr double in_square_centimetres(Area a) { return a.value() * 1e4; }

/// A number on a scale of its own kind, so that cents are never added to decibels.
/// Kinds add and subtract among themselves and stretch by plain numbers.
template <class Kind> struct Scale {
    double value = 0;

    friend constexpr Scale operator+(Scale a, Scale b) { return {a.value + b.value}; }
    friend constexpr Scale operator-(Scale a, Scale b) { return {a.value - b.value}; }
    friend constexpr Scale operator-(Scale a) { return {-a.value}; }
    friend constexpr Scale operator*(Scale a, double k) { return {a.value * k}; }
    friend constexpr Scale operator*(double k, Scale a) { return {a.value * k}; }
    friend constexpr Scale operator/(Scale a, double k) { return {a.value / k}; }
    friend constexpr double operator/(Scale a, Scale b) { return a.value / b.value; }
    friend constexpr auto operator<=>(Scale const&, Scale const&) = default;
};

using Cents = Scale<struct CentsKind>;       ///< 1/1200 of an octave: a musical interval
using Decibels = Scale<struct DecibelsKind>; ///< 20 log10 of a ratio of pressures
using Bark = Scale<struct BarkKind>;         ///< critical-band rate, a place or a distance along the ear

constexpr Cents semitones(double n) { return {100 * n}; }
constexpr double in_semitones(Cents c) { return c.value / 100; }

inline namespace literals {
constexpr Frequency operator""_Hz(long double v) { return hertz(static_cast<double>(v)); }
constexpr Frequency operator""_Hz(unsigned long long v) { return hertz(static_cast<double>(v)); }
constexpr Duration operator""_s(long double v) { return seconds(static_cast<double>(v)); }
constexpr Duration operator""_s(unsigned long long v) { return seconds(static_cast<double>(v)); }
constexpr Length operator""_cm(long double v) { return centimetres(static_cast<double>(v)); }
constexpr Length operator""_cm(unsigned long long v) { return centimetres(static_cast<double>(v)); }
} // namespace literals

} // namespace vowelway
