// SPDX-License-Identifier: MIT
// Who does independent pieces of work. The library starts no thread of its own: whoever wants several passes
// a pool.
#pragma once

#include <cstddef>
#include <functional>

namespace vowelway {

/// Threads  run() may be called by several threads at once, and by a piece of work.
class Executor {
  public:
    using Work = std::function<void(std::size_t)>;

    virtual ~Executor() = default;
    /// Calls work(0) .. work(count - 1), each once, in any order and perhaps at the same time, and returns
    /// when all have ended. The first exception is thrown again at the end.
    virtual void run(std::size_t count, Work const& work) = 0;
};

/// One piece after the other, on the thread that calls.
class InlineExecutor final : public Executor {
  public:
    void run(std::size_t count, Work const& work) override;
};

} // namespace vowelway
