// SPDX-License-Identifier: MIT
// Every song for every singer in every key, into a store; what is there already is not computed again.
#pragma once

#include "vowelway/core/executor.hpp"
#include "vowelway/plan/keys.hpp"
#include "vowelway/survey/store.hpp"

#include <functional>
#include <string>
#include <vector>

namespace vowelway::survey {

struct Song {
    std::string name, hash;
    /// As this singer sings it. May throw InputError: the song is recorded with its error. Called by several
    /// threads at once.
    std::function<Passage(Singer const&)> read;
};

struct Voice {
    std::string name, hash;
    Singer singer;
    std::optional<Singer> reference; ///< the average of its type
};

struct Way {
    Technique technique;
    std::string hash;
};

struct Request {
    std::vector<Song> songs;
    std::vector<Voice> voices; ///< each once for each way: averages may differ between techniques
    Way way;
    plan::KeyRange keys{-6, 6};
    int draws = 0;
    std::string program; ///< its version
};

struct Progress {
    std::size_t done = 0, of = 0; ///< records, those that were there already counted
    std::size_t there = 0;        ///< were there already
    std::size_t failed = 0;       ///< songs that could not be read, once for each singer
};

/// `told` is called after each piece of work, by one thread at a time. Throws what the store throws.
Progress run(Request const& request, Store& store, Executor& executor,
             std::function<void(Progress const&)> const& told);

/// A short name of these bytes: the CRC-64 of ECMA-182 and their number, in hexadecimal. For telling a
/// changed file, not against one made to deceive.
std::string hash_of(std::string_view bytes);

} // namespace vowelway::survey
