// SPDX-License-Identifier: MIT
#include "vowelway/sound/timing.hpp"
#include "core/ranges.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <numeric>

namespace vowelway::sound {

namespace {

// "3+2" counts five.
double count_of(std::string const& beats) {
    double sum = 0;
    char const* at = beats.c_str();
    for (char* end = nullptr;; at = end + 1) {
        sum += std::strtod(at, &end);
        if (end == at || *end == 0) break;
    }
    return sum > 0 ? sum : 4;
}

// A bar on the staff, in quarter notes from the beginning.
struct Bar {
    std::string number;
    double start, length, full, beat;
};

std::vector<Bar> bars_of(Passage const& passage) {
    std::vector<Bar> out;
    TimeSignature time;
    double at = 0;
    for (auto const& measure : passage.staff.measures) {
        if (measure.time) time = *measure.time;
        double const count = count_of(time.beats), unit = 4.0 / time.beat_type;
        // Compound time is counted in threes: 6/8 in two.
        bool const compound = time.beat_type >= 8 && count >= 6 && std::fmod(count, 3) == 0;
        out.push_back({measure.number, at, measure.length, count * unit, compound ? 3 * unit : unit});
        at += measure.length;
    }
    return out;
}

// Where the notes of the staff lie in time; in between and outside it goes straight on.
class Clock {
  public:
    explicit Clock(Passage const& passage) {
        double bar = 0;
        std::vector<bool> seen(passage.notes.size());
        for (auto const& measure : passage.staff.measures) {
            for (auto const& event : measure.events) {
                if (!event.sung || event.grace || seen.at(*event.sung)) continue;
                seen[*event.sung] = true;
                auto const& note = passage.notes[*event.sung];
                if (note.grace) continue;
                double const at = bar + event.onset, time = in_seconds(note.start);
                if (!points_.empty() && (at < points_.back().at + 1e-6 || time < points_.back().time + 1e-6))
                    continue;
                points_.push_back({at, time});
                if (event.length > 0) last_speed_ = in_seconds(note.length) / event.length;
            }
            bar += measure.length;
        }
    }
    bool known() const { return points_.size() > 1 || (points_.size() == 1 && last_speed_ > 0); }
    /// Seconds at a place.
    double time(double at) const {
        if (points_.size() == 1) return points_[0].time + (at - points_[0].at) * last_speed_;
        auto after = std::upper_bound(points_.begin(), points_.end(), at,
                                      [](auto t, Point const& p) { return t < p.at; });
        after = std::clamp(after, points_.begin() + 1, points_.end() - 1);
        auto const &a = *(after - 1), &b = *after;
        return a.time + (at - a.at) * (b.time - a.time) / (b.at - a.at);
    }

