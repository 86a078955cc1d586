// SPDX-License-Identifier: MIT
// Which resonances a singer can give a vowel, and by what gesture.
#pragma once

#include "vowelway/acoustics/gesture.hpp"
#include "vowelway/acoustics/tract.hpp"
#include "vowelway/acoustics/transfer.hpp"
#include "vowelway/core/resonance.hpp"

#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace vowelway::acoustics {

/// One shape the singer can make.
struct Shape {
    ResonanceSet resonances;
    GestureVector gesture{}; ///< from the vowel's own shape
    double effort =
        0; ///< length of the gesture, weighted by ReachOptions::cost; 1 = the whole travel of the jaw
    Frequency compliant_to; ///< upper end of the compliant band that begins at fR1
};

struct ReachOptions {
    Cents step{200};                             ///< of the grid, in fR1 and in fR2
    Cents farthest_up{2400}, farthest_down{900}; ///< in fR1 from the vowel's own
    Cents farthest_r2{1200};                     ///< in fR2, up and down
    double length_sd = 0.05; ///< how far the length may give way, relative; 0: it is measured
    /// What the whole travel of each part costs, by GesturePart.
    GestureVector cost{1, 1, 1.2, 1.6, 1.6, 2, 2};
};

/// What each part costs on a vowel: what singers are seen to move first. On open vowels jaw and lips, on
/// close ones the tongue before the jaw, on rounded ones the lips (Sundberg & Skoog 1997; Sundberg 2009:
/// tongue in /i e u a/, lips in /o/, lips and jaw in /a/ for one soprano). The sizes are our judgement;
/// larynx and pharynx are trained to stay.
GestureVector usual_cost(Vowel const& vowel);

/// Highest fR1 that singers reach: 2.15 quarter waves, at most 1300 Hz. Sopranos tune fR1 up to 1000..1200
/// Hz, some to 1300..1500 Hz (Garnier et al. 2010); smaller for longer tracts by the same factor.
Frequency highest_r1(Frequency quarter);

/// The reachable shapes of one vowel of one singer. The vowel's resonances give an area function; the
/// gestures deform it smoothly (jaw, lips and tongue widen or narrow stretches of it, protrusion and larynx
/// change its length: docs/acoustics.md); for each point of a grid in (ln fR1, ln fR2) the cheapest gesture
/// is found that leads there. Resonances are the vowel's own times the ratio by which the model tract's
/// change, so that the model's own error at home does not enter. Cost  about 20 µs a shape; make one for each
/// vowel and keep it (ReachCache).
/// Threads  once made, any number at once.
class ReachableSet {
  public:
    ReachableSet(VowelResonances const& vowel, Length tract, ReachOptions const& options = {});
    ReachableSet(ReachableSet&&) noexcept;
    ReachableSet& operator=(ReachableSet&&) noexcept;
    ~ReachableSet();

    /// The vowel's own shape: no gesture.
    Shape const& home() const { return shapes_.front(); }
    /// All shapes, home first, by growing distance from it.
    std::span<Shape const> shapes() const { return shapes_; }
    /// The shape `i` steps of fR1 and `j` steps of fR2 above home; null if it cannot be reached.
    Shape const* at(int i, int j) const;
    Cents step() const { return options_.step; }
    int lowest_i() const { return -down_; }
    int highest_i() const { return up_; }
    int highest_j() const { return aside_; } ///< and -highest_j() is the lowest

    /// The cheapest gesture towards any target, and the shape it makes: at the target (within 1 %) if it can
    /// be reached, else nothing.
    std::optional<Shape> reach(Frequency r1, Frequency r2) const;

    /// The model tract that makes a gesture from the vowel's own shape; without one, that shape. One of many
    /// that have these resonances: it shows what the gesture does and is no measurement.
    AreaFunction tract(GestureVector const& gesture = {}) const;

    /// Why the vowel's resonances fit no human tract of this length; empty: they may.
    std::string const& objection() const { return objection_; }

  private:
    struct Body;
    class Search;
    void model(VowelResonances const& vowel, Length tract);
    std::size_t cell(int i, int j) const {
        return static_cast<std::size_t>(i + down_) * static_cast<std::size_t>(2 * aside_ + 1) +
               static_cast<std::size_t>(j + aside_);
    }
    std::unique_ptr<Body> body_;
    ReachOptions options_;
    int up_ = 0, down_ = 0, aside_ = 0;
    std::vector<Shape> shapes_;
    std::vector<int> index_; // of each grid cell in shapes_, or -1
    std::string objection_;
};

} // namespace vowelway::acoustics
