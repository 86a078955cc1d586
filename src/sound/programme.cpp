// SPDX-License-Identifier: MIT
#include "vowelway/sound/programme.hpp"
#include "core/ranges.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>
#include <numbers>

namespace vowelway::sound {

namespace {

constexpr std::size_t block_size = 4800;

std::size_t samples_in(Duration d) {
    return static_cast<std::size_t>(std::max(0LL, std::llround(in_seconds(d) * in_hertz(sample_rate))));
}

// One item on its way.
struct Playing {
    Item const* item = nullptr;
    std::unique_ptr<Part> part;
    std::size_t begin = 0, end = 0, fade = 0;
    double factor = 1;

    double edge(std::size_t at) const {
        std::size_t const from_end = std::min(at - begin, end - 1 - at);
        if (from_end >= fade) return factor;
        double const share = (static_cast<double>(from_end) + 0.5) / static_cast<double>(fade);
        return factor * 0.5 * (1 - std::cos(std::numbers::pi * share));
    }
};

std::vector<Playing> in_order(Programme const& programme) {
    std::vector<Playing> out;
    for (auto const& item : programme.items) {
        auto const begin = samples_in(item.start), end = begin + samples_in(item.length);
        if (end == begin) continue;
        out.push_back({&item, nullptr, begin, end, std::min(samples_in(item.fade), (end - begin) / 2),
                       std::pow(10, item.level.value / 20)});
    }
    ranges::stable_sort(out, {}, &Playing::begin);
    return out;
}

// Adds what falls into the block that begins at `now`.
void add(Playing& playing, std::size_t now, std::span<double> block, std::span<double> alone) {
    std::size_t const from = std::max(now, playing.begin), to = std::min(now + block.size(), playing.end);
    if (from >= to) return;
    if (!playing.part) playing.part = playing.item->make();
    auto const own = alone.subspan(0, to - from);
    std::fill(own.begin(), own.end(), 0.0);
    playing.part->add(own);
    for (std::size_t i = 0; i < own.size(); ++i) block[from - now + i] += own[i] * playing.edge(from + i);
}

} // namespace

Duration length_of(Programme const& programme) {
    Duration end{};
    for (auto const& item : programme.items) end = std::max(end, item.start + item.length);
    return end;
}

void play(Programme const& programme, double gain, Sink const& sink) {
    auto const total = samples_in(length_of(programme));
    auto waiting = in_order(programme);
    std::vector<Playing> playing;
    std::size_t next = 0;
    std::array<double, block_size> block, alone;
    std::array<float, block_size> out;
    for (std::size_t now = 0; now < total; now += block_size) {
        std::size_t const size = std::min(block_size, total - now);
        std::span const here(block.data(), size);
        std::fill(here.begin(), here.end(), 0.0);
        for (; next < waiting.size() && waiting[next].begin < now + size; ++next)
            playing.push_back(std::move(waiting[next]));
        for (auto& one : playing) add(one, now, here, alone);
        std::erase_if(playing, [&](Playing const& one) { return one.end <= now + size; });
        for (std::size_t i = 0; i < size; ++i) out[i] = static_cast<float>(here[i] * gain);
        sink(std::span(out).first(size));
    }
}

} // namespace vowelway::sound
