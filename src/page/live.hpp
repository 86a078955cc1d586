// SPDX-License-Identifier: MIT
// A vowel whispered or creaked into the microphone, read while it sounds, against where it should be.
#pragma once

#include "page/request.hpp"

#include "vowelway/analysis/measure.hpp"

#include <deque>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace vowelway::page {

/// Sung notes above this are refused while practising: their harmonics lie too far apart to show both
/// resonances at every moment (our judgement; a take for measuring may be sung up to highest_sung_probe).
inline constexpr Frequency highest_live_note = hertz(200);

/// The vowel to practise and where its resonances should be.
struct LiveAim {
    Vowel vowel;
    Frequency r1, r2;
};

class Live {
  public:
    Live(analysis::MeasureRequest known, LiveAim aim, Tuning tuning);

    /// The next samples at analysis::measuring_rate. What the resonances are now, for a staff: see
    /// src/page/README.md.
    Json hear(std::span<float const> samples);

    /// The aim, for a staff.
    Json aim() const;

  private:
    struct Reading {
        double at; // seconds from the beginning
        Frequency r1, r2;
    };
    bool sounds(std::span<float const> samples);
    void recognise();
    // For the kind of probe heard: what it shifts, where the formants are due, how they are read.
    analysis::ProbeShifts const& shifts() const;
    analysis::Expectation expected() const;
    analysis::FormantOptions how_to_read() const;
    std::optional<Reading> read();
    void judge_last_second();
    bool steady() const;
    void tell(Json& out, Reading const& smooth) const;

    analysis::MeasureRequest known_;
    LiveAim aim_;
    Tuning tuning_;
    std::vector<float> last_; // at most a second of one sound
    double heard_ = 0;        // seconds
    double floor_ = -60, level_ = -120;
    std::vector<float> pause_;
    std::optional<analysis::PowerSpectrum> noise_;
    analysis::Excitation excitation_;
    int hops_ = 0;
    double there_since_ = -1, sounds_since_ = -1;
    std::deque<Reading> readings_; // of the last seconds
    Json findings_ = Json::array();
    std::optional<double> balance_db_;
};

/// Begins to practise: {"singer", "vowel"} or the note of a song, {"note"}. The answer is the aim.
std::string live_begun(Json const& request, std::string_view score);
/// What was heard.
std::string live_heard(std::span<float const> samples);

} // namespace vowelway::page
