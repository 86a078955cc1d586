// SPDX-License-Identifier: MIT
#include "vowelway/analysis/steady.hpp"

#include "analysis/frames.hpp"
#include "analysis/spectral_shape.hpp"
#include "vowelway/analysis/formants.hpp"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>

namespace vowelway::analysis {
namespace {

constexpr std::size_t shortest_piece = 8, longest_piece = 600; // frames of 20 ms

constexpr double never = std::numeric_limits<double>::infinity();

constexpr double fading = 20;               // dB below its loudest: dying away, no vowel any more
constexpr double level_step = 0.01;         // s
constexpr std::size_t steps_of_a_bump = 10; // louder for less than that: a bump, not the sound
constexpr double shortest_judged = 0.4;     // s: of less it cannot be told whether it moves

/// From the first to the last moment that is not fading: behind a vowel there may be the noise of a room, as
/// steady as can be and far above what the recording ends with.
TimeSpan without_fading(Sound const& sound, TimeSpan within) {
    auto const samples = part(sound, within.start, within.end);
    auto const length = static_cast<std::size_t>(level_step * in_hertz(sound.rate));
    std::vector<double> energy(length > 0 ? samples.size() / length : 0, 0.0);
    if (energy.empty()) return within;
    for (std::size_t i = 0; i < energy.size(); ++i)
        for (float const x : samples.subspan(i * length, length))
            energy[i] += static_cast<double>(x) * static_cast<double>(x);
    auto sorted = energy;
    auto const loudest =
        sorted.begin() + static_cast<std::ptrdiff_t>(std::min(steps_of_a_bump, sorted.size() / 4));
    std::nth_element(sorted.begin(), loudest, sorted.end(), std::greater<>());
    auto const sounds = [least = *loudest * std::pow(10.0, -fading / 10)](double e) { return e >= least; };
    auto const first = std::find_if(energy.begin(), energy.end(), sounds) - energy.begin();
    auto const last = std::find_if(energy.rbegin(), energy.rend(), sounds) - energy.rbegin();
    return {within.start + seconds(static_cast<double>(first) * level_step),
            within.end - seconds(static_cast<double>(last) * level_step)};
}

/// The best cuts of one sound into 0, 1, 2 .. pieces.
struct Cuts {
    std::vector<double> cost;                   // by the number of pieces
    std::vector<std::vector<std::size_t>> ends; // frame ends of the pieces
    std::vector<double> time;                   // of the frames
};

Cuts cuts_of(Sound const& sound, std::size_t most_pieces) {
    auto const shapes = shapes_of(sound, {sound.start, sound.start + sound.length()});
    auto const frames = shapes.each.size();
    Scatter const scatter(shapes.each);
    auto const most = std::min(most_pieces, std::max<std::size_t>(frames / shortest_piece, 1));
    std::vector<std::vector<double>> cost(most + 1, std::vector<double>(frames + 1, never));
    std::vector<std::vector<std::size_t>> from(most + 1, std::vector<std::size_t>(frames + 1, 0));
    cost[0][0] = 0;
    for (std::size_t end = 1; end <= frames; ++end)
        for (std::size_t begin = end > longest_piece ? end - longest_piece : 0; begin < end; ++begin) {
            bool const whole_sound = begin == 0 && end == frames;
            if (end - begin < shortest_piece && !whole_sound) break;
            double const piece = scatter.cost(begin, end);
            for (std::size_t m = 1; m <= most; ++m)
                if (cost[m - 1][begin] + piece < cost[m][end]) {
                    cost[m][end] = cost[m - 1][begin] + piece;
                    from[m][end] = begin;
                }
        }
    Cuts cuts{.cost = {}, .ends = {}, .time = shapes.time};
    for (std::size_t m = 0; m <= most; ++m) {
        cuts.cost.push_back(cost[m][frames]);
        std::vector<std::size_t> ends;
        if (m > 0 && cost[m][frames] < never)
            for (std::size_t end = frames, left = m; left > 0; end = from[left][end], --left)
                ends.insert(ends.begin(), end);
        cuts.ends.push_back(std::move(ends));
    }
    return cuts;
}

/// Pieces shared out between sounds, one sound after the other.
class Sharing {
  public:
    explicit Sharing(std::size_t count) : best_(count + 1, never) { best_[0] = 0; }

    void add(Cuts const& cuts) {
        std::vector<double> next(best_.size(), never);
        std::vector<std::size_t> chosen(best_.size(), 0);
        for (std::size_t total = 1; total < best_.size(); ++total)
            for (std::size_t m = 1; m < cuts.cost.size() && m <= total; ++m)
                if (best_[total - m] + cuts.cost[m] < next[total]) {
                    next[total] = best_[total - m] + cuts.cost[m];
                    chosen[total] = m;
                }
        best_ = std::move(next);
        chosen_.push_back(std::move(chosen));
    }
    bool possible() const { return best_.back() != never; }
    /// Pieces of a sound when `left` are left for it and those before it.
    std::size_t pieces(std::size_t sound, std::size_t left) const { return chosen_[sound][left]; }

