// SPDX-License-Identifier: MIT
#include "vowelway/core/thread_pool.hpp"

#include <doctest/doctest.h>

#include <atomic>
#include <stdexcept>
#include <thread>
#include <vector>

using namespace vowelway;

namespace {

void check_each_once(Executor& executor) {
    std::vector<std::atomic<int>> calls(1000);
    executor.run(calls.size(), [&](std::size_t i) { ++calls[i]; });
    for (auto const& c : calls) CHECK(c == 1);
}

} // namespace

TEST_CASE("every piece of work is done once, by one thread or many") {
    InlineExecutor one;
    check_each_once(one);
    for (std::size_t threads : {0u, 1u, 2u, 7u}) {
        ThreadPool pool(threads);
        check_each_once(pool);
        check_each_once(pool);
        pool.run(0, [](std::size_t) { FAIL("there is no piece"); });
    }
}

TEST_CASE("a pool works with as many threads as asked for, the caller's among them") {
    ThreadPool alone(1);
    auto const self = std::this_thread::get_id();
    alone.run(50, [&](std::size_t) { CHECK(std::this_thread::get_id() == self); });

    // Three pieces that wait for each other end only where three threads work at once.
    ThreadPool three(3);
    std::atomic<int> there{0};
    three.run(3, [&](std::size_t) {
        ++there;
        while (there < 3) std::this_thread::yield();
    });
    CHECK(there == 3);
}

TEST_CASE("a piece of work may hand out work, and several threads may use one pool") {
    ThreadPool pool(3);
    std::atomic<int> done{0};
    auto const nested = [&] { pool.run(8, [&](std::size_t) { pool.run(8, [&](std::size_t) { ++done; }); }); };
    std::vector<std::thread> callers;
    for (int k = 0; k < 4; ++k) callers.emplace_back(nested);
    for (auto& caller : callers) caller.join();
    CHECK(done == 4 * 64);
}

TEST_CASE("an exception comes back to the caller after the rest is done") {
    InlineExecutor one;
    ThreadPool pool(2);
    for (Executor* executor : {static_cast<Executor*>(&one), static_cast<Executor*>(&pool)}) {
        std::atomic<int> done{0};
        CHECK_THROWS_AS(executor->run(20,
                                      [&](std::size_t i) {
                                          ++done;
                                          if (i % 7 == 3) throw std::out_of_range("piece");
                                      }),
                        std::out_of_range);
        CHECK(done == 20);
        executor->run(1, [&](std::size_t) { ++done; });
        CHECK(done == 21);
    }
}
