// SPDX-License-Identifier: MIT
// How well resonances are measured: synthetic probes of known resonances, men, women and children, under
// good and bad conditions. Prints the figures that docs/measuring.md quotes.
// Run from the root of the project; an argument chooses one part.
#include "probes.hpp"

#include "analysis/resample.hpp"
#include "vowelway/analysis/formants.hpp"
#include "vowelway/analysis/linear_prediction.hpp"
#include "vowelway/analysis/steady.hpp"
#include "vowelway/io/audio/read_audio.hpp"

#include <fmt/core.h>
#include <unistd.h>

#include <cstdlib>
#include <filesystem>
#include <functional>
#include <map>
#include <span>
#include <sstream>
#include <string>

namespace {

using namespace vowelway;
using namespace vowelway::probes;

struct Token {
    std::string group, speaker, ipa;
    double fo;
    std::array<double, 3> formants;
};

std::vector<Token> read_tokens(std::string const& path) {
    std::ifstream file(path);
    std::vector<Token> tokens;
    std::string line;
    std::getline(file, line);
    while (std::getline(file, line)) {
        std::istringstream row(line);
        Token t;
        std::string f0, f1, f2, f3;
        std::getline(row, t.group, ','), std::getline(row, t.speaker, ','), std::getline(row, t.ipa, ',');
        std::getline(row, f0, ','), std::getline(row, f1, ','), std::getline(row, f2, ','),
            std::getline(row, f3);
        t.fo = std::stod(f0);
        t.formants = {std::stod(f1), std::stod(f2), std::stod(f3)};
        tokens.push_back(t);
    }
    if (tokens.empty())
        throw std::runtime_error("no tokens in " + path + ": run from the root of the project");
    return tokens;
}

/// c / 2L with the usual tract lengths: 16.9 and 14.1 cm (K. N. Stevens, Acoustic Phonetics, 1998); children
/// by P&B's third formants against the men's.
double spacing_of(std::string const& group) { return group == "m" ? 1036 : group == "w" ? 1241 : 1400; }

using Means = std::map<std::pair<std::string, std::string>, std::array<double, 3>>;
Means means_of(std::vector<Token> const& tokens) {
    Means sums;
    std::map<std::pair<std::string, std::string>, int> counts;
    for (auto const& t : tokens) {
        for (std::size_t k = 0; k < 3; ++k) sums[{t.group, t.ipa}][k] += t.formants[k];
        ++counts[{t.group, t.ipa}];
    }
    for (auto& [key, sum] : sums)
        for (auto& s : sum) s /= counts[key];
    return sums;
}

struct Tally {
    std::array<std::vector<double>, 3> errors, deviations; ///< relative error; error in SDs
    std::array<int, 3> missing{}, asked{};

