// SPDX-License-Identifier: MIT
#include "cli/progress_line.hpp"

#include "vowelway/core/wording.hpp"

#include <fmt/format.h>

#include <unistd.h>

namespace vowelway::cli {

namespace {

std::string left(double seconds) {
    if (seconds < 90) return fmt::format("{:.0f} s", seconds);
    if (seconds < 5400) return fmt::format("{:.0f} min", seconds / 60);
    return fmt::format("{:.1f} h", seconds / 3600);
}

// The line is ours, its two control sequences too: to its beginning, and empty to its end.
void write_line(std::string const& text) {
    auto const bytes = "\r\033[K" + text;
    [[maybe_unused]] auto const taken = ::write(STDERR_FILENO, bytes.data(), bytes.size());
}

} // namespace

ProgressLine::ProgressLine(std::string what) : what_(std::move(what)), shown_(isatty(STDERR_FILENO) != 0) {}

ProgressLine::~ProgressLine() {
    if (shown_ && last_ != Clock::time_point::min()) write_line("");
}

void ProgressLine::show(std::size_t done, std::size_t of, std::size_t begun) {
    auto const now = Clock::now();
    using namespace std::chrono_literals;
    if (!shown_ || (last_ != Clock::time_point::min() && now - last_ < 250ms && done < of)) return;
    last_ = now;
    double const spent = std::chrono::duration<double>(now - begun_).count();
    auto line = worded("{0} of {1} {2}", done, of, what_);
    if (done > begun && spent > 1)
        line += ", " + worded("{0} left", left(spent * static_cast<double>(of - done) /
                                               static_cast<double>(done - begun)));
    write_line(line);
}

} // namespace vowelway::cli
