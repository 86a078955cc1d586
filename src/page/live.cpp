// SPDX-License-Identifier: MIT
#include "page/live.hpp"
#include "page/pitch_told.hpp"

#include "vowelway/analysis/expectation.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/plan/known_resonances.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

namespace vowelway::page {

namespace {

using analysis::ProbeKind;

constexpr Frequency rate = analysis::measuring_rate;
constexpr double per_second = 16000;
constexpr std::size_t window = 1760;     // samples that one reading looks at: 0.11 s
constexpr std::size_t a_second = 16000;  // samples by which a probe is judged
constexpr std::size_t for_kind = 6400;   // samples in which pulses are looked for: 0.4 s
constexpr double rise_db = 9;            // above the pauses: something sounds
constexpr double silence_db = -72;       // below full scale
constexpr double floor_climb = 1.5;      // dB a second: the floor follows a room that grows louder
constexpr double smooth_over = 0.2;      // seconds of readings behind a head
constexpr double steady_over = 2;        // seconds by which steadiness is judged
constexpr double steady_for = 0.7;       // seconds that a take needs at least
constexpr double held_for = 0.5;         // seconds that a hit must last
constexpr std::size_t judged_every = 16; // readings between two judgements

double level_of(std::span<float const> samples) {
    double sum = 0;
    for (float const x : samples) sum += static_cast<double>(x) * static_cast<double>(x);
    return 10 * std::log10(sum / static_cast<double>(std::max<std::size_t>(1, samples.size())) + 1e-12);
}

/// As near as a good probe of a vowel repeats.
bool near(Frequency aim, Frequency found) {
    return std::abs(interval(aim, found).value) <= analysis::repeats_within.value;
}

/// Mean of the logarithms, and the deviation in cents.
std::pair<Frequency, Cents> mean_of(std::vector<Frequency> const& all) {
    double sum = 0, squares = 0;
    for (auto const& f : all) sum += std::log(in_hertz(f));
    double const mean = sum / static_cast<double>(all.size());
    for (auto const& f : all) squares += std::pow(std::log(in_hertz(f)) - mean, 2);
    double const sd = std::sqrt(squares / static_cast<double>(all.size()));
    return {hertz(std::exp(mean)), Cents{1200 * sd / std::log(2.0)}};
}

} // namespace

Live::Live(analysis::MeasureRequest known, LiveAim aim, Tuning tuning)
    : known_(std::move(known)), aim_(std::move(aim)), tuning_(tuning) {
    // What is aimed at is where the poles are looked for.
    VowelResonances due;
    if (auto const* own = known_.reference.find(aim_.vowel)) due = *own;
    due.vowel = aim_.vowel;
    due.r1.centre = aim_.r1;
    due.r2.centre = aim_.r2;
    std::erase_if(known_.reference.vowels,
                  [&](VowelResonances const& v) { return v.vowel.quality() == aim_.vowel.quality(); });
    known_.reference.vowels.push_back(std::move(due));
}

Json Live::aim() const {
    return {{"vowel", aim_.vowel.ipa()},
            {"fR1", pitch_told(aim_.r1, tuning_)},
            {"fR2", pitch_told(aim_.r2, tuning_)}};
}

bool Live::sounds(std::span<float const> samples) {
    level_ = level_of(samples);
    double const passed = static_cast<double>(samples.size()) / per_second;
    floor_ = std::min(level_, floor_ + floor_climb * passed);
    floor_ = std::max(floor_, -100.0);
    bool const loud = level_ > std::max(floor_ + rise_db, silence_db);
    if (loud) {
        pause_.clear();
        if (sounds_since_ < 0) sounds_since_ = heard_;
        last_.insert(last_.end(), samples.begin(), samples.end());
        if (last_.size() > a_second) last_.erase(last_.begin(), last_.end() - a_second);
        return true;
    }
    pause_.insert(pause_.end(), samples.begin(), samples.end());
    if (pause_.size() >= for_kind) {
        noise_ = analysis::average_spectrum(pause_, rate);
        pause_.clear();
    }
    last_.clear();
    there_since_ = sounds_since_ = -1;
    hops_ = 0;
    return false;
}

void Live::recognise() {
    std::span<float const> const all(last_);
    auto const piece = all.last(std::min(all.size(), for_kind));
    excitation_ = analysis::recognise_excitation(piece, rate);
}

analysis::ProbeShifts const& Live::shifts() const {
    return known_.shifts[static_cast<std::size_t>(excitation_.kind)];
}

analysis::Expectation Live::expected() const {
    return analysis::expect(known_.reference, aim_.vowel, excitation_.kind, shifts()).formants;
}

analysis::FormantOptions Live::how_to_read() const {
    analysis::FormantOptions options;
    options.kind = excitation_.kind;
    if (analysis::is_voiced(excitation_.kind)) options.fo = excitation_.rate;
    if (noise_) options.noise = &*noise_;
    return options;
}

std::optional<Live::Reading> Live::read() {
    auto const found =
        analysis::read_formants(std::span<float const>(last_).last(window), rate, expected(), how_to_read());
    if (!found.formants[0] || !found.formants[1]) return std::nullopt;
    auto const tract = analysis::tract_reading(found, aim_.vowel, excitation_.kind, shifts());
    if (!tract.resonances[0] || !tract.resonances[1]) return std::nullopt;
    return Reading{heard_, tract.resonances[0]->centre, tract.resonances[1]->centre};
}

void Live::judge_last_second() {
    analysis::Sound const sound{last_, rate, seconds(0)};
    auto const part = analysis::steady_part(sound, {seconds(0), sound.length()});
    if (!part) return;
    auto const spectrum = analysis::pooled(part->blocks);
    auto const due = expected();
    auto options = how_to_read();
    options.blocks = part->blocks;
    auto const found =
        analysis::read_formants(analysis::part(sound, part->span.start, part->span.end), rate, due, options);
    auto const quality =
        analysis::judge({spectrum, options.noise, *part, false, excitation_, found, due, aim_.vowel});
    balance_db_ = quality.balance.value;
    findings_ = Json::array();
    for (auto const& finding : quality.findings)
        findings_.push_back(
            {{"kind", to_string(finding.kind)}, {"says", finding.says}, {"try", finding.tries}});
}

/// For as long as a take needs, both resonances have stayed where they were.
bool Live::steady() const {
    if (sounds_since_ < 0 || heard_ - sounds_since_ < steady_for) return false;
    std::vector<Frequency> r1, r2;
    for (auto const& reading : readings_)
        if (reading.at > heard_ - steady_for) {
            r1.push_back(reading.r1);
            r2.push_back(reading.r2);
        }
    auto const still = [](std::vector<Frequency> const& all) {
        return mean_of(all).second.value <= analysis::repeats_within.value;
    };
    return !r1.empty() && still(r1) && still(r2);
}

void Live::tell(Json& out, Reading const& smooth) const {
    out["fR1"] = pitch_told(smooth.r1, tuning_);
    out["fR2"] = pitch_told(smooth.r2, tuning_);
    auto const off1 = interval(aim_.r1, smooth.r1), off2 = interval(aim_.r2, smooth.r2);
    out["fR1"]["off_cents"] = std::round(off1.value);
    out["fR2"]["off_cents"] = std::round(off2.value);
    std::vector<Frequency> r1, r2;
    for (auto const& reading : readings_) {
        r1.push_back(reading.r1);
        r2.push_back(reading.r2);
    }
    out["fR1"]["steady_cents"] = std::round(mean_of(r1).second.value);
    out["fR2"]["steady_cents"] = std::round(mean_of(r2).second.value);
    out["steady"] = steady();
    out["since_s"] = sounds_since_;
    if (balance_db_) out["balance_db"] = std::round(*balance_db_);
    out["findings"] = findings_;
}

Json Live::hear(std::span<float const> samples) {
    heard_ += static_cast<double>(samples.size()) / per_second;
    Json out{{"at_s", heard_}, {"sounds", sounds(samples)}};
    if (!out["sounds"] || last_.size() < window) return out;
    if (hops_ % 4 == 0) recognise();
    out["probe"] = to_string(excitation_.kind);
    if (analysis::is_voiced(excitation_.kind) && excitation_.rate && *excitation_.rate > highest_live_note) {
        out["refused"] =
            fmt::format("sung at {:.0f} Hz: above {:.0f} Hz the harmonics lie too far apart to show "
                        "the resonances between them; whisper softly, or creak",
                        in_hertz(*excitation_.rate), in_hertz(highest_live_note));
        return out;
    }
    auto const reading = read();
    if (++hops_ % static_cast<int>(judged_every) == 0) judge_last_second();
    if (reading) readings_.push_back(*reading);
    while (!readings_.empty() && readings_.front().at < heard_ - steady_over) readings_.pop_front();
    std::vector<Frequency> r1, r2;
    for (auto const& one : readings_)
        if (one.at > heard_ - smooth_over) {
            r1.push_back(one.r1);
            r2.push_back(one.r2);
        }
    if (r1.empty()) return out;
    Reading const smooth{heard_, mean_of(r1).first, mean_of(r2).first};
    tell(out, smooth);
    bool const there = near(aim_.r1, smooth.r1) && near(aim_.r2, smooth.r2);
    if (!there) there_since_ = -1;
    if (there && there_since_ < 0) there_since_ = heard_;
    out["there"] = there;
    out["hit"] = there && heard_ - there_since_ >= held_for;
    return out;
}

namespace {

std::optional<Live> live; // the module has one thread

LiveAim aim_of(Json const& request, std::string_view score) {
    if (request.contains("note")) {
        auto const& plan = planned(request, score);
        auto const index = request["note"].get<std::size_t>();
        if (index >= plan.notes.size() || !plan.notes[index].decision)
            throw InputError(worded("this note has no vowel to practise"), worded("choose another"));
        auto const& target = plan.notes[index].decision->target;
        return {target.shade.quality(), target.r1.centre, target.r2.centre};
    }
    auto const wanted = plan_request(request, {});
    auto const vowel = parse_vowel(request.at("vowel").get<std::string>()).quality();
    auto const known =
        plan::resonances_of(vowel, wanted.singer, wanted.reference ? &*wanted.reference : nullptr);
    if (!known) throw InputError(worded("nothing is known of this vowel"), worded("add it to the profile"));
    return {vowel, known->r1.centre, known->r2.centre};
}

} // namespace

std::string live_begun(Json const& request, std::string_view score) {
    live.emplace(measure_request(request.at("singer")), aim_of(request, score),
                 profile_of(request.at("singer")).singer.tuning);
    return live->aim().dump(-1, ' ', false, Json::error_handler_t::replace);
}

std::string live_heard(std::span<float const> samples) {
    if (!live) throw InputError(worded("nothing is being practised"), worded("choose a vowel first"));
    return live->hear(samples).dump(-1, ' ', false, Json::error_handler_t::replace);
}

} // namespace vowelway::page
