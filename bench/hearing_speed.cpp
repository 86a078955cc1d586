// SPDX-License-Identifier: MIT
// How long the acoustics of one shape take: levels, heard place, heard vowel; and a vowel's set of reachable
// shapes.
#include "vowelway/acoustics/hearing.hpp"
#include "vowelway/acoustics/reachable.hpp"

#include <array>
#include <ctime>
#include <fmt/format.h>

using namespace vowelway;

namespace {

double processor_seconds() {
    timespec t;
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &t);
    return static_cast<double>(t.tv_sec) + 1e-9 * static_cast<double>(t.tv_nsec);
}

template <class Work> double nanoseconds(int times, Work work) {
    double const start = processor_seconds();
    for (int k = 0; k < times; ++k) work(k);
    return 1e9 * (processor_seconds() - start) / times;
}

} // namespace

int main() {
    struct Known {
        char const* ipa;
        double f1, f2;
    };
    // Hillenbrand et al. 1995, women.
    constexpr std::array known{Known{"i", 437, 2761}, Known{"e", 536, 2530}, Known{"ɛ", 731, 2058},
                               Known{"ɑ", 936, 1551}, Known{"ɔ", 781, 1136}, Known{"o", 555, 1035},
                               Known{"u", 459, 1105}};
    auto const quarter = acoustics::quarter_wave(14.7_cm);
    std::vector<std::pair<Vowel, acoustics::ResonanceSet>> vowels;
    for (auto const& v : known)
        vowels.emplace_back(parse_ipa(v.ipa), acoustics::resonance_set(hertz(v.f1), hertz(v.f2), quarter));
    acoustics::VowelSpace const space(vowels, quarter);
    double sum = 0;
    for (double fo : {110.0, 220.0, 440.0, 880.0}) {
        acoustics::NoteSpectrum const note(Pitch(hertz(fo)), quarter);
        auto const& shape = vowels[2].second;
        std::array<double, acoustics::NoteSpectrum::most_harmonics> powers{};
        double const level = nanoseconds(200000, [&](int) { sum += note.level(shape).value; });
        double const place = nanoseconds(200000, [&](int) { sum += heard_place(note, shape).front.value; });
        note.powers(shape, powers);
        auto const there = heard_place(note, shape, powers);
        double const name = nanoseconds(200000, [&](int k) {
            sum += space.hear(there, static_cast<std::size_t>(k) % known.size()).distance.value;
        });
        double const table =
            nanoseconds(2000, [&](int) { sum += acoustics::NoteSpectrum(Pitch(hertz(fo)), quarter).size(); });
        fmt::print("fo {:.0f} Hz, {} harmonics: level {:.0f} ns ({:.1f} ns a harmonic), heard place {:.0f} "
                   "ns, its name and recognition {:.0f} ns; "
                   "table of the note {:.1f} us\n",
                   fo, note.size(), level, level / note.size(), place, name, table / 1000);
    }
    for (auto const& v : known) {
        VowelResonances own;
        own.vowel = parse_ipa(v.ipa);
        own.r1.centre = hertz(v.f1);
        own.r2.centre = hertz(v.f2);
        std::size_t shapes = 0;
        double const set =
            nanoseconds(5, [&](int) { shapes = acoustics::ReachableSet(own, 14.7_cm).shapes().size(); });
        fmt::print("/{}/: {} reachable shapes in {:.1f} ms, {:.0f} us each\n", v.ipa, shapes, set / 1e6,
                   set / 1e3 / static_cast<double>(shapes));
    }
    return sum == 0; // the sums are used
}
