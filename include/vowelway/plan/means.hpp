// SPDX-License-Identifier: MIT
// What several plans may have in common: threads to work on, and what was computed before.
#pragma once

#include "vowelway/core/executor.hpp"

#include <cstddef>
#include <memory>

namespace vowelway::plan {

/// What plans of the same singer share whatever the song, key and draws: the reachable shapes of each vowel,
/// and for each technique what every pitch and loudness sounds like. A plan is the same with a cache and
/// without. Nothing is dropped (about 30 kB a vowel, 30 kB a pitch and loudness, 5 MB a singer who sings
/// everything): keep one for each singer, or for a few. Threads  any number of plans at once.
class PlanCache {
  public:
    PlanCache();
    ~PlanCache();
    PlanCache(PlanCache const&) = delete;
    PlanCache& operator=(PlanCache const&) = delete;

    std::size_t reachable_sets() const; ///< how many there are
    std::size_t landscapes() const;     ///< pitches and loudnesses of a singer and technique

    struct Shelves; // private to the layer
    Shelves& shelves() const { return *shelves_; }

  private:
    std::unique_ptr<Shelves> shelves_;
};

/// Borrowed, for as long as the call lasts; both may be left out.
struct Means {
    Executor* executor = nullptr; ///< nothing: the thread that calls does it all
    PlanCache* cache = nullptr;   ///< nothing: one for this plan alone
};

} // namespace vowelway::plan
