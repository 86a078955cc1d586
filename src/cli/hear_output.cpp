// SPDX-License-Identifier: MIT
#include "cli/hear_output.hpp"

#include "cli/remarks.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/io/audio/read_audio.hpp"
#include "vowelway/io/audio/write_audio.hpp"
#include "vowelway/sound/loudness.hpp"

#include <fmt/format.h>

#include <filesystem>

namespace vowelway::cli {

namespace {

namespace fs = std::filesystem;

std::string list_of(sound::Programme const& programme, sound::Balance const& balance) {
    std::string out;
    for (auto const& item : programme.items)
        if (!item.what.empty()) out += fmt::format("{:>7}  {}\n", io::clock_time(item.start), item.what);
    out += fmt::format("{:>7}  {}; {:.1f} LUFS, {} {:.1f} dBFS\n", io::clock_time(length_of(programme)),
                       worded("end"), balance.loudness.integrated.value, worded("peak"),
                       balance.loudness.peak.value);
    return out;
}

} // namespace

void write_sound(sound::Programme const& programme, GuideLine const& guide, Outputs const& outputs) {
    auto const balance = sound::balance(programme);
    if (balance.held_by_peak)
        print_remarks(
            {{Remark::Kind::assumed, worded("{0} LUFS instead of -23, so that the peak stays below -6 dBFS",
                                            fmt::format("{:.1f}", balance.loudness.integrated.value))}});
    auto const make = [&](io::AudioFeed const& feed) { sound::play(programme, balance.gain, feed); };
    auto const writer = [&](Form form, io::AudioForm audio) {
        return Writer{
            form, [&make, audio] { return io::audio_bytes(audio, sound::sample_rate, make); },
            [&make, audio](fs::path const& file) { io::write_audio(file, audio, sound::sample_rate, make); }};
    };
    outputs.write({{Form::table, [&] { return list_of(programme, balance); }},
                   writer(Form::wav, io::AudioForm::wav),
                   writer(Form::flac, io::AudioForm::flac),
                   {Form::midi, [&] { return io::midi_file(guide.title, guide.notes, guide.quarter); }}});
}

} // namespace vowelway::cli
