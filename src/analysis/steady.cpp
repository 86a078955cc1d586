// SPDX-License-Identifier: MIT
#include "vowelway/analysis/steady.hpp"

#include "analysis/frames.hpp"
#include "vowelway/analysis/formants.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace vowelway::analysis {
namespace {

constexpr std::size_t bands = 16;        // half an octave at the bottom to a third at the top, 150 to 6000 Hz
using Shape = std::array<double, bands>; // dB in each band, the mean taken off

double band_edge(std::size_t k) { return 150 * std::pow(40.0, static_cast<double>(k) / bands); }

struct Shapes {
    std::vector<Shape> each;
    std::vector<double> time;           // s in the recording, of the middle of the frame
    std::vector<PowerSpectrum> spectra; // of each frame, where they are asked for
};

/// The spectral shape of each frame, averaged over five frames: noise alone scatters by 4 dB in a narrow
/// band.
Shapes shapes_of(Sound const& sound, TimeSpan within, bool with_spectra = false) {
    auto const samples = part(sound, within.start, within.end);
    Frames frames(samples, sound.rate);
    std::vector<Shape> power(frames.count());
    Shapes shapes;
    auto spectrum = frames.empty();
    for (std::size_t f = 0; f < power.size(); ++f) {
        std::fill(spectrum.power.begin(), spectrum.power.end(), 0.0);
        spectrum.frames = 0;
        frames.add_to(spectrum, f);
        if (with_spectra) shapes.spectra.push_back(spectrum);
        for (std::size_t b = 0; b < bands; ++b)
            power[f][b] = spectrum.mean(hertz(band_edge(b)), hertz(band_edge(b + 1))) + 1e-14;
        shapes.time.push_back(std::max(in_seconds(within.start), in_seconds(sound.start)) +
                              frames.middle(f) / in_hertz(sound.rate));
    }
    shapes.each.resize(power.size());
    for (std::size_t f = 0; f < power.size(); ++f) {
        auto const from = f < 2 ? 0 : f - 2, to = std::min(power.size(), f + 3);
        double mean = 0;
        for (std::size_t b = 0; b < bands; ++b) {
            double sum = 0;
            for (std::size_t g = from; g < to; ++g) sum += power[g][b];
            mean += shapes.each[f][b] = 10 * std::log10(sum / static_cast<double>(to - from));
        }
        for (auto& level : shapes.each[f]) level -= mean / bands;
    }
    return shapes;
}

double distance(Shape const& a, Shape const& b) {
    double sum = 0;
    for (std::size_t k = 0; k < bands; ++k) sum += (a[k] - b[k]) * (a[k] - b[k]);
    return std::sqrt(sum / bands);
}

/// The cost of a piece from running sums.
class Scatter {
  public:
    explicit Scatter(std::vector<Shape> const& shapes)
        : sums_(shapes.size() + 1), squares_(shapes.size() + 1, 0.0) {
        for (std::size_t f = 0; f < shapes.size(); ++f) {
            squares_[f + 1] = squares_[f];
            for (std::size_t b = 0; b < bands; ++b) {
                sums_[f + 1][b] = sums_[f][b] + shapes[f][b];
                squares_[f + 1] += shapes[f][b] * shapes[f][b];
            }
        }
    }
    double cost(std::size_t from, std::size_t to) const {
        double mean = 0;
        for (std::size_t b = 0; b < bands; ++b) {
            double const sum = sums_[to][b] - sums_[from][b];
            mean += sum * sum;
        }
        return squares_[to] - squares_[from] - mean / static_cast<double>(to - from);
    }

  private:
    std::vector<Shape> sums_;
    std::vector<double> squares_;
};

constexpr std::size_t shortest_piece = 8, longest_piece = 600; // frames of 20 ms

} // namespace

std::optional<std::vector<Segment>> cut_into(std::vector<Sound> const& sounds, std::size_t count) {
    if (sounds.empty() || count < sounds.size()) return std::nullopt;
    constexpr double never = std::numeric_limits<double>::infinity();
    // best[m]: least cost of all sounds up to this one in m pieces; pieces remembered per sound.
    std::vector<double> best(count + 1, never);
    best[0] = 0;
    struct Ways {
        std::vector<std::vector<std::size_t>> ends; // [m] frame ends of the best cut into m pieces
        std::vector<double> cost;
        std::vector<std::size_t> chosen; // [total m] pieces of this sound on the best way
        std::vector<double> time;
    };
    std::vector<Ways> ways;
    for (auto const& sound : sounds) {
        TimeSpan const whole{sound.start, sound.start + sound.length()};
        auto const shapes = shapes_of(sound, whole);
        auto const frames = shapes.each.size();
        Scatter const scatter(shapes.each);
        auto const most =
            std::min(count - sounds.size() + 1, std::max<std::size_t>(frames / shortest_piece, 1));
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
        Ways w;
        w.time = shapes.time;
        for (std::size_t m = 0; m <= most; ++m) {
            w.cost.push_back(cost[m][frames]);
            std::vector<std::size_t> ends;
            if (m > 0 && cost[m][frames] < never)
                for (std::size_t end = frames, left = m; left > 0; end = from[left][end], --left)
                    ends.insert(ends.begin(), end);
            w.ends.push_back(std::move(ends));
        }
        std::vector<double> next(count + 1, never);
        w.chosen.assign(count + 1, 0);
        for (std::size_t total = 1; total <= count; ++total)
            for (std::size_t m = 1; m < w.cost.size() && m <= total; ++m)
                if (best[total - m] + w.cost[m] < next[total]) {
                    next[total] = best[total - m] + w.cost[m];
                    w.chosen[total] = m;
                }
        best = std::move(next);
        ways.push_back(std::move(w));
    }
    if (best[count] == never) return std::nullopt;

    std::vector<Segment> segments;
    std::size_t left = count;
    for (std::size_t s = sounds.size(); s-- > 0;) {
        auto const& w = ways[s];
        auto const& ends = w.ends[w.chosen[left]];
        auto const edge = [&](std::size_t frame) { // between two frames
            if (frame == 0) return in_seconds(sounds[s].start);
            if (frame >= w.time.size()) return in_seconds(sounds[s].start + sounds[s].length());
            return 0.5 * (w.time[frame - 1] + w.time[frame]);
        };
        std::vector<Segment> here;
        std::size_t begin = 0;
        for (auto const end : ends) {
            here.push_back({s, {seconds(edge(begin)), seconds(edge(end))}});
            begin = end;
        }
        segments.insert(segments.begin(), here.begin(), here.end());
        left -= ends.size();
    }
    return segments;
}

std::optional<SteadyPart> steady_part(Sound const& sound, TimeSpan within) {
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
        {std::sqrt(std::max(scatter.cost(from, to), 0.0) / static_cast<double>(to - from) / bands)}};
}

} // namespace vowelway::analysis