  private:
    std::vector<double> best_; // [m]: least cost of all sounds up to this one in m pieces
    std::vector<std::vector<std::size_t>> chosen_;
};

/// The pieces of a sound as times; the edges lie between two frames.
std::vector<Segment> segments_of(Sound const& sound, std::size_t index, Cuts const& cuts,
                                 std::size_t pieces) {
    auto const edge = [&](std::size_t frame) {
        if (frame == 0) return in_seconds(sound.start);
        if (frame >= cuts.time.size()) return in_seconds(sound.start + sound.length());
        return 0.5 * (cuts.time[frame - 1] + cuts.time[frame]);
    };
    std::vector<Segment> segments;
    std::size_t begin = 0;
    for (auto const end : cuts.ends[pieces]) {
        segments.push_back({index, {seconds(edge(begin)), seconds(edge(end))}});
        begin = end;
    }
    return segments;
}

} // namespace

std::optional<std::vector<Segment>> cut_into(std::vector<Sound> const& sounds, std::size_t count) {
    if (sounds.empty() || count < sounds.size()) return std::nullopt;
    Sharing sharing(count);
    std::vector<Cuts> cuts;
    for (auto const& sound : sounds) {
        cuts.push_back(cuts_of(sound, count - sounds.size() + 1));
        sharing.add(cuts.back());
    }
    if (!sharing.possible()) return std::nullopt;
    std::vector<Segment> segments;
    std::size_t left = count;
    for (std::size_t s = sounds.size(); s-- > 0;) {
        auto const here = segments_of(sounds[s], s, cuts[s], sharing.pieces(s, left));
        segments.insert(segments.begin(), here.begin(), here.end());
        left -= here.size();
    }
    return segments;
}

std::optional<SteadyPart> steady_part(Sound const& sound, TimeSpan whole) {
    auto const within = without_fading(sound, whole);
    double const length = in_seconds(within.length());
    if (length < 0.12) return std::nullopt;
    double const edge = std::clamp(0.12 * length, 0.01, 0.15);
    TimeSpan const inner{within.start + seconds(edge), within.end - seconds(edge)};
    auto const shapes = shapes_of(sound, inner, true);
    auto const count = shapes.each.size();

    auto const mean_of = [&](std::size_t from, std::size_t to) {
        Shape mean{};
        for (std::size_t f = from; f < to; ++f)
            for (std::size_t b = 0; b < bands; ++b)
                mean[b] += shapes.each[f][b] / static_cast<double>(to - from);
        return mean;
    };
    // The centre: the frames that lie nearest to their neighbourhood's mean, a quarter of the piece.
    auto const quarter = std::max<std::size_t>(count / 4, std::min<std::size_t>(count, 4));
    std::size_t best = 0;
    double least = std::numeric_limits<double>::infinity();
    Scatter const scatter(shapes.each);
    for (std::size_t f = 0; f + quarter <= count; ++f)
        if (double const cost = scatter.cost(f, f + quarter); cost < least) least = cost, best = f;
    auto const centre = mean_of(best, best + quarter);
    double const usual = std::sqrt(std::max(least, 0.0) / static_cast<double>(quarter) / bands);
    double const allowed = std::max(2.5, 2 * usual);
    std::size_t from = best, to = best + quarter;
    while (from > 0 && distance(shapes.each[from - 1], centre) < allowed) --from;
    while (to < count && distance(shapes.each[to], centre) < allowed) ++to;

    double const half = in_seconds(spectrum_frame) / 2;
    double start = std::max(shapes.time[from] - half, in_seconds(inner.start));
    double end = std::min(shapes.time[to - 1] + half, in_seconds(inner.end));
    bool on_frames = true; // the part is made of whole frames, whose spectra are known
    double const room = in_seconds(shortest_steady) * 1.05 - (end - start); // a short vowel is read as it is
    if (room > 0) {
        on_frames = false;
        start = std::max(in_seconds(within.start), start - room);
        end = std::min(in_seconds(within.end), std::max(end, start + in_seconds(shortest_steady) * 1.05));
    }
    if (end - start > 3) {
        on_frames = false;
        double const middle = shapes.time[best + quarter / 2];
        start = std::clamp(middle - 1.5, start, end - 3);
        end = start + 3;
    }
    TimeSpan const span{seconds(start), seconds(end)};
    auto blocks = on_frames ? grouped(std::span(shapes.spectra).subspan(from, to - from), steady_blocks)
                            : block_spectra(part(sound, span.start, span.end), sound.rate, steady_blocks);
    return SteadyPart{
        span,
        std::move(blocks),
        within,
        {std::sqrt(std::max(scatter.cost(from, to), 0.0) / static_cast<double>(to - from) / bands)}};
}

Decibels movement(Sound const& sound, SteadyPart const& steady) {
    double const length = in_seconds(steady.sounding.length());
    if (length <= shortest_judged || in_seconds(steady.span.length()) >= std::min(length, 3.0) / 3) return {};
    auto const shapes = shapes_of(sound, steady.sounding);
    auto const third = shapes.each.size() / 3;
    if (third == 0) return {};
    Shape first{}, last{};
    for (std::size_t f = 0; f < third; ++f)
        for (std::size_t b = 0; b < bands; ++b) {
            first[b] += shapes.each[f][b] / static_cast<double>(third);
            last[b] += shapes.each[shapes.each.size() - 1 - f][b] / static_cast<double>(third);
        }
    return {distance(first, last)};
}

} // namespace vowelway::analysis
