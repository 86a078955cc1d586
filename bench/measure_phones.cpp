// SPDX-License-Identifier: MIT
// What phones and desks do: how often the 95 % interval of a single take holds F1 and F2 under each
// condition, and what is recognised. Prints the figures that docs/measuring.md quotes. Run from the root of
// the project; an argument chooses one kind of sound: whisper, creak, sung, tract-whisper, tract-creak,
// tract-sung; a second one the conditions whose name begins so; a third one every how manieth speaker; a
// fourth one how often, each time with other speakers and other random numbers (or "3-5", the fourth and
// fifth time); a fifth one, "misses", lists what the interval does not hold. Gross errors
// with a small deviation are listed. Files are made by the ffmpeg program; without it those rows are left
// out.
#include "phones.hpp"
#include "tract_takes.hpp"

#include <fmt/core.h>

#include <cstdlib>

namespace {

using namespace vowelway;
using namespace vowelway::probes;

struct Spoken {
    make::Samples sound;
    std::vector<std::array<double, 3>> truths;
    std::vector<double> places; ///< of the noise, whole tracts only
};

Spoken cascades(Maker& m, Speaker const& s, ProbeKind kind) {
    double const singer = m.draw(-1.5, 1.5), fo = m.draw(80, 160);
    Spoken all;
    std::vector<make::Samples> takes;
    for (auto const& v : listed) {
        takes.push_back(m.take(s, v, kind, singer, fo));
        all.truths.push_back(m.truth);
    }
    all.sound = m.together(takes, {40, true});
    return all;
}

std::optional<Spoken> tracts(Maker& m, Speaker const& s, ProbeKind kind) {
    double const singer = m.draw(-1.5, 1.5), length = 17700 / spacing_of(s.group), fo = m.draw(80, 160);
    Spoken all;
    std::vector<make::Samples> takes;
    for (auto const& v : listed) {
        auto const f = m.probed(s, v, kind, singer);
        double const place = std::array{0.0, 0.0, 0.6, 0.95}[static_cast<std::size_t>(m.draw(0, 4))];
        auto take = tract_take(f, v, length, kind, place, fo, m);
        if (!take) return std::nullopt;
        takes.push_back(std::move(take->sound)), all.truths.push_back(take->truth);
        all.places.push_back(place);
    }
    all.sound = m.together(takes, {40, true});
    return all;
}

struct Tally {
    int takes = 0, found = 0, sure_and_gross = 0;
    std::array<int, 2> held{};
    std::array<std::vector<double>, 2> errors, claimed;
    std::map<std::string, int> said;
    std::map<double, std::array<int, 2>> in_front; ///< place of the noise: said to be in front, takes
    std::string gross, missed;                     ///< each of those, in words
};

bool misses_are_listed = false;

double middle(std::vector<double> v) {
    if (v.empty()) return 0;
    std::sort(v.begin(), v.end());
    return v[v.size() / 2];
}

void count(Tally& t, analysis::Measurements const& m, Spoken const& truth) {
    for (auto const& p : m.processing)
        for (auto const& one : p) ++t.said[std::string(to_string(one.kind))];
    if (m.takes.size() != listed.size()) return;
    for (std::size_t i = 0; i < listed.size(); ++i) {
        auto const& take = m.takes[i];
        if (!take.usable()) continue;
        ++t.found;
        if (!truth.places.empty() && take.excitation.kind == ProbeKind::whisper)
            t.in_front[truth.places[i]][0] += take.measured.noise_in_front, ++t.in_front[truth.places[i]][1];
        bool gross = false;
        for (std::size_t k = 0; k < 2; ++k) {
            auto const& f = *take.measured.formants[k];
            double const error = in_hertz(f.centre) - truth.truths[i][k],
                         share = std::abs(error) / truth.truths[i][k];
            bool const held = std::abs(error) <= 1.96 * in_hertz(f.sd);
            t.held[k] += held;
            if (!held)
                t.missed += fmt::format(
                    "    /{}/ F{} {:.0f} Hz, read as {:.0f} +-{:.0f}; noise at {:.2f}, whiteness {:.3f}\n",
                    listed[i], k + 1, truth.truths[i][k], in_hertz(f.centre), in_hertz(f.sd),
                    truth.places.empty() ? 0 : truth.places[i], take.measured.whiteness);
            t.errors[k].push_back(100 * share), t.claimed[k].push_back(100 * (f.sd / f.centre));
            if (share > 0.15 && f.sd < 0.05 * f.centre) {
                gross = true;
                t.gross += fmt::format("    /{}/ F{} {:.0f} Hz, read as {:.0f} +-{:.0f}\n", listed[i], k + 1,
                                       truth.truths[i][k], in_hertz(f.centre), in_hertz(f.sd));
            }
        }
        t.sure_and_gross += gross;
    }
}

void row(std::string const& kind, Condition const& c, Tally const& t) {
    auto const share = [&](int n) { return t.found ? 100.0 * n / t.found : 0; };
    fmt::print(
        "{:13} {:40} {:3} of {:3} takes; holds F1 {:3.0f}, F2 {:3.0f} %; error {:4.1f}, {:4.1f} %; deviation "
        "{:4.1f}, {:4.1f} %; gross and sure {}",
        kind, c.name, t.found, t.takes, share(t.held[0]), share(t.held[1]), middle(t.errors[0]),
        middle(t.errors[1]), middle(t.claimed[0]), middle(t.claimed[1]), t.sure_and_gross);
    for (auto const& [name, n] : t.said) fmt::print("; {} {}", name, n);
    for (auto const& [place, n] : t.in_front)
        fmt::print("; noise at {:.2f} called in front {} of {}", place, n[0], n[1]);
    fmt::print("\n{}{}", t.gross, misses_are_listed ? t.missed : "");
    std::fflush(stdout);
}

struct Times {
    std::size_t from = 0, to = 1; ///< each with speakers and random numbers of its own
};

void run(std::string const& name, bool whole_tracts, ProbeKind kind, std::string const& only,
         std::size_t every_n, Times const& times) {
    for (auto const& c : conditions()) {
        if (c.name.rfind(only, 0) != 0) continue;
        Tally tally;
        for (std::size_t time = times.from; time < times.to; ++time) {
            Maker m;
            m.random.seed(static_cast<unsigned>(7 + 1000 * time));
            auto const all = speakers();
            for (std::size_t i = time % every_n; i < all.size(); i += every_n) {
                auto const spoken = whole_tracts ? tracts(m, all[i], kind) : cascades(m, all[i], kind);
                if (!spoken) continue;
                auto const r = through(c, spoken->sound);
                if (!r) continue;
                tally.takes += static_cast<int>(listed.size());
                if (auto const measured = try_measure(*r, asked(all[i], list)))
                    count(tally, *measured, *spoken);
            }
        }
        row(name, c, tally);
    }
}

} // namespace

int main(int argc, char** argv) {
    std::string const chosen = argc > 1 ? argv[1] : "", only = argc > 2 ? argv[2] : "";
    std::size_t const n = argc > 3 ? std::strtoul(argv[3], nullptr, 10) : 8;
    std::string const often = argc > 4 ? argv[4] : "1";
    Times times{0, std::strtoul(often.c_str(), nullptr, 10)};
    if (auto const dash = often.find('-'); dash != std::string::npos)
        times = {times.to, std::strtoul(often.c_str() + dash + 1, nullptr, 10)};
    misses_are_listed = argc > 5 && std::string(argv[5]) == "misses";
    struct Kind {
        std::string name;
        bool tract;
        ProbeKind kind;
    };
    for (auto const& k :
         {Kind{"whisper", false, ProbeKind::whisper}, Kind{"creak", false, ProbeKind::creak},
          Kind{"sung", false, ProbeKind::sung}, Kind{"tract-whisper", true, ProbeKind::whisper},
          Kind{"tract-creak", true, ProbeKind::creak}, Kind{"tract-sung", true, ProbeKind::sung}})
        if (chosen.empty() || chosen == k.name) run(k.name, k.tract, k.kind, only, n, times);
}