  private:
    struct Point {
        double at, time;
    };
    std::vector<Point> points_;
    double last_speed_ = 0;
};

std::size_t find_bar(Passage const& passage, std::vector<Bar> const& bars, std::string const& number,
                     bool last) {
    auto const is = [&](Bar const& bar) { return bar.number == number; };
    if (auto const at = ranges::find_if(bars, is); at != bars.end() && !last)
        return static_cast<std::size_t>(at - bars.begin());
    if (auto const at = std::find_if(bars.rbegin(), bars.rend(), is); at != bars.rend())
        return static_cast<std::size_t>(bars.rend() - at) - 1;
    throw InputError(worded("there is no bar {0}", number),
                     bars.empty() ? worded("the passage has no bars; leave out --from and --to")
                                  : worded("the bars go from {0} to {1}; the notes sung from {2} to {3}",
                                           bars.front().number, bars.back().number,
                                           passage.notes.front().measure, passage.notes.back().measure));
}

std::size_t bar_of(std::vector<Bar> const& bars, SungNote const& note) {
    auto const at = ranges::find(bars, note.measure, &Bar::number);
    return static_cast<std::size_t>(at - bars.begin());
}

void add_beats(Timing& out, Bar const& bar, Clock const& clock) {
    // A bar that is not whole lacks its beginning: its beats are those before the next bar line.
    bool const whole = bar.length > bar.full - 1e-6;
    double const short_by = whole ? 0 : std::ceil(bar.length / bar.beat - 1e-6) * bar.beat - bar.length;
    for (double at = -short_by; at < bar.length - 1e-6; at += bar.beat)
        if (at > -1e-6) out.beats.push_back({seconds(clock.time(bar.start + at)), whole && at < 1e-6});
}

} // namespace

Timing timing_of(Passage const& passage, TimingAsked const& asked) {
    if (asked.quarter && !(*asked.quarter >= shortest_quarter && *asked.quarter <= longest_quarter))
        throw InputError(worded("nobody sings at this tempo"),
                         worded("give 10 to 400 quarter notes a minute"));
    if (passage.notes.empty())
        throw InputError(worded("nothing is sung in this passage"), worded("give a score with a vocal line"));
    auto const bars = bars_of(passage);
    Clock const clock(passage);
    std::size_t const first = asked.from ? find_bar(passage, bars, *asked.from, false) : 0;
    std::size_t const last = asked.to ? find_bar(passage, bars, *asked.to, true) : bars.size();
    if (first > last)
        throw InputError(worded("bar {0} comes after bar {1}", *asked.from, *asked.to),
                         worded("name the earlier bar first"));
    Timing out;
    std::size_t from_bar = bars.size(), to_bar = 0;
    for (std::size_t i = 0; i < passage.notes.size(); ++i) {
        auto const& note = passage.notes[i];
        auto const bar = bar_of(bars, note);
        if (!bars.empty() && (bar < first || bar > last)) continue;
        if (in_seconds(note.length) <= 0) continue;
        out.notes.push_back({i, note.start, note.length});
        from_bar = std::min(from_bar, bar);
        to_bar = std::max(to_bar, std::min(bar, bars.size() - 1));
    }
    if (out.notes.empty())
        throw InputError(worded("nothing is sung in these bars"), worded("ask for bars with notes"));
    if (asked.from) from_bar = first;
    bool const countable = clock.known() && from_bar < bars.size();
    double zero = in_seconds(out.notes.front().start), per_quarter = 60.0 / 72;
    if (countable) {
        zero = std::min(zero, clock.time(bars[from_bar].start));
        per_quarter = clock.time(bars[from_bar].start + 1) - clock.time(bars[from_bar].start);
        for (std::size_t b = from_bar; b <= to_bar; ++b) add_beats(out, bars[b], clock);
    }
    if (asked.count_in && !countable)
        throw InputError(worded("no bars can be counted in this passage"), worded("leave out the count-in"));
    if (asked.count_in) {
        auto const& bar = bars[from_bar];
        double const beat = bar.beat * per_quarter, whole = bar.full / bar.beat;
        double const missing = bar.length < bar.full - 1e-6 ? (bar.full - bar.length) / bar.beat : 0;
        std::vector<Beat> before;
        auto const count = static_cast<int>(std::lround(whole + missing));
        for (int k = count; k > 0; --k)
            before.push_back({seconds(zero - k * beat), count == k || std::abs(k - missing) < 1e-6});
        out.beats.insert(out.beats.begin(), before.begin(), before.end());
    }
    double const scale = asked.quarter ? in_seconds(*asked.quarter) / per_quarter : 1;
    double const begin = std::min(zero, out.beats.empty() ? zero : in_seconds(out.beats.front().at));
    for (auto& note : out.notes) {
        note.start = seconds((in_seconds(note.start) - begin) * scale);
        note.length = note.length * scale;
        out.length = std::max(out.length, note.start + note.length);
    }
    for (auto& beat : out.beats) beat.at = seconds((in_seconds(beat.at) - begin) * scale);
    out.quarter = seconds(per_quarter * scale);
    out.begins = seconds((zero - begin) * scale);
    return out;
}

} // namespace vowelway::sound
