// SPDX-License-Identifier: MIT
// Reachable sets made once and shared: between songs, keys and draws, and between threads.
#pragma once

#include "vowelway/acoustics/reachable.hpp"

#include <cstddef>
#include <memory>

namespace vowelway::acoustics {

/// A set depends on the vowel, its resonances (not on their deviations), the length of the tract and the
/// options; the same question has one answer. Nothing is ever dropped (about 60 kB a set): keep a cache as
/// long as a singer, or a few, are planned for. Threads  any number at once; the same set is made by one of
/// them, and the others wait for it.
class ReachCache {
  public:
    ReachCache();
    ~ReachCache();
    ReachCache(ReachCache const&) = delete;
    ReachCache& operator=(ReachCache const&) = delete;

    /// Errors as ReachableSet.
    std::shared_ptr<ReachableSet const> get(VowelResonances const& vowel, Length tract,
                                            ReachOptions const& options = {});
    std::size_t size() const; ///< how many sets there are

  private:
    struct Shelf;
    std::unique_ptr<Shelf> shelf_;
};

} // namespace vowelway::acoustics
