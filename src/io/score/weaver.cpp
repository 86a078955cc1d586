// SPDX-License-Identifier: MIT
#include "io/score/weaver.hpp"

#include "io/score/lyric_lines.hpp"

#include <algorithm>
#include <iterator>
#include <utility>

namespace vowelway::io {

namespace {

/// The events of the line that begin within a run.
auto within(std::vector<LineEvent>& line, Run const& run) {
    auto const before = [](LineEvent const& e, double at) { return e.onset < at - time_tolerance; };
    return std::pair(std::lower_bound(line.begin(), line.end(), run.begin, before),
                     std::lower_bound(line.begin(), line.end(), run.end, before));
}

LineEvent* at(std::vector<LineEvent>& line, double onset) {
    auto found = std::lower_bound(line.begin(), line.end(), onset,
                                  [](LineEvent const& e, double t) { return e.onset < t - time_tolerance; });
    while (found != line.end() && found->onset < onset + time_tolerance && found->event->grace) ++found;
    return found != line.end() && found->onset < onset + time_tolerance ? &*found : nullptr;
}

/// What stays of an event of the line: its part before the first run; of a rest also what lies after.
void keep_outside(LineEvent& old, std::vector<Run const*> const& runs, std::size_t next,
                  std::vector<LineEvent>& out) {
    double from = old.onset;
    double const end = old.onset + old.length;
    bool head = true;
    auto const keep = [&](double to) {
        if (!head && !(old.event->rest && out.size() < 2u * static_cast<std::size_t>(most_bar_events)))
            return;
        auto piece = old;
        piece.onset = from;
        piece.length = to - from;
        piece.cut = old.cut || !head || to < end - time_tolerance;
        if (!head) piece.lyric.reset();
        out.push_back(std::move(piece));
    };
    for (; next < runs.size() && runs[next]->begin < std::max(end - time_tolerance, from + time_tolerance);
         ++next) {
        if (runs[next]->begin > from + time_tolerance) keep(runs[next]->begin);
        from = runs[next]->end;
        head = false;
        if (from > end - time_tolerance) return;
    }
    keep(end);
}

/// The line without what the runs that were taken cover, and their events instead.
void replace(std::vector<LineEvent>& line, std::vector<Run const*> const& taken,
             std::vector<LineEvent> fresh) {
    std::vector<LineEvent> out;
    std::size_t first = 0;
    for (auto& old : line) {
        while (first < taken.size() && taken[first]->end < old.onset + time_tolerance) ++first;
        keep_outside(old, taken, first, out);
    }
    out.insert(out.end(), std::make_move_iterator(fresh.begin()), std::make_move_iterator(fresh.end()));
    std::stable_sort(out.begin(), out.end(), [](LineEvent const& a, LineEvent const& b) {
        return a.onset < b.onset - time_tolerance;
    });
    line = std::move(out);
}

} // namespace

LineEvent Weaver::line_event(PartEvent const& event) const {
    LineEvent out;
    out.event = &event;
    out.onset = event.onset;
    out.length = event.length;
    if (!verse_.empty()) out.lyric = lyric_on(event, verse_);
    if (!phonetic_.empty()) out.ipa = phonetic_on(event, phonetic_);
    return out;
}

std::vector<LineEvent> Weaver::own_line(PartMeasure const& measure, std::string const& voice) const {
    std::vector<LineEvent> out;
    for (auto const& event : measure.events)
        if (event.voice == voice) out.push_back(line_event(event));
    return out;
}

Weaver::Count Weaver::count(std::vector<LineEvent>& line, Run const& run) const {
    Count out;
    auto const [from, to] = within(line, run);
    out.line = static_cast<int>(
        std::count_if(from, to, [](LineEvent const& e) { return e.lyric && sounds(*e.event); }));
    for (auto const* event : run.events) {
        bool const own = !verse_.empty() && lyric_on(*event, verse_).has_value();
        auto const* with = at(line, event->onset);
        out.own += own ? 1 : 0;
        out.other += own || (with && with->event->rest && with->lyric) ? 1 : 0;
    }
    return out;
}

/// A run that is taken gets the words of the line above its notes; one that is not gives its words to notes
/// of the line that have none.
void Weaver::lend(std::vector<LineEvent>& line, Run const& run, bool take,
                  std::vector<LineEvent>& fresh) const {
    for (auto const* event : run.events) {
        auto mine = line_event(*event);
        auto* with = event->grace ? nullptr : at(line, event->onset);
        if (with && take && !mine.lyric) mine.lyric = with->lyric;
        if (with && take && !mine.ipa) mine.ipa = with->ipa;
        if (with && !take && !with->lyric && sounds(*with->event)) with->lyric = mine.lyric;
        if (take) fresh.push_back(std::move(mine));
    }
}

void Weaver::weave(std::vector<LineEvent>& line, std::vector<Run> const& runs) const {
    std::vector<Run const*> taken;
    std::vector<LineEvent> fresh;
    for (auto const& run : runs) {
        auto const counted = count(line, run);
        if (counted.other == 0) continue;
        bool const take = counted.other > counted.line;
        if (take) taken.push_back(&run);
        lend(line, run, take, fresh);
    }
    if (!taken.empty()) replace(line, taken, std::move(fresh));
}

} // namespace vowelway::io
