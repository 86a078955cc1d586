// SPDX-License-Identifier: MIT
// A table that threads share: what it lacks is made once, by the first that asks. Private to the library.
#pragma once

#include <cstddef>
#include <map>
#include <memory>
#include <mutex>
#include <utility>

namespace vowelway {

/// Threads  any number at once. While one makes a value, those that ask for the same wait, the others do not.
/// Where making it throws, the exception goes to who asked, and the next one tries again.
template <class Key, class Value> class OnceMap {
  public:
    /// `make`: gives a shared_ptr<Value const>.
    template <class Make> std::shared_ptr<Value const> get(Key const& key, Make make) {
        auto& entry = entry_of(key);
        std::scoped_lock const lock(entry.guard);
        if (!entry.value) entry.value = make();
        return entry.value;
    }
    std::size_t size() const {
        std::scoped_lock const lock(guard_);
        return entries_.size();
    }

  private:
    struct Entry {
        std::mutex guard;
        std::shared_ptr<Value const> value;
    };
    Entry& entry_of(Key const& key) { // an entry stays where it is
        std::scoped_lock const lock(guard_);
        return entries_[key];
    }

    mutable std::mutex guard_;
    std::map<Key, Entry> entries_;
};

} // namespace vowelway
