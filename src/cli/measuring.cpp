// SPDX-License-Identifier: MIT
#include "cli/measuring.hpp"

#include "vowelway/analysis/expectation.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/io/audio/read_audio.hpp"
#include "vowelway/io/audio/read_cues.hpp"
#include "vowelway/io/profile/built_in.hpp"
#include "vowelway/io/write_file.hpp"

#include <CLI/CLI.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <filesystem>

namespace vowelway::cli {

void add_measuring_options(CLI::App& command, MeasuringOptions& o) {
    command.add_option("AUDIO", o.audio, "recordings: wav, flac, mp3, ogg, opus, m4a, aac, webm, mp4")
        ->required();
    command.add_option("--vowels", o.vowels,
                       "the vowels in the order they were said, IPA or X-SAMPA: \"i e a o u\"");
    command.add_option("--repeat", o.repeat, "times the list is gone through (otherwise found out)")
        ->check(CLI::Range(1, 50));
    command.add_option("--cues", o.cues, "a file with start, end and vowel on each line, for one recording");
    command.add_option("--probe", o.probe, "whisper, creak or sung (otherwise recognised)")
        ->check(CLI::IsMember({"whisper", "creak", "sung"}));
}

std::vector<analysis::Recording> read_recordings(MeasuringOptions const& o, Remarks& remarks) {
    std::vector<io::Cue> cues;
    if (!o.cues.empty()) {
        if (o.audio.size() != 1) throw CLI::ValidationError("--cues", "goes with one recording");
        cues = io::read_cues(o.cues);
    }
    std::vector<TimeSpan> spans;
    for (auto const& c : cues) spans.push_back(c.span);

    std::vector<analysis::Recording> recordings;
    for (auto const& path : o.audio) {
        analysis::Recording r;
        r.name = path;
        analysis::Listener listener(analysis::measuring_rate, spans);
        auto const facts = io::read_audio(path, analysis::measuring_rate,
                                          [&](std::span<float const> s) { return listener.hear(s); });
        r.heard = listener.finish();
        if (listener.overfull())
            throw InputError(
                fmt::format("holds more than {:.0f} s of sound", in_seconds(analysis::most_sound)),
                "cut out the probes: a breath is enough", Place{path, 0, 0, {}});
        if (!cues.empty() && cues.back().span.end > r.heard.length + seconds(0.05))
            throw InputError(fmt::format("the cues go on to {} but the recording ends at {}",
                                         io::clock_time(cues.back().span.end),
                                         io::clock_time(r.heard.length)),
                             "use the cues of this recording", Place{o.cues, 0, 0, {}});
        for (auto const& c : cues) r.cued.push_back(c.vowel);
        r.band = 0.95 * std::min(facts.rate / 2.0, analysis::measuring_rate / 2.0);
        r.clipped = facts.clipped;
        if (facts.rate < hertz(11000))
            remarks.push_back({Remark::Kind::caution,
                               path + " holds nothing above " +
                                   fmt::format("{:.0f} Hz; fR3 may be missing", in_hertz(facts.rate) / 2)});
        recordings.push_back(std::move(r));
    }
    return recordings;
}

Singer reference_for(Singer const& singer) {
    if (singer.average || singer.voice == VoiceType::other) return singer;
    auto reference = singer;
    auto const average = io::built_in_voice(singer.voice);
    double sum = 0;
    int count = 0;
    for (auto const& v : singer.vowels)
        if (auto const* a = average.find(v.vowel)) sum += std::log(v.r2.centre / a->r2.centre), ++count;
    double const scale = count > 0 ? std::exp(sum / count) : 1;
    for (auto v : average.vowels) {
        if (singer.find(v.vowel)) continue;
        for (auto* r : {&v.r1, &v.r2}) r->centre *= scale;
        if (v.r3) v.r3->centre *= scale;
        reference.vowels.push_back(v);
    }
    if (!reference.tract_length && average.tract_length)
        reference.tract_length = *average.tract_length / scale;
    if (singer.vowels.empty()) reference.average = true;
    return reference;
}

analysis::MeasureRequest request_for(MeasuringOptions const& o, Singer const& reference,
                                     std::vector<io::ProbeShift> const& known) {
    analysis::MeasureRequest request;
    request.reference = reference;
    if (!o.vowels.empty()) request.vowels = parse_vowels(o.vowels);
    if (request.vowels.empty() && o.cues.empty())
        throw CLI::ValidationError("--vowels",
                                   "say what was spoken, such as --vowels \"i e a o u\", or give --cues");
    request.repeat = o.repeat;
    if (!o.probe.empty()) request.kind = analysis::parse_probe_kind(o.probe);
    for (auto const& learned : known) {
        auto const kind =
            learned.method == Method::creak ? analysis::ProbeKind::creak : analysis::ProbeKind::whisper;
        auto& shifts = request.shifts[static_cast<std::size_t>(kind)];
        for (std::size_t k = 0; k < 3; ++k)
            if (learned.of[k]) {
                shifts.of[k].mean = learned.of[k]->mean;
                shifts.of[k].singer_sd = learned.of[k]->sd;
            }
        shifts.pairs = learned.pairs;
        request.taught.insert(request.taught.end(), learned.recordings.begin(), learned.recordings.end());
    }
    return request;
}

namespace {

/// For CLI11: empty when something can be written under that name, else what is wrong with its ending.
std::string wrong_output(std::string const& output) {
    auto const ending = std::filesystem::path(output).extension().string();
    if (output == "-" || ending == ".json" || ending == ".txt" || is_chart(ending)) return "";
    return output + " has no known ending; use .txt .json .pdf .svg or .png, or - for standard output";
}

} // namespace

void add_measuring_outputs(CLI::App& command, MeasuringOutputs& outputs) {
    command
        .add_option(
            "-o,--output", outputs.files,
            "file to write, by its ending: .txt .json .pdf .svg .png; - for standard output; may be repeated")
        ->type_name("FILE")
        ->allow_extra_args(false)
        ->check(wrong_output, "", "");
    command.add_option("--as", outputs.as, "form on standard output")
        ->check(CLI::IsMember({"table", "json"}))
        ->capture_default_str();
    add_chart_look(command, outputs.look);
}

chart::ProbeMap probe_map(analysis::Measurements const& m, std::vector<analysis::Recording> const& recordings,
                          Singer const& reference, std::string const& date) {
    chart::ProbeMap map{.reference = reference,
                        .due = {},
                        .who = reference.name,
                        .date = date,
                        .files = {},
                        .takes = m.takes,
                        .vowels = m.vowels,
                        .checks = {}};
    for (auto const& r : recordings) map.files.push_back(std::filesystem::path(r.name).filename().string());
    for (auto const& v : m.vowels) {
        auto const* known = reference.find(v.vowel);
        bool const drawn = known && std::ranges::any_of(map.due, [&](VowelResonances const& d) {
                               return d.vowel == known->vowel;
                           });
        if (known && !drawn) map.due.push_back(*known);
    }
    return map;
}

void write_outputs(MeasuringOutputs const& outputs, std::string const& table, std::string const& json,
                   chart::ProbeMap const& map) {
    auto const& text = outputs.as == "json" ? json : table;
    if (outputs.files.empty()) fmt::print("{}", text);
    for (auto const& file : outputs.files) {
        auto const ending = std::filesystem::path(file).extension().string();
        if (file == "-") {
            fmt::print("{}", text);
        } else if (is_chart(ending)) {
            for (auto const& written : chart::write_chart(map, chart_options(outputs.look), file))
                fmt::print(stderr, "wrote {}\n", written.string());
        } else {
            io::write_file(file, ending == ".json" ? json : table);
            fmt::print(stderr, "wrote {}\n", file);
        }
    }
}

Method method_of(analysis::ProbeKind kind) {
    switch (kind) {
    case analysis::ProbeKind::whisper:
        return Method::whisper;
    case analysis::ProbeKind::creak:
        return Method::creak;
    case analysis::ProbeKind::sung:
        return Method::sung;
    }
    return Method::whisper;
}

} // namespace vowelway::cli
