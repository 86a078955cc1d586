// SPDX-License-Identifier: MIT
#include "cli/measuring.hpp"

#include "vowelway/analysis/reference.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/io/audio/read_audio.hpp"
#include "vowelway/io/audio/read_cues.hpp"
#include "vowelway/io/profile/built_in.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <filesystem>

namespace vowelway::cli {

void add_measuring_options(Command& command, MeasuringOptions& o) {
    command.values("AUDIO", o.audio, "recordings: wav, flac, mp3, ogg, opus, m4a, aac, webm, mp4");
    command.value("--vowels", o.vowels,
                  "the vowels in the order they were said, IPA or X-SAMPA: \"i e a o u\"");
    command.value("--repeat", o.repeat, "how many times the list is said (default: found from the recording)")
        .between(1, 50);
    command.value("--cues", o.cues, "a file with start, end and vowel on each line, for one recording");
    command.value("--probe", o.probe, "whisper, creak, sung or spoken (default: recognised)")
        .one_of({"whisper", "creak", "sung", "spoken"});
}

std::vector<std::string> inputs_of(MeasuringOptions const& o) {
    if (o.audio.empty()) missing("AUDIO");
    auto all = o.audio;
    all.insert(all.end(), {o.cues, o.singer, o.look.theme});
    return all;
}

std::vector<analysis::Recording> read_recordings(MeasuringOptions const& o, Remarks& remarks) {
    std::vector<io::Cue> cues;
    if (!o.cues.empty()) {
        if (o.audio.size() != 1) bad_command_line("--cues", worded("goes with one recording"));
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
            throw InputError(worded("has more than {0} s of sound",
                                    fmt::format("{:.0f}", in_seconds(analysis::most_sound))),
                             worded("cut out the part with the vowels: one breath is enough"),
                             Place{path, 0, 0, {}});
        if (!cues.empty() && cues.back().span.end > r.heard.length + seconds(0.05))
            throw InputError(worded("the cues go on to {0} but the recording ends at {1}",
                                    io::clock_time(cues.back().span.end), io::clock_time(r.heard.length)),
                             worded("use the cues of this recording"), Place{o.cues, 0, 0, {}});
        for (auto const& c : cues) r.cued.push_back(c.vowel);
        r.band = analysis::band_of(facts.rate);
        r.clipped = facts.clipped;
        analysis::warn_of_band(path, facts.rate, remarks);
        recordings.push_back(std::move(r));
    }
    return recordings;
}

std::vector<std::string> names_of(std::vector<analysis::Recording> const& recordings) {
    std::vector<std::string> names;
    for (auto const& r : recordings) names.push_back(r.name);
    return names;
}

Singer reference_for(Singer const& singer) {
    auto const average = io::average_beside(singer);
    return average ? analysis::reference_singer(singer, *average) : singer;
}

analysis::MeasureRequest request_for(MeasuringOptions const& o, Singer const& reference,
                                     Profile const& profile) {
    analysis::MeasureRequest request;
    request.reference = reference;
    if (!o.vowels.empty()) request.vowels = parse_vowels(o.vowels);
    if (request.vowels.empty() && o.cues.empty())
        bad_command_line(
            "--vowels",
            worded("list the vowels that were said, such as --vowels \"i e a o u\", or give --cues"));
    request.repeat = o.repeat;
    if (!o.probe.empty()) request.kind = analysis::parse_probe_kind(o.probe);
    analysis::use_shifts(request, profile);
    return request;
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

} // namespace vowelway::cli
