// SPDX-License-Identifier: MIT
#include "vowelway/plan/overview.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

namespace vowelway::plan {

namespace {

constexpr double worth_saying = 0.05; // of a term of the need

std::string why_of(PlanRecord const& record) {
    double most = worth_saying;
    std::string_view words;
    auto at = static_cast<int>(Figure::need_vowels);
    for (auto const& term : key_term_names) {
        double const value = record[static_cast<Figure>(at++)].value_or(0);
        if (value > most) most = value, words = term.words;
    }
    return std::string(words);
}

/// Adds a record to a cell: the least needy key is kept.
void take(std::optional<OverviewCell>& cell, PlanRecord const& record) {
    double const need = *record[Figure::need];
    if (!cell || need < cell->need) {
        double const as_is = cell ? cell->need_as_is : need;
        cell = OverviewCell{record.key.transpose, need, as_is, why_of(record)};
    }
    if (record.key.transpose == 0) cell->need_as_is = need;
}

// What makes two songs alike: where they lie, and what they ask for. All are free of the song's length.
constexpr std::array likened{Figure::quartile1_key, Figure::median_key,      Figure::quartile3_key,
                             Figure::high_key,      Figure::low_key,         Figure::hold,
                             Figure::modify,        Figure::turning,         Figure::meeting,
                             Figure::turned,        Figure::drift_kept_bark, Figure::need};

/// "tenor" of an average tenor.
std::string name_of(PlanRecord const& record) {
    if (record.name.empty()) return record.key.singer;
    bool const built_in =
        record.name.starts_with("Average ") && record.name.find(record.voice) != std::string::npos;
    return built_in ? record.voice : record.name;
}

struct Spread {
    double sum = 0, squares = 0, count = 0;
    void add(double v) { sum += v, squares += v * v, ++count; }
    double sd() const { return std::sqrt(std::max(1e-12, squares / count - (sum / count) * (sum / count))); }
};

} // namespace

Overview overview_of(std::vector<PlanRecord> const& records, std::string const& technique) {
    Overview out{technique.empty() && !records.empty() ? records.front().key.technique : technique, {}, {}};
    std::map<std::string, std::string> names; // of the singers, by file
    for (auto const& r : records)
        if (r.key.technique == out.technique) names.emplace(r.key.singer, name_of(r));
    std::map<std::string, std::size_t> column, row;
    for (auto const& [file, name] : names) {
        column.emplace(file, out.singers.size());
        bool const taken = std::find(out.singers.begin(), out.singers.end(), name) != out.singers.end();
        out.singers.push_back(taken ? file : name);
    }
    for (auto const& r : records) {
        if (r.key.technique != out.technique) continue;
        auto const [at, is_new] = row.emplace(r.key.song, out.songs.size());
        if (is_new)
            out.songs.push_back(
                {r.key.song, "", "", "", std::vector<std::optional<OverviewCell>>(names.size()), 0});
        auto& song = out.songs[at->second];
        if (song.title.empty()) song.title = r.title, song.composer = r.composer;
        if (!r.error.empty())
            song.error = r.error;
        else
            take(song.of[column[r.key.singer]], r);
    }
    for (auto& song : out.songs) {
        double sum = 0, count = 0;
        for (auto const& cell : song.of)
            if (cell) sum += cell->need, ++count;
        song.need = count > 0 ? sum / count : 0;
    }
    std::stable_sort(out.songs.begin(), out.songs.end(), [](auto const& a, auto const& b) {
        bool const a_fails = !a.error.empty(), b_fails = !b.error.empty();
        return a_fails != b_fails ? b_fails : a.need < b.need;
    });
    return out;
}

std::vector<Likeness> songs_like(std::vector<PlanRecord> const& records, std::string const& song) {
    std::array<Spread, likened.size()> spread{};
    std::map<std::pair<std::string, std::string>, PlanRecord const*>
        known; // of that song, by singer and technique
    for (auto const& r : records) {
        if (!r.error.empty() || r.key.transpose != 0) continue;
        for (std::size_t i = 0; i < likened.size(); ++i) spread[i].add(*r[likened[i]]);
        if (r.key.song == song) known[{r.key.singer, r.key.technique}] = &r;
    }
    if (known.empty())
        throw InputError(worded("the survey has no plan of {0} as it stands", song),
                         worded("name a song as the survey does"));
    std::map<std::string, std::pair<double, double>> sums; // of distances, and how many
    std::map<std::string, std::string> titles;
    for (auto const& r : records) {
        if (!r.error.empty() || r.key.transpose != 0 || r.key.song == song) continue;
        auto const mine = known.find({r.key.singer, r.key.technique});
        if (mine == known.end()) continue;
        double squares = 0;
        for (std::size_t i = 0; i < likened.size(); ++i) {
            double const z = (*r[likened[i]] - *(*mine->second)[likened[i]]) / spread[i].sd();
            squares += z * z;
        }
        auto& [sum, count] = sums[r.key.song];
        sum += std::sqrt(squares / likened.size()), ++count;
        titles[r.key.song] = r.title;
    }
    std::vector<Likeness> out;
    for (auto const& [name, sum] : sums) out.push_back({name, titles[name], sum.first / sum.second});
    std::stable_sort(out.begin(), out.end(),
                     [](auto const& a, auto const& b) { return a.distance < b.distance; });
    return out;
}

} // namespace vowelway::plan
