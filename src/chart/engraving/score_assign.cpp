// SPDX-License-Identifier: MIT
// Passes 2 and 3 of the score: which bars share a system, and where everything stands in it.
#include "chart/engraving/score_layout.hpp"

#include "core/ranges.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <limits>

namespace vowelway::chart {
namespace {

constexpr double tightest = 0.45;                  ///< of the springs' wish
constexpr double gap = 0.35 * space;               ///< between two things on the staff
constexpr double word_gap = 3.4, hyphen_gap = 5.5; ///< between two syllables

/// Where atoms stand one after another, their springs stretched.
class Cursor {
  public:
    explicit Cursor(double stretch) : stretch_(stretch) {}

    double put(Atom const& a) {
        x_ = before_ ? x_ + std::max(before_->right + gap + a.left, before_->spring * stretch_) : a.left;
        if (a.under > 0) {
            x_ = std::max(x_, lyric_end_ + a.under);
            lyric_end_ = x_ + a.under + (a.underlay.hyphen ? hyphen_gap : word_gap);
        }
        before_ = &a;
        return x_;
    }
    /// Of all that was put.
    double end() const {
        if (!before_) return 0;
        return std::max(x_ + (before_->kind == Atom::Kind::barline ? 0 : before_->right),
                        lyric_end_ - word_gap);
    }

  private:
    double stretch_, x_ = 0, lyric_end_ = -1e9;
    Atom const* before_ = nullptr;
};

double place(std::vector<Atom>& atoms, double stretch) {
    Cursor cursor(stretch);
    for (auto& a : atoms) a.x = cursor.put(a);
    return cursor.end();
}

std::vector<Atom> head_of(Bar const& bar) {
    std::vector<Atom> atoms;
    atoms.push_back({.kind = Atom::Kind::clef,
                     .measure = bar.measure,
                     .left = 0.2 * space,
                     .right = 2.9 * space,
                     .clef = bar.clef});
    if (bar.key.fifths != 0)
        atoms.push_back({.kind = Atom::Kind::key,
                         .measure = bar.measure,
                         .right = std::abs(bar.key.fifths) * 1.05 * space + 0.3 * space,
                         .clef = bar.clef,
                         .key = bar.key,
                         .key_before = bar.key});
    return atoms;
}

std::vector<Atom> atoms_of(std::vector<Bar> const& bars, std::size_t from, std::size_t to) {
    auto atoms = head_of(bars[from]);
    Clef clef = bars[from].clef;
    for (std::size_t i = from; i < to; ++i) {
        bool music = false;
        for (auto a : bars[i].atoms) {
            bool const opening = a.kind == Atom::Kind::clef || a.kind == Atom::Kind::key;
            if (i == from && opening && !music) continue; // stands in the head of the system
            music = music || !opening;
            if (a.kind == Atom::Kind::clef) clef = a.clef;
            if (a.kind == Atom::Kind::key) a.clef = clef;
            atoms.push_back(std::move(a));
        }
    }
    return atoms;
}

/// Cuts a bar that no system could hold between two of its events.
void split_wide(std::vector<Bar>& bars, double width) {
    std::vector<Bar> result;
    for (auto& bar : bars) {
        while (true) {
            auto const head = head_of(bar);
            Cursor cursor(tightest);
            for (auto const& a : head) cursor.put(a);
            std::size_t fits = 0;
            while (fits < bar.atoms.size() &&
                   (cursor.put(bar.atoms[fits]), fits == 0 || cursor.end() <= width))
                ++fits;
            if (fits == bar.atoms.size() || bar.atoms.size() < 2) break;
            auto const cut = bar.atoms.begin() + static_cast<std::ptrdiff_t>(fits);
            Bar first{.measure = bar.measure,
                      .whole = false,
                      .first_part = bar.first_part,
                      .clef = bar.clef,
                      .key = bar.key,
                      .atoms = {std::make_move_iterator(bar.atoms.begin()), std::make_move_iterator(cut)}};
            bar.atoms.erase(bar.atoms.begin(), cut);
            bar.whole = false;
            bar.first_part = false;
            for (auto const& a : first.atoms)
                if (a.kind == Atom::Kind::clef) bar.clef = a.clef;
            result.push_back(std::move(first));
        }
        result.push_back(std::move(bar));
    }
    bars = std::move(result);
}

} // namespace

std::vector<System> assign_systems(std::vector<Bar> bars, double width) {
    split_wide(bars, width);
    // Least sum of squared strains over all ways to break (dynamic programming over the bars).
    std::size_t const n = bars.size();
    constexpr double never = std::numeric_limits<double>::infinity();
    std::vector<double> best(n + 1, never);
    std::vector<std::size_t> from(n + 1, 0);
    best[0] = 0;
    for (std::size_t i = 0; i < n; ++i) {
        if (best[i] == never) continue;
        Cursor tight(tightest), easy(1);
        auto const head = head_of(bars[i]);
        for (auto const& a : head) tight.put(a), easy.put(a);
        for (std::size_t j = i + 1; j <= n; ++j) {
            bool opening = j == i + 1;
            for (auto const& a : bars[j - 1].atoms) {
                opening = opening && (a.kind == Atom::Kind::clef || a.kind == Atom::Kind::key);
                if (!opening) tight.put(a), easy.put(a);
            }
            double const least = tight.end(), wished = easy.end();
            if (least > width && j > i + 1) break;
            double strain = wished > width ? 1.5 * (wished - width) / std::max(1.0, wished - least)
                                           : (width - wished) / wished;
            if (j == n && wished < width)
                strain = std::max(0.0, 0.6 - wished / width); // the last may be short
            double const cost = best[i] + strain * strain + 0.02;
            if (cost < best[j]) best[j] = cost, from[j] = i;
        }
    }
    std::vector<std::pair<std::size_t, std::size_t>> cuts;
    for (std::size_t j = n; j > 0; j = from[j]) cuts.emplace_back(from[j], j);
    ranges::reverse(cuts);

    std::vector<System> systems;
    for (auto const& [i, j] : cuts) {
        System s{.atoms = atoms_of(bars, i, j),
                 .clef = bars[i].clef,
                 .first_measure = bars[i].measure,
                 .begins_mid_bar = !bars[i].first_part};
        double low = 0, high = 1;
        while (high < 64 && place(s.atoms, high) < width) high *= 2;
        double const limit = j == n ? 1.35 : 64; // the last system is not pulled apart
        for (int step = 0; step < 40; ++step) {
            double const middle = (low + high) / 2;
            (place(s.atoms, middle) <= width ? low : high) = middle;
        }
        s.width = place(s.atoms, std::min(low, limit));
        if (j != n && s.atoms.back().kind == Atom::Kind::barline) s.atoms.back().x = s.width = width;
        systems.push_back(std::move(s));
    }
    return systems;
}

} // namespace vowelway::chart
