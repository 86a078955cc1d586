// SPDX-License-Identifier: MIT
#include "vowelway/analysis/spectrum.hpp"

#include "analysis/frames.hpp"

#include <algorithm>
#include <cmath>

namespace vowelway::analysis {
namespace {

void divide(PowerSpectrum& spectrum, int frames) {
    for (auto& p : spectrum.power) p /= std::max(frames, 1);
}

std::size_t groups_of(std::size_t frames, int blocks) {
    return std::clamp<std::size_t>(static_cast<std::size_t>(std::max(blocks, 1)), 1,
                                   std::max<std::size_t>(frames / 2, 1));
}

} // namespace

std::span<float const> part(Sound const& sound, Duration start, Duration end) {
    auto const index = [&](Duration t) {
        double const n = std::round(in_seconds(t - sound.start) * in_hertz(sound.rate));
        return static_cast<std::size_t>(std::clamp(n, 0.0, static_cast<double>(sound.samples.size())));
    };
    auto const from = index(start), to = std::max(index(end), from);
    return std::span(sound.samples).subspan(from, to - from);
}

double PowerSpectrum::mean(Frequency low, Frequency high) const {
    auto const index = [&](Frequency f) { return in_hertz(f) / in_hertz(bin); };
    auto const from = static_cast<std::size_t>(std::max(0.0, std::ceil(index(low))));
    auto const to = static_cast<std::size_t>(std::max(0.0, std::floor(index(high)) + 1));
    double sum = 0;
    std::size_t count = 0;
    for (std::size_t k = from; k < std::min(to, power.size()); ++k, ++count) sum += power[k];
    return count > 0 ? sum / static_cast<double>(count) : 0;
}

PowerSpectrum average_spectrum(std::span<float const> samples, Frequency rate) {
    Frames frames(samples, rate);
    auto sum = frames.empty();
    for (std::size_t f = 0; f < frames.count(); ++f) frames.add_to(sum, f);
    divide(sum, sum.frames);
    return sum;
}

std::vector<PowerSpectrum> grouped(std::span<PowerSpectrum const> frames, int blocks) {
    auto const count = frames.size(), groups = groups_of(count, blocks);
    std::vector<PowerSpectrum> spectra;
    for (std::size_t g = 0; g < groups; ++g) { // frame f belongs to group f * groups / count
        auto const from = (g * count + groups - 1) / groups, to = ((g + 1) * count + groups - 1) / groups;
        spectra.push_back(pooled(frames.subspan(from, to - from)));
    }
    return spectra;
}

std::vector<PowerSpectrum> block_spectra(std::span<float const> samples, Frequency rate, int blocks) {
    Frames frames(samples, rate);
    auto const count = frames.count(), groups = groups_of(count, blocks);
    std::vector<PowerSpectrum> spectra(groups, frames.empty());
    for (std::size_t f = 0; f < count; ++f) frames.add_to(spectra[f * groups / count], f);
    for (auto& s : spectra) divide(s, s.frames);
    return spectra;
}

PowerSpectrum pooled(std::span<PowerSpectrum const> spectra) {
    PowerSpectrum sum{std::vector<double>(spectra.front().power.size(), 0.0), spectra.front().bin, 0};
    for (auto const& s : spectra) {
        for (std::size_t k = 0; k < sum.power.size(); ++k) sum.power[k] += s.frames * s.power[k];
        sum.frames += s.frames;
    }
    divide(sum, sum.frames);
    return sum;
}

} // namespace vowelway::analysis
