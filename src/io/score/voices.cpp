// SPDX-License-Identifier: MIT
#include "io/score/voices.hpp"

#include "io/score/lyric_lines.hpp"

#include <algorithm>

namespace vowelway::io {

std::vector<Voice> voices_of(Part const& part, std::string const& verse) {
    std::vector<Voice> out;
    std::map<std::string, std::size_t> index;
    for (auto const& measure : part.measures)
        for (auto const& event : measure.events) {
            auto const [at, fresh] = index.emplace(event.voice, out.size());
            if (fresh) out.push_back({event.voice, 1, 0, 0, {}});
            auto& voice = out[at->second];
            ++voice.on_staff[event.staff];
            voice.notes += sounds(event) ? 1 : 0;
            if (!verse.empty() && lyric_on(event, verse)) ++voice.words;
        }
    for (auto& voice : out)
        voice.staff =
            std::max_element(voice.on_staff.begin(), voice.on_staff.end(), [](auto const& a, auto const& b) {
                return a.second < b.second;
            })->first;
    std::stable_sort(out.begin(), out.end(),
                     [](Voice const& a, Voice const& b) { return a.staff < b.staff; });
    return out;
}

std::vector<Run> runs_of(PartMeasure const& measure, std::string const& voice) {
    std::vector<Run> out;
    for (auto const& event : measure.events) {
        if (event.voice != voice || !sounds(event)) continue;
        if (out.empty() || event.onset > out.back().end + time_tolerance)
            out.push_back({event.onset, event.onset, {}});
        out.back().events.push_back(&event);
        out.back().end = std::max(out.back().end, event.onset + event.length);
    }
    return out;
}

} // namespace vowelway::io
