// SPDX-License-Identifier: MIT
#include "analysis/looks.hpp"

#include "analysis/band_lags.hpp"
#include "analysis/closures.hpp"
#include "analysis/resample.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace vowelway::analysis {
namespace {

constexpr double floor_left = 0.05; // of a bin's power, at least, after the noise is taken off
constexpr double gain_in_front =
    1.03; // of whiteness by zeros: 10 % of whispers from the glottis gain more, 60 to 75 % of others (ours)
constexpr std::size_t looks_otherwise = 4; // every fourth
constexpr double emphasis = 0.97;          // first difference against the slope of a voiced source

int order_needed(std::vector<LookSetting> const& settings, Frequency ceiling) {
    int most = 0;
    for (auto const& s : settings)
        if (s.ceiling == ceiling) most = std::max(most, s.order);
    return most;
}

std::vector<Frequency> ceilings_of(std::vector<LookSetting> const& settings) {
    std::vector<Frequency> all;
    for (auto const& s : settings)
        if (std::find(all.begin(), all.end(), s.ceiling) == all.end()) all.push_back(s.ceiling);
    return all;
}

void take_off(PowerSpectrum& spectrum, PowerSpectrum const& noise) {
    if (noise.power.size() != spectrum.power.size()) return;
    for (std::size_t k = 0; k < spectrum.power.size(); ++k)
        spectrum.power[k] = std::max(spectrum.power[k] - noise.power[k], floor_left * spectrum.power[k]);
}

/// Every second look tells how the blocks scatter: they tell nearly the same.
bool scatter_wanted(std::vector<Look> const& so_far) { return so_far.size() % 2 == 0; }

std::vector<LookSetting> every_nth(std::vector<LookSetting> const& all, std::size_t n, std::size_t from) {
    std::vector<LookSetting> some;
    for (std::size_t i = from; i < all.size(); i += n) some.push_back(all[i]);
    return some;
}

/// Adds the looks of these settings at a spectrum and its blocks, whitened in this way.
void look_through(Whitening const& way, PowerSpectrum whole, std::vector<PowerSpectrum> blocks,
                  Frequency rate, std::vector<LookSetting> const& settings, std::vector<Look>& looks) {
    whiten(whole, rate, way);
    for (auto& b : blocks) whiten(b, rate, way);
    for (auto const& ceiling : ceilings_of(settings)) {
        int const order = order_needed(settings, ceiling);
        // The band ends at a bin: that, not the ceiling asked for, is what the predictor takes for half its
        // rate.
        auto const rate_of_band = whole.bin * (2 * std::min(std::round(ceiling / whole.bin),
                                                            static_cast<double>(whole.power.size() - 1)));
        BandLags const lags(whole, ceiling, order);
        auto const each = lags.of_each(whole, blocks);
        auto const& all = each.front();
        for (auto const& s : settings) {
            if (s.ceiling != ceiling || all[0] <= 0) continue;
            Look one{s, predict(all, s.order, rate_of_band), {}, {}, all};
            for (auto const& r : std::span(each).subspan(1))
                if (scatter_wanted(looks) && r[0] > 0)
                    one.blocks.push_back(predict(r, s.order, rate_of_band));
            one.poles = poles(one.whole);
            looks.push_back(std::move(one));
        }
    }
}

Looks look_at_noise(std::span<float const> steady, Frequency rate, std::vector<LookSetting> const& settings,
                    FormantOptions const& options, Zeros const& zeros) {
    auto blocks = options.blocks.empty() ? block_spectra(steady, rate, steady_blocks)
                                         : std::vector(options.blocks.begin(), options.blocks.end());
    auto whole = pooled(blocks);
    auto const before = whole;
    if (options.noise) {
        for (auto& b : blocks) take_off(b, *options.noise);
        take_off(whole, *options.noise);
    }
    Looks looks;
    looks.frames = whole.frames;
    looks.noise_samples = in_seconds(static_cast<double>(steady.size()) / rate);
    auto const& last = settings.back();
    auto& found = looks.whitenings;
    if (zeros.known)
        found = *zeros.known;
    else if (!options.settings.empty())
        found = {{Whitening{}}, true, {}};
    else
        found = zeros.sought ? find_whitenings(whole, before, rate, last.ceiling, last.order)
                             : whitenings_as_it_is(whole, rate, last.ceiling, last.order);
    auto const& ways = found.ways;
    looks.trusted = zeros.trusted;
    looks.whiteness = ways[0].whiteness;
    looks.in_front = !ways[0].zeros.empty() && ways[0].gain > gain_in_front;
    for (std::size_t w = 0; w < ways.size(); ++w)
        look_through(ways[w], whole, blocks, rate, every_nth(settings, ways.size(), w), looks.each);
    if (found.other)
        look_through(*found.other, whole, {}, rate, every_nth(settings, looks_otherwise, 0), looks.otherwise);
    return looks;
}

Resampled emphasised(Resampled sound) {
    for (std::size_t n = sound.samples.size(); n-- > 1;) sound.samples[n] -= emphasis * sound.samples[n - 1];
    return sound;
}

Look look_by(WeightedMoments const& sums, LookSetting const& setting, Frequency rate) {
    Look one{setting, sums.predict(setting.order, rate), {}, {}, {}};
    one.poles = poles(one.whole);
    return one;
}

/// The settings of the first ceiling again, as if the folds closed at these moments.
std::vector<Look> look_after(std::vector<std::size_t> const& moments, Resampled const& sound,
                             std::vector<LookSetting> const& settings) {
    WeightedMoments sums(order_needed(settings, settings.front().ceiling));
    sums.add(sound.samples, after_closures(sound.samples, sound.rate, moments));
    std::vector<Look> looks;
    for (auto const& s : settings)
        if (!sums.empty() && s.ceiling == settings.front().ceiling)
            looks.push_back(look_by(sums, s, sound.rate));
    return looks;
}

Looks look_at_pulses(std::span<float const> steady, Frequency rate, std::vector<LookSetting> const& settings,
                     FormantOptions const& options) {
    Looks looks;
    looks.frames = static_cast<int>(std::max(
        1.0, std::floor(static_cast<double>(steady.size()) / in_hertz(rate) / in_seconds(spectrum_frame) * 2 -
                        1)));
    Resampler const resampler(steady, rate);
    std::optional<Closures> closures; // sought once, under the first ceiling, the lowest
    for (auto const& ceiling : ceilings_of(settings)) {
        int const order = order_needed(settings, ceiling);
        auto const sound = emphasised(resampler.at(ceiling * 2.0));
        if (!closures) {
            closures = find_closures(sound.samples, sound.rate, options.fo, order);
            if (!closures->opposite.empty())
                looks.otherwise = look_after(closures->opposite, sound, settings);
        }
        auto const weights = after_closures(sound.samples, sound.rate, closures->moments_at(sound.rate));
        auto const pieces = std::clamp<std::size_t>(
            static_cast<std::size_t>(static_cast<double>(sound.samples.size()) / in_hertz(sound.rate) / 0.06),
            1, steady_blocks);
        std::vector<WeightedMoments> blocks(pieces, WeightedMoments(order));
        WeightedMoments whole(order);
        for (std::size_t b = 0; b < pieces; ++b) {
            auto const from = b * sound.samples.size() / pieces, to = (b + 1) * sound.samples.size() / pieces;
            blocks[b].add(std::span(sound.samples).subspan(from, to - from),
                          std::span(weights).subspan(from, to - from));
            whole += blocks[b];
        }
        if (whole.empty()) continue;
        for (auto const& s : settings) {
            if (s.ceiling != ceiling) continue;
            auto one = look_by(whole, s, sound.rate);
            for (auto const& b : blocks)
                if (scatter_wanted(looks.each) && !b.empty())
                    one.blocks.push_back(b.predict(s.order, sound.rate));
            looks.each.push_back(std::move(one));
        }
    }
    return looks;
}

} // namespace