    void add(analysis::FormantReading const& r, std::array<double, 3> const& truth) {
        for (std::size_t k = 0; k < 3; ++k) {
            ++asked[k];
            if (!r.formants[k]) {
                ++missing[k];
                continue;
            }
            double const error = in_hertz(r.formants[k]->centre) - truth[k];
            errors[k].push_back(error / truth[k]);
            deviations[k].push_back(error / in_hertz(r.formants[k]->sd));
        }
    }
    void print(std::string const& name) const {
        for (std::size_t k = 0; k < 3; ++k) {
            auto sizes = errors[k];
            if (sizes.empty()) continue;
            for (auto& e : sizes) e = std::abs(e);
            std::sort(sizes.begin(), sizes.end());
            auto signed_errors = errors[k];
            std::sort(signed_errors.begin(), signed_errors.end());
            auto const n = static_cast<double>(sizes.size());
            auto const gross = std::count_if(sizes.begin(), sizes.end(), [](double e) { return e > 0.15; });
            auto const held = std::count_if(deviations[k].begin(), deviations[k].end(),
                                            [](double d) { return std::abs(d) <= 1.96; });
            fmt::print(
                "{:34} F{} median |error| {:5.2f} %  90 % {:5.2f} %  bias {:+5.2f} %  gross {:4.2f} %  "
                "missing {:4.2f} %  95 % interval holds {:5.1f} %\n",
                k == 0 ? name : "", k + 1, 100 * sizes[sizes.size() / 2], 100 * sizes[sizes.size() * 9 / 10],
                100 * signed_errors[signed_errors.size() / 2], 100 * static_cast<double>(gross) / n,
                100.0 * missing[k] / asked[k], 100 * static_cast<double>(held) / n);
        }
    }
};

struct Condition {
    std::string name;
    analysis::ProbeKind kind = analysis::ProbeKind::whisper;
    double snr_db = 30;
    double fo = 0;
    double wider_from = 1, wider_to = 2;
    double slope = 0.5; ///< of the whisper's noise, drawn from -slope to slope
    double vibrato = 0, length = 1;
    int every = 1;
};

Source drawn(Condition const& c, std::uniform_real_distribution<double>& unit, std::mt19937& random) {
    Source s{.kind = c.kind, .rate_hz = c.fo, .vibrato = c.vibrato};
    if (c.kind == analysis::ProbeKind::whisper)
        s.slope = c.slope * (2 * unit(random) - 1);
    else if (c.kind == analysis::ProbeKind::creak)
        s.rate_hz = 25 + 40 * unit(random);
    else {
        s.corner = 1500 + 2500 * unit(random);
        s.open = 0.45 + 0.25 * unit(random);
    }
    return s;
}

analysis::Expectation due(std::array<double, 3> const& m, std::string const& group) {
    return {{{{hertz(m[0]), 0.18}, {hertz(m[1]), 0.15}, {hertz(m[2]), 0.12}}}, hertz(spacing_of(group))};
}

void mixed_vowels(std::vector<Token> const& tokens, Condition const& c) {
    auto const means = means_of(tokens);
    std::mt19937 random(7);
    std::uniform_real_distribution<double> unit;
    Tally tally;
    for (std::size_t i = 0; i < tokens.size(); i += static_cast<std::size_t>(c.every)) {
        auto const& t = tokens[i];
        double const rate = c.kind == analysis::ProbeKind::whisper ? 16000 : 48000;
        double const wider = c.wider_from + (c.wider_to - c.wider_from) * unit(random);
        double const spacing = spacing_of(t.group) * (0.92 + 0.16 * unit(random));
        auto const all = make::peaks(t.formants, spacing, 7800, wider);
        auto const n = static_cast<std::size_t>(c.length * rate);
        auto sound = make::resonate(excite(drawn(c, unit, random), n, rate, random), all, rate);
        if (rate > 16000) sound = analysis::resample(make::scaled(sound), hertz(rate), hertz(16000)).samples;
        auto const pause = make::white(8000, random); // what the microphone hears before and after
        double const noise_size = std::sqrt(make::power(sound) * std::pow(10, -c.snr_db / 10));
        sound = make::with_noise(std::move(sound), c.snr_db, random);
        auto const m = means.at({t.group, t.ipa});
        auto const e = due(m, t.group);
        analysis::FormantOptions options;
        options.kind = c.kind;
        double most = 1e-12;
        for (double v : sound) most = std::max(most, std::abs(v));
        auto const scaled_pause = make::scaled(pause, 1.0);
        double pause_most = 0;
        for (double v : pause) pause_most = std::max(pause_most, std::abs(v));
        auto noise = analysis::average_spectrum(scaled_pause, hertz(16000));
        for (auto& p : noise.power) p *= std::pow(pause_most * noise_size * 0.3 / most, 2);
        options.noise = &noise;
        if (c.kind == analysis::ProbeKind::sung) options.fo = hertz(c.fo);
        tally.add(read_formants(make::scaled(sound), hertz(16000), e, options), t.formants);
    }
    tally.print(c.name);
}

constexpr double listening_rate = 16000;

/// One token made anew, of unit power, at the rate it is listened to.
make::Samples probe_of(Token const& t, Condition const& c, std::uniform_real_distribution<double>& unit,
                       std::mt19937& random) {
    auto const peaks =
        make::peaks(t.formants, spacing_of(t.group) * (0.92 + 0.16 * unit(random)), 7800, 1 + unit(random));
    double const made_at = c.kind == analysis::ProbeKind::whisper ? listening_rate : 48000;
    auto sound = make::resonate(
        excite(drawn(c, unit, random), static_cast<std::size_t>(made_at), made_at, random), peaks, made_at);
    if (made_at > listening_rate)
        sound = analysis::resample(make::scaled(sound), hertz(made_at), hertz(listening_rate)).samples;
    double const size = std::sqrt(make::power(sound));
    for (double& v : sound) v /= size;
    return sound;
}

/// Tokens one after another with pauses of 0.8 s, in a room, with noise.
make::Samples recording_of(std::span<Token const> tokens, Condition const& c, double t60, double direct_db,
                           std::uniform_real_distribution<double>& unit, std::mt19937& random) {
    make::Samples all(8000, 0.0);
    for (auto const& t : tokens) {
        auto const sound = probe_of(t, c, unit, random);
        all.insert(all.end(), sound.begin(), sound.end());
        all.insert(all.end(), static_cast<std::size_t>(0.8 * listening_rate), 0.0);
    }
    if (t60 > 0) all = in_room(std::move(all), listening_rate, t60, direct_db, random);
    auto const hiss = make::white(all.size(), random);
    for (std::size_t n = 0; n < all.size(); ++n) all[n] += std::pow(10, -c.snr_db / 20) * hiss[n];
    return all;
}

analysis::FormantReading read_in_room(analysis::Heard const& heard, analysis::Sound const& sound,
                                      Condition const& c, analysis::Expectation const& expected) {
    auto const steady = steady_part(sound, {sound.start, sound.start + sound.length()});
    analysis::FormantOptions options;
    options.kind = c.kind;
    options.room = heard.room;
    if (heard.noise) options.noise = &*heard.noise;
    if (c.kind == analysis::ProbeKind::sung) options.fo = hertz(c.fo);
    return read_formants(part(sound, steady->span.start, steady->span.end), hertz(listening_rate), expected,
                         options);
}

double median(std::vector<double> v) {
    std::sort(v.begin(), v.end());
    return v.empty() ? 0.0 : v[v.size() / 2];
}

/// Recordings of five tokens with pauses of 0.8 s, each recording in a room of its own, listened to as a
/// whole: the room is estimated from how the sounds die away. t60 0: no room.
void in_rooms(std::vector<Token> const& tokens, Condition const& c, double t60, double direct_db) {
    constexpr std::size_t together = 5;
    auto const means = means_of(tokens);
    std::mt19937 random(11);
    std::uniform_real_distribution<double> unit;
    Tally tally;
    std::vector<double> times, shares;
    int unheard = 0, recordings = 0;
    std::vector<Token> chosen;
    for (std::size_t i = 0; i < tokens.size(); i += 2) chosen.push_back(tokens[i]);
    for (std::size_t first = 0; first + together <= chosen.size(); first += together) {
        auto const here = std::span(chosen).subspan(first, together);
        auto const heard = listened(make::scaled(recording_of(here, c, t60, direct_db, unit, random)));
        ++recordings;
        if (heard.room)
            times.push_back(in_seconds(heard.room->reverberation)), shares.push_back(heard.room->share);
        if (heard.stretches.size() != together) {
            ++unheard;
            continue;
        }
        for (std::size_t i = 0; i < together; ++i)
            tally.add(read_in_room(heard, heard.stretches[i], c,
                                   due(means.at({here[i].group, here[i].ipa}), here[i].group)),
                      here[i].formants);
    }
    tally.print(c.name);
    fmt::print("  room found in {} of {} recordings: median T60 {:.2f} s, share of the walls {:.2f} (true "
               "{:.2f}, {:.2f}); not split rightly: {}\n",
               times.size(), recordings, median(times), median(shares), t60,
               t60 > 0 ? 1 / (1 + std::pow(10, direct_db / 10)) : 0.0, unheard);
}

/// Every fourth token one after another, coded as AAC at 64 kb/s by the ffmpeg program, and read back.
void coded(std::vector<Token> const& tokens) {
    auto const means = means_of(tokens);
    std::mt19937 random(7);
    std::uniform_real_distribution<double> unit;
    std::vector<float> all;
    std::vector<Token const*> said;
    for (std::size_t i = 0; i < tokens.size(); i += 4) {
        auto const& t = tokens[i];
        auto const peaks = make::peaks(t.formants, spacing_of(t.group) * (0.92 + 0.16 * unit(random)), 7800,
                                       1 + unit(random));
        auto sound =
            make::resonate(make::sloped(make::white(48000, random), unit(random) - 0.5), peaks, 48000);
        auto const x = make::scaled(make::with_noise(std::move(sound), 30, random));
        all.insert(all.end(), x.begin(), x.end());
        said.push_back(&t);
    }
    auto const folder = std::filesystem::temp_directory_path();
    auto const own = "vowelway_bench_" + std::to_string(::getpid()); // two may run at once
    auto const plain = (folder / (own + ".wav")).string(), packed = (folder / (own + ".m4a")).string();
    write_wav(plain, all, 48000);
    if (std::system(("ffmpeg -loglevel error -y -i " + plain + " -b:a 64k " + packed).c_str()) != 0) {
        fmt::print("whisper as AAC: not measured, there is no ffmpeg program\n");
        return;
    }
    std::vector<float> back;
    io::read_audio(packed, hertz(16000), [&](std::span<float const> s) {
        back.insert(back.end(), s.begin(), s.end());
        return true;
    });
    Tally tally;
    for (std::size_t k = 0; k < said.size(); ++k) {
        auto const& t = *said[k];
        auto const m = means.at({t.group, t.ipa});
        auto const e = due(m, t.group);
        tally.add(read_formants(std::span(back).subspan(16000 * k + 1000, 14000), hertz(16000), e, {}),
                  t.formants);
    }
    tally.print("whisper, AAC 64 kb/s");
    std::filesystem::remove(plain);
    std::filesystem::remove(packed);
}

/// Right order, right ceiling, white excitation, no noise: the error against the Cramer-Rao bound.
void against_the_bound() {
    struct Case {
        std::vector<make::Peak> peaks;
    };
    for (auto const& peaks : std::vector<std::vector<make::Peak>>{
             {{700, 60}, {1200, 80}, {2500, 110}, {3500, 160}, {4400, 200}},
             {{320, 60}, {2300, 100}, {3000, 120}, {3700, 160}, {4500, 200}},
             {{350, 60}, {900, 70}, {2300, 100}, {3400, 160}, {4400, 200}},
             {{550, 120}, {1800, 150}, {2500, 200}, {3500, 250}, {4500, 300}}}) {
        constexpr int seeds = 200;
        double const rate = 10000;
        std::array<double, 2> squares{}, bounds{};
        std::array<int, 2> held{};
        for (int seed = 0; seed < seeds; ++seed) {
            std::mt19937 random(static_cast<unsigned>(seed));
            auto const x = make::scaled(make::resonate(make::white(10000, random), peaks, rate));
            analysis::Expectation e{
                {{{hertz(peaks[0].hz), 0.18}, {hertz(peaks[1].hz), 0.15}, {hertz(peaks[2].hz), 0.12}}},
                hertz(1000)};
            analysis::FormantOptions options;
            options.settings = {{hertz(5000), 10}};
            auto const found = read_formants(x, hertz(rate), e, options);
            // the bound itself, from the true resonances: a long noise gives R
            for (std::size_t k = 0; k < 2; ++k) {
                double const error =
                    found.formants[k] ? in_hertz(found.formants[k]->centre) - peaks[k].hz : 1e3;
                squares[k] += error * error / seeds;
                if (found.formants[k] && std::abs(error) <= 1.96 * in_hertz(found.formants[k]->sd)) ++held[k];
            }
        }
        std::mt19937 random(99);
        auto const spectrum = analysis::average_spectrum(
            make::scaled(make::resonate(make::white(4000000, random), peaks, rate)), hertz(rate));
        auto const r = analysis::band_autocorrelation(spectrum, hertz(5000), 10);
        auto const model = analysis::predict(r, 10, hertz(rate));
        for (std::size_t k = 0; k < 2; ++k)
            bounds[k] = analysis::bound_of_centre(model, {hertz(peaks[k].hz), hertz(peaks[k].bandwidth_hz)},
                                                  r, 10000);
        for (std::size_t k = 0; k < 2; ++k)
            fmt::print("{:>6.0f} Hz: rms {:5.2f} Hz, bound {:5.2f} Hz, ratio {:4.2f}, 95 % interval holds "
                       "{:.1f} %\n",
                       peaks[k].hz, std::sqrt(squares[k]), std::sqrt(bounds[k]),
                       std::sqrt(squares[k] / bounds[k]), 100.0 * held[k] / seeds);
    }
}

} // namespace

