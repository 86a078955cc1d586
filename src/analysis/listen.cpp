// SPDX-License-Identifier: MIT
#include "vowelway/analysis/listen.hpp"

#include "analysis/decibels.hpp"
#include "analysis/unrest.hpp"
#include "core/ranges.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

namespace vowelway::analysis {
namespace {

constexpr double step = 0.010;     // s, of the level
constexpr double page_length = 30; // s
constexpr double guard = 0.05;     // s around a sound that are not counted as pause
constexpr double even_pause = 12;  // dB: a "pause" that changes more is a sound dying away
constexpr double lowest_level = -120, histogram_step = 0.5; // dB
constexpr std::size_t histogram_size = 240;

/// Level in each step, of what lies above 100 Hz (second-order high-pass: rumble and handling do not count),
/// then the greatest of five neighbours, so that the pauses between the pulses of a creak do not count as
/// silence.
std::vector<double> levels_of(std::span<float const> x, double rate) {
    double const w = std::tan(std::numbers::pi * 100 / rate),
                 norm = 1 / (1 + std::numbers::sqrt2 * w + w * w);
    double const b1 = 2 * (w * w - 1) * norm, b2 = (1 - std::numbers::sqrt2 * w + w * w) * norm;
    auto const length = static_cast<std::size_t>(std::lround(step * rate));
    std::vector<double> raw(x.size() / length, 0.0);
    double s1 = 0, s2 = 0;
    for (std::size_t i = 0; i < raw.size(); ++i)
        for (std::size_t n = i * length; n < (i + 1) * length; ++n) {
            double const s0 = (static_cast<double>(x[n]) - b2 * s2) - b1 * s1;
            double const y = norm * (s0 - 2 * s1 + s2);
            s2 = s1;
            s1 = s0;
            raw[i] += y * y;
        }
    std::vector<double> levels(raw.size());
    for (std::size_t i = 0; i < raw.size(); ++i) {
        auto const from = i < 2 ? 0 : i - 2, to = std::min(raw.size(), i + 3);
        levels[i] = decibels(*std::max_element(raw.begin() + static_cast<std::ptrdiff_t>(from),
                                               raw.begin() + static_cast<std::ptrdiff_t>(to)) /
                                 static_cast<double>(length),
                             floor_of_level);
    }
    return levels;
}

double level_at(std::vector<int> const& histogram, double share) {
    double total = 0, run = 0;
    for (int c : histogram) total += c;
    for (std::size_t k = 0; k < histogram.size(); ++k) {
        run += histogram[k];
        if (run >= share * total) return lowest_level + histogram_step * (static_cast<double>(k) + 0.5);
    }
    return lowest_level;
}

std::vector<int> histogram_of(std::vector<double> const& levels) {
    std::vector<int> histogram(histogram_size, 0);
    for (double l : levels) {
        double const k =
            std::clamp((l - lowest_level) / histogram_step, 0.0, static_cast<double>(histogram_size - 1));
        ++histogram[static_cast<std::size_t>(k)];
    }
    return histogram;
}

struct Run {
    std::size_t from, to; // steps
};

/// Runs of steps above the threshold, short gaps closed, clicks left out.
std::vector<Run> sounding_runs(std::vector<double> const& levels, double threshold) {
    auto const gap = static_cast<std::size_t>(in_seconds(longest_gap) / step);
    auto const least = static_cast<std::size_t>(in_seconds(shortest_stretch) / step);
    std::vector<Run> runs;
    for (std::size_t i = 0; i < levels.size(); ++i) {
        if (levels[i] < threshold) continue;
        if (!runs.empty() && i - runs.back().to <= gap)
            runs.back().to = i + 1;
        else
            runs.push_back({i, i + 1});
    }
    std::erase_if(runs, [&](Run const& r) { return r.to - r.from < least; });
    return runs;
}

/// The page ends at the softest moment of its last third; the rest belongs to the next.
void cut_where_softest(std::vector<double>& levels) {
    if (levels.empty()) return;
    auto const third = levels.begin() + static_cast<std::ptrdiff_t>(levels.size() * 2 / 3);
    levels.erase(std::min_element(third, levels.end()) + 1, levels.end());
}

/// Sound against pauses.
struct Contrast {
    double loudest, threshold;
    bool flat; // nothing stands out
};

Contrast contrast_of(std::vector<int> const& here, std::vector<int> const& all) {
    // A page that is all sound has no floor of its own.
    double const floor = std::min(level_at(here, 0.10), level_at(all, 0.10));
    double const loudest = std::max(level_at(here, 0.985), floor); // half a second of a page
    return {loudest, std::max(floor + std::clamp(0.35 * (loudest - floor), 5.0, 15.0), silence.value),
            loudest - floor < least_contrast.value};
}

/// How the sounds of a page die away, where that can be told. `length`: samples of a step.
void add_endings(std::vector<Room>& endings, std::span<float const> page, Frequency rate,
                 std::vector<Run> const& runs, std::size_t steps, std::size_t length) {
    for (std::size_t i = 0; i < runs.size(); ++i) {
        auto const quiet = (i + 1 < runs.size() ? runs[i + 1].from - 3 : steps) * length; // levels look ahead
        if (auto const ending =
                dying_away(page, rate, runs[i].from * length, std::min(runs[i].to, steps) * length, quiet))
            endings.push_back(*ending);
    }
}

/// The samples of a page that a cue covers.
struct Piece {
    std::size_t from, to;
    bool from_the_start; // of the page
};

std::optional<Piece> cued_piece(TimeSpan cue, double hz, std::size_t page_start, std::size_t page_end) {
    auto const from = std::max(in_seconds(cue.start) * hz - static_cast<double>(page_start), 0.0);
    auto const to =
        std::min(in_seconds(cue.end) * hz - static_cast<double>(page_start), static_cast<double>(page_end));
    if (to <= from) return std::nullopt;
    return Piece{static_cast<std::size_t>(from), static_cast<std::size_t>(to), from == 0};
}

/// Steps below the threshold and away from any sound.
std::vector<bool> pauses_of(std::vector<double> const& levels, double threshold) {
    auto const away = static_cast<std::size_t>(guard / step);
    std::vector<bool> pause(levels.size(), true);
    for (std::size_t i = 0; i < levels.size(); ++i)
        if (levels[i] >= threshold)
            for (std::size_t j = i < away ? 0 : i - away; j < std::min(levels.size(), i + away + 1); ++j)
                pause[j] = false;
    return pause;
}

/// Adds the even pauses of a page to the noise. `length`: samples of a step.
void add_noise(Heard& heard, std::span<float const> page, Frequency rate, std::vector<double> const& levels,
               double threshold, std::size_t length) {
    auto const pause = pauses_of(levels, threshold);
    for (std::size_t i = 0; i < levels.size();) {
        auto end = i;
        while (end < levels.size() && pause[end]) ++end;
        auto const piece_levels = std::span(levels).subspan(i, end - i);
        bool const even = i < end && ranges::max(piece_levels) - ranges::min(piece_levels) < even_pause;
        if (even && static_cast<double>(end - i) * step >= 0.1) {
            auto const piece = page.subspan(i * length, std::min(end - i, std::size_t{500}) * length);
            auto const pause_heard = pause_of(piece, rate);
            std::vector<PowerSpectrum> both{pause_heard.spectrum};
            if (heard.noise) both.push_back(*heard.noise);
            heard.noise = pooled(both);
            double& least = heard.pause_unrest; // a breath in one pause does not count
            if (double const u = pause_heard.unrest; u > 0) least = least > 0 ? std::min(least, u) : u;
        }
        i = std::max(end, i + 1);
    }
}

} // namespace

Listener::Listener(Frequency rate, std::vector<TimeSpan> cues)
    : rate_(rate), cues_(std::move(cues)), histogram_(histogram_size, 0) {
    page_.reserve(
        static_cast<std::size_t>(1.125 * page_length * in_hertz(rate))); // the last samples go over it
}

bool Listener::hear(std::span<float const> samples) {
    page_.insert(page_.end(), samples.begin(), samples.end());
    while (!overfull_ && static_cast<double>(page_.size()) >= page_length * in_hertz(rate_)) turn_page(false);
    return !overfull_;
}

void Listener::keep(std::size_t from, std::size_t to) {
    auto const count = to - from;
    kept_ += count;
    if (static_cast<double>(kept_) > in_seconds(most_sound) * in_hertz(rate_)) {
        overfull_ = true;
        return;
    }
    auto const begin = page_.begin() + static_cast<std::ptrdiff_t>(from);
    auto const end = page_.begin() + static_cast<std::ptrdiff_t>(to);
    auto const start = seconds(static_cast<double>(page_start_ + from) / in_hertz(rate_));
    if (!heard_.stretches.empty()) { // goes on from the page before
        auto& last = heard_.stretches.back();
        if (std::abs(in_seconds(last.start + last.length() - start)) < 0.5 / in_hertz(rate_) &&
            cues_.empty()) {
            last.samples.insert(last.samples.end(), begin, end);
            return;
        }
    }
    heard_.stretches.push_back({{begin, end}, rate_, start});
}

void Listener::turn_page(bool last) {
    double const hz = in_hertz(rate_);
    auto const length = static_cast<std::size_t>(std::lround(step * hz));
    auto levels = levels_of(page_, hz);
    if (!last) cut_where_softest(levels);
    auto const here = histogram_of(levels);
    for (std::size_t k = 0; k < here.size(); ++k) histogram_[k] += here[k];
    auto const [loudest, threshold, flat] = contrast_of(here, histogram_);
    auto runs = flat ? std::vector<Run>{} : sounding_runs(levels, threshold);
    heard_.loudest = {std::max(heard_.loudest.value, loudest)};
    heard_.stands_out = heard_.stands_out || !runs.empty();
    bool const all_of_it = flat && last && page_start_ == 0 && loudest > silence.value;
    if (all_of_it)
        runs = {{0, levels.size()}}; // a short recording without a pause: others decide
    else
        add_endings(endings_, page_, rate_, runs, levels.size(), length);

    auto const page_end = last ? page_.size() : levels.size() * length;
    if (cues_.empty())
        for (auto const& r : runs) keep(r.from * length, std::min(r.to * length, page_end));
    for (auto const& cue : cues_) {
        auto const piece = cued_piece(cue, hz, page_start_, page_end);
        if (!piece) continue;
        bool const goes_on = piece->from_the_start && page_start_ > 0 && !heard_.stretches.empty() &&
                             heard_.stretches.back().start >= cue.start - seconds(1 / hz);
        if (goes_on) {
            auto& samples = heard_.stretches.back().samples;
            samples.insert(samples.end(), page_.begin() + static_cast<std::ptrdiff_t>(piece->from),
                           page_.begin() + static_cast<std::ptrdiff_t>(piece->to));
        } else {
            keep(piece->from, piece->to);
        }
    }

    if (!all_of_it) add_noise(heard_, page_, rate_, levels, threshold, length);
    page_.erase(page_.begin(), page_.begin() + static_cast<std::ptrdiff_t>(page_end));
    page_start_ += page_end;
}

Heard Listener::finish() {
    heard_.length = seconds(static_cast<double>(page_start_ + page_.size()) / in_hertz(rate_));
    if (!page_.empty() && !overfull_) turn_page(true);
    heard_.room = room_of(std::move(endings_));
    heard_.floor = {level_at(histogram_, 0.10)};
    return std::move(heard_);
}

} // namespace vowelway::analysis
