// SPDX-License-Identifier: MIT
// Independent pieces of work on all processors; the result never depends on their order. Private to the
// layer.
#pragma once

#include <algorithm>
#include <atomic>
#include <cstddef>
#include <exception>
#include <mutex>
#include <thread>
#include <vector>

namespace vowelway::plan {

/// Calls work(0) .. work(count - 1), each once, in any order. The first exception is thrown again at the end.
template <class Work> void in_parallel(std::size_t count, Work work) {
    std::size_t const workers =
        std::min<std::size_t>(count, std::max(1u, std::thread::hardware_concurrency()));
    std::atomic<std::size_t> next{0};
    std::exception_ptr failure;
    std::mutex guard;
    auto const run = [&] {
        for (std::size_t i; (i = next++) < count;) {
            try {
                work(i);
            } catch (...) {
                std::scoped_lock const lock(guard);
                if (!failure) failure = std::current_exception();
            }
        }
    };
    {
        std::vector<std::jthread> threads;
        for (std::size_t i = 1; i < workers; ++i) threads.emplace_back(run);
        run();
    }
    if (failure) std::rethrow_exception(failure);
}

} // namespace vowelway::plan
