// SPDX-License-Identifier: MIT
// Threads that wait for work.
#pragma once

#include "vowelway/core/executor.hpp"

#include <memory>

namespace vowelway {

/// Threads  as Executor; it must outlive every run(). The thread that calls run() works too, so that a piece
/// of work may itself call run() and a pool of one starts no thread.
class ThreadPool final : public Executor {
  public:
    /// `threads` that work at once, the caller's counted; 0: one for each processor. They start at the first
    /// run() of more than one piece.
    explicit ThreadPool(std::size_t threads = 0);
    ~ThreadPool() override;
    ThreadPool(ThreadPool const&) = delete;
    ThreadPool& operator=(ThreadPool const&) = delete;

    void run(std::size_t count, Work const& work) override;

  private:
    struct Job;
    struct State;
    std::unique_ptr<State> state_;
};

} // namespace vowelway
