// SPDX-License-Identifier: MIT
// How far a long piece of work is, on one line of the terminal that is written again and again.
#pragma once

#include <chrono>
#include <cstddef>
#include <string>

namespace vowelway::cli {

class ProgressLine {
  public:
    /// "plans": what is counted. Shows nothing where standard error is no terminal.
    explicit ProgressLine(std::string what);
    /// Takes the line away.
    ~ProgressLine();
    ProgressLine(ProgressLine const&) = delete;
    ProgressLine& operator=(ProgressLine const&) = delete;
    /// `begun` of them were there before it began; at most four times a second something is written.
    void show(std::size_t done, std::size_t of, std::size_t begun = 0);

  private:
    using Clock = std::chrono::steady_clock;
    std::string what_;
    bool shown_;
    Clock::time_point begun_ = Clock::now(), last_ = Clock::time_point::min();
};

} // namespace vowelway::cli