int main(int argc, char** argv) {
    std::string const chosen = argc > 1 ? argv[1] : "";
    auto const tokens = read_tokens("tests/data/measuring/pb1952_first_repetition.csv");
    auto const wants = [&](std::string const& name) { return chosen.empty() || chosen == name; };
    if (wants("bound")) against_the_bound();
    if (wants("whisper")) {
        mixed_vowels(tokens, {.name = "whisper, 30 dB"});
        mixed_vowels(tokens, {.name = "whisper, 10 dB", .snr_db = 10});
        mixed_vowels(tokens, {.name = "whisper, wide (x3 to x4)", .wider_from = 3, .wider_to = 4});
        mixed_vowels(tokens, {.name = "whisper, 0.3 s", .length = 0.3});
    }
    if (wants("coded")) coded(tokens);
    if (wants("room"))
        for (auto kind :
             {analysis::ProbeKind::whisper, analysis::ProbeKind::creak, analysis::ProbeKind::sung}) {
            auto const name = std::string(to_string(kind));
            in_rooms(tokens, {.name = name + ", no room", .kind = kind, .fo = 110}, 0, 0);
            for (double t60 : {0.2, 0.5, 1.0})
                for (double direct : {6.0, 0.0})
                    in_rooms(tokens,
                             {.name = fmt::format("{}, {} s, {:+} dB", name, t60, direct),
                              .kind = kind,
                              .fo = 110},
                             t60, direct);
        }
    if (wants("creak")) mixed_vowels(tokens, {.name = "creak", .kind = analysis::ProbeKind::creak});
    if (wants("sung"))
        for (double fo : {80, 100, 130, 160, 200, 250, 300})
            mixed_vowels(
                tokens, {.name = fmt::format("sung {} Hz", fo), .kind = analysis::ProbeKind::sung, .fo = fo});
}
