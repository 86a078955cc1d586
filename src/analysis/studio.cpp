// SPDX-License-Identifier: MIT
#include "vowelway/analysis/studio.hpp"

#include <algorithm>
#include <charconv>
#include <chrono>

namespace vowelway::analysis {

namespace {

std::optional<std::chrono::sys_days> day_of(std::string const& iso) {
    constexpr std::size_t length = 10; // 2026-10-03
    if (iso.size() != length || iso[4] != '-' || iso[7] != '-') return std::nullopt;
    auto const number = [&](std::size_t from, std::size_t count) {
        int value = -1;
        std::from_chars(iso.data() + from, iso.data() + from + count, value);
        return value;
    };
    std::chrono::year_month_day const day{std::chrono::year(number(0, 4)),
                                          std::chrono::month(static_cast<unsigned>(number(5, 2))),
                                          std::chrono::day(static_cast<unsigned>(number(8, 2)))};
    if (!day.ok()) return std::nullopt;
    return std::chrono::sys_days(day);
}

} // namespace

bool StudioSinger::is_old() const { return days && *days > old_after_days; }

std::optional<int> days_between(std::string const& from, std::string const& to) {
    auto const begin = day_of(from), end = day_of(to);
    if (!begin || !end) return std::nullopt;
    return static_cast<int>((*end - *begin).count());
}

StudioSinger studio_singer(Profile profile, std::string const& today) {
    static auto const asked = parse_vowels("i e ɛ a ɔ o u");
    StudioSinger out;
    out.last_measured = profile.singer.provenance.date;
    for (auto const& entry : profile.history) out.last_measured = std::max(out.last_measured, entry.date);
    if (auto const days = days_between(out.last_measured, today)) out.days = std::max(0, *days);
    for (auto const& vowel : asked) {
        auto const* known = profile.singer.find(vowel);
        if (!known || known->estimated) out.missing.push_back(vowel);
    }
    auto const history = history_of(profile, {});
    for (std::size_t i = 0; i < history.size(); ++i) {
        bool const last = i + 1 == history.size() || !(history[i + 1].measurement.vowel.quality() ==
                                                       history[i].measurement.vowel.quality());
        if (auto const& change = history[i].change; last && change && (change->r1_clear || change->r2_clear))
            out.changed.push_back(history[i]);
    }
    out.profile = std::move(profile);
    return out;
}

} // namespace vowelway::analysis
