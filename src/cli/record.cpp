// SPDX-License-Identifier: MIT
#include "cli/record.hpp"

#include "cli/command.hpp"
#include "cli/standard_output.hpp"
#include "vowelway/analysis/guided_take.hpp"
#include "vowelway/analysis/measure.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/io/audio/microphone.hpp"
#include "vowelway/io/audio/write_audio.hpp"

#include <fmt/format.h>

#include <unistd.h>

#include <algorithm>
#include <array>
#include <filesystem>

namespace vowelway::cli {
namespace {

using analysis::GuidedTake;

constexpr Frequency rate = analysis::measuring_rate;
constexpr std::size_t tenth = 1600;    // samples
constexpr std::size_t room_steps = 15; // tenths of a second
constexpr int attempts = 3;
constexpr double loud_room = -45; // dB below full scale
constexpr Decibels quietest_room{
    -70}; // what is less is a gate in the device, which opens with the first sound

constexpr auto cautions = to_word(
    "Before you record: a soft whisper or a relaxed creak of a few seconds, as quiet as is comfortable;\n"
    "never when hoarse. Stop if it tires you; hoarse for more than four weeks: have your larynx examined.\n"
    "This is not medical advice.\n");

/// The level as a line that is written over on a terminal; in a pipe nothing.
void show(GuidedTake const& take, Decibels room) {
    if (isatty(STDERR_FILENO) == 0) return;
    auto const bars = static_cast<std::size_t>(std::max(0.0, 60 + take.level().value) / 2);
    auto const line = fmt::format("\r  level {:4.0f} dB, room {:4.0f} dB  {:30}", take.level().value,
                                  room.value, std::string(std::min<std::size_t>(bars, 30), '='));
    [[maybe_unused]] auto const written = ::write(STDERR_FILENO, line.data(), line.size());
}

class Session {
  public:
    explicit Session(RecordOptions const& options) : microphone_(options.device, rate) {}

    void listen_to_the_room() {
        say(worded("Silence for two seconds, please.") + "\n");
        std::vector<float> heard(room_steps * tenth);
        microphone_.read(heard); // the first moments of a device are often a click
        microphone_.read(heard);
        room_ = std::max(analysis::level_of(heard, rate), quietest_room);
        all_.insert(all_.end(), heard.begin(), heard.end());
        auto const level = fmt::format("{:.0f}", room_.value);
        say((room_.value > loud_room
                 ? worded("The room: {0} dB. That is loud: switch off fans and music, come closer.", level)
                 : worded("The room: {0} dB.", level)) +
            "\n");
    }

    void ask_for(Vowel const& vowel) {
        std::string why;
        for (int i = 0; i < attempts; ++i) {
            auto const asked = i == 0 ? worded("/{0}/ - hold it for a second", vowel.ipa())
                                      : worded("again: /{0}/ - {1}", vowel.ipa(), why);
            say(asked + "\n");
            auto const take = hear_one();
            why = take.again();
            if (!why.empty()) continue;
            all_.insert(all_.end(), take.samples().begin(), take.samples().end());
            auto const above = analysis::level_of(take.samples(), rate).value - room_.value;
            say("  " + worded("good: {0} dB above the room", fmt::format("{:.0f}", above)) + "\n");
            return;
        }
        throw InputError(worded("/{0}/ did not succeed three times: {1}", vowel.ipa(), why),
                         worded("rest, and try again later; or record with a phone, and name the file"), {});
    }

    std::vector<float> const& all() const { return all_; }

  private:
    GuidedTake hear_one() {
        GuidedTake take(room_);
        std::array<float, tenth> piece{};
        while (!take.done()) {
            microphone_.read(piece);
            take.hear(piece);
            show(take, room_);
        }
        if (isatty(STDERR_FILENO) != 0) say("\n");
        return take;
    }

    io::Microphone microphone_;
    Decibels room_;
    std::vector<float> all_;
};

} // namespace

void record_vowels(std::vector<Vowel> const& vowels, RecordOptions const& options) {
    auto const form = io::audio_form(std::filesystem::path(options.file).extension().string());
    if (!form) bad_command_line("--record", worded("name a .wav or .flac file"));
    if (std::filesystem::exists(options.file))
        bad_command_line("--record", worded("the file {0} is there already", options.file));
    Session session(options);
    say(std::string(reworded(cautions)));
    session.listen_to_the_room();
    for (int i = 0; i < options.repeat; ++i)
        for (auto const& v : vowels) session.ask_for(v);
    io::write_audio(options.file, *form, rate, [&](io::AudioFeed const& feed) { feed(session.all()); });
    say(worded("{0}: written", options.file) + "\n");
}

} // namespace vowelway::cli
