// SPDX-License-Identifier: MIT
// How fast a recording is measured: times real time on one core, decoding included, for each kind of probe;
// and the memory for a minute against an hour. bench/measure_speed.py does the same analysis with numpy and
// scipy. Needs the ffmpeg program for the coded files; writes to the folder for temporary files. With --make
// FOLDER it only writes the minutes there, for bench/whole_measuring.sh.
#include "probes.hpp"

#include "vowelway/analysis/expectation.hpp"
#include "vowelway/analysis/measure.hpp"
#include "vowelway/io/audio/read_audio.hpp"
#include "vowelway/io/profile/built_in.hpp"

#include <fmt/core.h>
#include <sys/resource.h>

#include <chrono>
#include <cstdlib>
#include <ctime>
#include <filesystem>
#include <string>

namespace {

using namespace vowelway;
using namespace vowelway::probes;

double cpu_seconds() { return static_cast<double>(std::clock()) / CLOCKS_PER_SEC; }
double megabytes() {
    rusage use{};
    getrusage(RUSAGE_SELF, &use);
    return static_cast<double>(use.ru_maxrss) / 1024;
}

/// A minute: i e a o u eight times, each for a second with half a second of pause, at 44.1 kHz.
std::vector<float> minute(analysis::ProbeKind kind) {
    constexpr double rate = 44100;
    std::array<std::array<double, 3>, 5> const vowels{
        {{290, 2220, 2940}, {375, 2090, 2670}, {720, 1310, 2480}, {410, 850, 2440}, {320, 800, 2310}}};
    std::mt19937 random(1);
    make::Samples all(static_cast<std::size_t>(0.5 * rate), 0.0);
    for (int take = 0; take < 40; ++take) {
        auto const n = static_cast<std::size_t>(rate);
        auto f = vowels[static_cast<std::size_t>(take % 5)];
        if (kind == analysis::ProbeKind::whisper) f = {f[0] + 255, f[1] + 115, f[2] + 125};
        Source const source{.kind = kind, .rate_hz = kind == analysis::ProbeKind::creak ? 40.0 : 120.0};
        auto x = make::resonate(excite(source, n, rate, random), make::peaks(f, 1040, 8000, 1.5), rate);
        double const size = std::sqrt(make::power(x));
        for (double v : x) all.push_back(v / size);
        all.insert(all.end(), static_cast<std::size_t>(0.5 * rate), 0.0);
    }
    auto const hiss = make::white(all.size(), random);
    for (std::size_t n = 0; n < all.size(); ++n) all[n] += 0.02 * hiss[n];
    return make::scaled(all);
}

analysis::Recording hear(std::string const& path) {
    analysis::Recording r;
    r.name = path;
    analysis::Listener listener(analysis::measuring_rate);
    io::read_audio(path, analysis::measuring_rate,
                   [&](std::span<float const> s) { return listener.hear(s); });
    r.heard = listener.finish();
    return r;
}

void time_one(std::string const& name, std::string const& path, analysis::MeasureRequest const& request) {
    double best = 1e9, best_hearing = 1e9, length = 0;
    std::size_t takes = 0;
    for (int run = 0; run < 5; ++run) {
        double const start = cpu_seconds();
        auto const r = hear(path);
        double const heard = cpu_seconds();
        auto const m = measure({r}, request);
        best = std::min(best, cpu_seconds() - start);
        best_hearing = std::min(best_hearing, heard - start);
        length = in_seconds(r.heard.length);
        takes = static_cast<std::size_t>(std::count_if(m.takes.begin(), m.takes.end(),
                                                       [](analysis::Take const& t) { return t.usable(); }));
    }
    fmt::print(
        "{:16} {:5.1f} s in {:6.1f} ms: {:5.0f} times real time; decoding and pauses {:6.1f} ms; {} takes\n",
        name, length, 1000 * best, length / best, 1000 * best_hearing, takes);
}

/// What the page's practice does thirty times a second: the last 0.11 s of a sound.
void time_live(std::string const& path) {
    auto const r = hear(path);
    std::span<float const> const sound(r.heard.stretches.at(0).samples);
    analysis::FormantOptions options;
    if (r.heard.noise) options.noise = &*r.heard.noise;
    auto const due = analysis::expect(io::built_in_voice(VoiceType::tenor), parse_vowel("i"),
                                      analysis::ProbeKind::whisper, analysis::published_shifts()[0]);
    constexpr int runs = 200;
    double const start = cpu_seconds();
    for (int run = 0; run < runs; ++run)
        analysis::read_formants(sound.subspan(2000 + 10 * static_cast<std::size_t>(run), 1760),
                                analysis::measuring_rate, due.formants, options);
    fmt::print("a live reading of a whisper: {:.2f} ms\n", 1000 * (cpu_seconds() - start) / runs);
}

} // namespace

int main(int argc, char** argv) {
    if (argc == 3 && std::string(argv[1]) == "--make") {
        for (auto kind :
             {analysis::ProbeKind::whisper, analysis::ProbeKind::creak, analysis::ProbeKind::sung})
            write_wav(fmt::format("{}/{}.wav", argv[2], to_string(kind)), minute(kind), 44100);
        return 0;
    }
    auto const folder = std::filesystem::temp_directory_path();
    auto const wav = (folder / "vowelway_speed.wav").string(), m4a = (folder / "vowelway_speed.m4a").string(),
               hour = (folder / "vowelway_hour.m4a").string();
    analysis::MeasureRequest request;
    request.reference = io::built_in_voice(VoiceType::tenor);
    request.vowels = parse_vowels("i e a o u");
    request.repeat = 8;
    for (auto kind : {analysis::ProbeKind::whisper, analysis::ProbeKind::creak, analysis::ProbeKind::sung}) {
        write_wav(wav, minute(kind), 44100);
        time_one(std::string(to_string(kind)) + ", wav", wav, request);
        if (kind == analysis::ProbeKind::whisper) time_live(wav);
        if (std::system(("ffmpeg -loglevel error -y -i " + wav + " -b:a 64k " + m4a).c_str()) == 0)
            time_one(std::string(to_string(kind)) + ", m4a", m4a, request);
    }
    auto const quiet = (folder / "vowelway_quiet.wav").string();
    {
        std::mt19937 random(2);
        auto hiss = make::scaled(make::white(60 * 16000, random), 0.003);
        auto const take = make::scaled(
            make::resonate(make::white(16000, random), {{900, 100}, {1400, 100}, {2600, 150}}, 16000), 0.3);
        for (std::size_t n = 0; n < take.size(); ++n) hiss[16000 * 30 + n] += take[n];
        write_wav(quiet, hiss, 16000);
    }
    double const after_minutes = megabytes();
    if (std::system(
            ("ffmpeg -loglevel error -y -stream_loop 59 -i " + quiet + " -b:a 32k " + hour).c_str()) == 0) {
        double const start = cpu_seconds();
        auto const r = hear(hour);
        fmt::print(
            "an hour with {} sounds: {:.0f} times real time; memory {:.0f} MB, after the minutes {:.0f} MB\n",
            r.heard.stretches.size(), in_seconds(r.heard.length) / (cpu_seconds() - start), megabytes(),
            after_minutes);
    }
    for (auto const& path : {wav, m4a, hour, quiet}) std::filesystem::remove(path);
}
