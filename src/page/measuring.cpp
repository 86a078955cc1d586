// SPDX-License-Identifier: MIT
#include "page/measuring.hpp"

#include "vowelway/analysis/measure.hpp"
#include "vowelway/analysis/reference.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/io/profile/built_in.hpp"
#include "vowelway/report/measurement_report.hpp"

#include <utility>

namespace vowelway::page {

std::string measurement_of(Json const& request, std::span<float const> samples) {
    analysis::Recording recording;
    recording.name = request.value("file", "the recording");
    analysis::Listener listener(analysis::measuring_rate);
    listener.hear(samples);
    recording.heard = listener.finish();
    if (listener.overfull())
        throw InputError("has more than 180 s of sound",
                         "cut out the part with the vowels: one breath is enough",
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
    return report::measurement_json(measured, {recording.name});
}

} // namespace vowelway::page
