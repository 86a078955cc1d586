// SPDX-License-Identifier: MIT
#include "vowelway/core/thread_pool.hpp"

#include <algorithm>
#include <condition_variable>
#include <exception>
#include <list>
#include <mutex>
#include <system_error>
#include <thread>
#include <vector>

namespace vowelway {

void InlineExecutor::run(std::size_t count, Work const& work) {
    std::exception_ptr failure;
    for (std::size_t i = 0; i < count; ++i) {
        try {
            work(i);
        } catch (...) {
            if (!failure) failure = std::current_exception();
        }
    }
    if (failure) std::rethrow_exception(failure);
}

// One run(): lives on the stack of its caller, who leaves when every piece has ended.
struct ThreadPool::Job {
    Work const& work;
    std::size_t count;
    std::size_t next = 0, ended = 0;
    std::exception_ptr failure{};
    std::condition_variable all_ended{};
};

struct ThreadPool::State {
    std::size_t wanted;
    std::mutex guard; // of all that follows and of every job
    std::condition_variable work_waits;
    std::list<Job*> open; // jobs with pieces that nobody has begun
    std::vector<std::thread> threads;
    bool closing = false;

    void start() {
        try {
            while (threads.size() + 1 < wanted) threads.emplace_back([this] { serve(); });
        } catch (std::system_error const&) { // no more are to be had: those there are do the work
            wanted = threads.size() + 1;
        }
    }

    // Does one piece of the job. `lock` is held before and after.
    void do_one(Job& job, std::unique_lock<std::mutex>& lock) {
        std::size_t const piece = job.next++;
        if (job.next == job.count) open.remove(&job);
        lock.unlock();
        std::exception_ptr failure;
        try {
            job.work(piece);
        } catch (...) {
            failure = std::current_exception();
        }
        lock.lock();
        if (failure && !job.failure) job.failure = std::move(failure);
        if (++job.ended == job.count) job.all_ended.notify_all();
    }

    void serve() {
        std::unique_lock lock(guard);
        for (;;) {
            work_waits.wait(lock, [this] { return closing || !open.empty(); });
            if (closing) return;
            do_one(*open.front(), lock);
        }
    }
};

ThreadPool::ThreadPool(std::size_t threads) : state_(std::make_unique<State>()) {
    state_->wanted = threads > 0 ? threads : std::max(1u, std::thread::hardware_concurrency());
}

ThreadPool::~ThreadPool() {
    {
        std::scoped_lock const lock(state_->guard);
        state_->closing = true;
    }
    state_->work_waits.notify_all();
    for (auto& thread : state_->threads) thread.join();
}

void ThreadPool::run(std::size_t count, Work const& work) {
    if (count == 0) return;
    Job job{.work = work, .count = count};
    std::unique_lock lock(state_->guard);
    state_->open.push_back(&job);
    if (count > 1) {
        state_->start();
        state_->work_waits.notify_all();
    }
    while (job.next < job.count) state_->do_one(job, lock);
    // A piece that waits here waits only for pieces of its own job, so no circle can arise.
    job.all_ended.wait(lock, [&] { return job.ended == job.count; });
    if (job.failure) {
        auto const failure = std::move(job.failure);
        lock.unlock();
        std::rethrow_exception(failure);
    }
}

} // namespace vowelway
