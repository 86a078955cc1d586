// SPDX-License-Identifier: MIT
#include "page/measuring.hpp"

#include "vowelway/analysis/history.hpp"
#include "vowelway/analysis/measure.hpp"
#include "vowelway/analysis/reference.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/io/profile/write_profile.hpp"
#include "vowelway/report/measurement_report.hpp"

#include <utility>

namespace vowelway::page {

namespace {

/// The profile with this measurement: the singer's own extended, or a new one beside an average voice.
std::string profile_with(analysis::Measurements const& measured, Json const& request) {
    auto const& into = request.at("into");
    std::string const date = into.at("date");
    auto const history = analysis::measured_history(measured, date, into.value("note", ""));
    if (history.empty())
        throw InputError(worded("no take gives a result"),
                         worded("see the reasons, and record again: softly and briefly, never when hoarse"));
    auto const& singer = request.at("singer");
    auto const known = profile_of(singer);
    auto const shifts = analysis::learned_shifts(measured, known.shifts, date);
    if (!singer.contains("profile"))
        return io::profile_text(analysis::begin_profile(into.value("name", "My voice"), known.singer.voice,
                                                        known.singer.tuning, history, shifts));
    std::string text = singer.at("profile");
    auto const file = singer.value("file", "the profile");
    for (auto const& measurement : history) text = io::with_measurement(text, file, measurement);
    for (auto const& shift : shifts) text = io::with_shift(text, file, shift);
    return text;
}

} // namespace

std::string measurement_of(Json const& request, std::span<float const> samples) {
    analysis::Recording recording;
    recording.name = request.value("file", "the recording");
    analysis::Listener listener(analysis::measuring_rate);
    listener.hear(samples);
    recording.heard = listener.finish();
    if (listener.overfull())
        throw InputError(worded("has more than 180 s of sound"),
                         worded("cut out the part with the vowels: one breath is enough"),
                         {recording.name, 0, 0, {}});
    auto const rate = hertz(request.at("rate_hz").get<double>());
    recording.band = analysis::band_of(rate);
    Remarks remarks;
    analysis::warn_of_band(recording.name, rate, remarks);
    auto wanted = measure_request(request.at("singer"));
    wanted.vowels = parse_vowels(request.at("vowels").get<std::string>());
    wanted.repeat = request.value("repeat", 0);
    if (request.contains("probe"))
        wanted.kind = analysis::parse_probe_kind(request["probe"].get<std::string>());
    auto measured = measure({recording}, wanted);
    analysis::add_remarks(measured, std::move(remarks), wanted.reference);
    auto told = report::measurement_json(measured, {recording.name});
    if (!request.contains("into")) return told;
    Json const out{{"measured", Json::parse(told)}, {"profile", profile_with(measured, request)}};
    return out.dump(-1, ' ', false, Json::error_handler_t::replace);
}

} // namespace vowelway::page