Looks look(std::span<float const> steady, Frequency rate, std::vector<LookSetting> const& settings,
           FormantOptions const& options, Zeros const& zeros) {
    return options.kind == ProbeKind::whisper ? look_at_noise(steady, rate, settings, options, zeros)
                                              : look_at_pulses(steady, rate, settings, options);
}

std::optional<double> variance_of_centre(Look const& look, Pole const& pole, double noise_seconds,
                                         FormantOptions const& options) {
    if (look.blocks.empty()) return std::nullopt;
    double from_blocks = 0;
    if (look.blocks.size() >= 2) {
        double sum = 0;
        for (auto const& b : look.blocks) {
            double const away = in_hertz(follow_pole(b, pole).centre - pole.centre);
            sum += away * away;
        }
        auto const count = static_cast<double>(look.blocks.size());
        from_blocks = sum / (count - 1) / count;
    }
    bool const rings = options.room && options.room->share > 0;
    double const like_noise = rings ? in_seconds(options.room->like_noise_of(options.fo)) : 0;
    if (look.autocorrelation.empty())
        return from_blocks +
               (rings ? std::max(in_hertz(pole.bandwidth), 0.0) / (4 * std::numbers::pi * like_noise) : 0);
    double const samples = noise_seconds * 2 * in_hertz(look.setting.ceiling);
    double const bound = bound_of_centre(look.whole, pole, look.autocorrelation, samples);
    return std::max(from_blocks, bound) + (rings ? bound * (noise_seconds / like_noise) : 0);
}

} // namespace vowelway::analysis
