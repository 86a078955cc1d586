// SPDX-License-Identifier: MIT
#include "cli/studio_plans.hpp"

#include "cli/plan_request.hpp"
#include "cli/standard_output.hpp"
#include "cli/studio_folder.hpp"
#include "vowelway/core/thread_pool.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/files/write.hpp"
#include "vowelway/plan/make_plan.hpp"

#include <chrono>
#include <map>
#include <thread>

namespace vowelway::cli {

namespace fs = std::filesystem;

namespace {

class StudioPlans {
  public:
    explicit StudioPlans(StudioPlansOptions const& options) : options_(&options) {}

    /// Makes what is missing or behind; how many were made.
    int look() {
        int made = 0;
        auto const found = studio_files(options_->folder);
        for (auto const& score : found.scores)
            for (auto const& profile : found.profiles) {
                auto const plan = options_->into / plan_name(score, profile);
                auto const newest = std::max(changed(score), changed(profile));
                auto& tried = tried_[plan.string()];
                if (tried == newest || (fs::exists(plan) && changed(plan.string()) >= newest)) continue;
                tried = newest; // what cannot be planned is not tried again until it changes
                made += make(score, profile, plan) ? 1 : 0;
            }
        return made;
    }

  private:
    bool make(std::string const& score, std::string const& profile, fs::path const& plan) {
        PlanOptions o;
        o.score = score;
        o.singer = profile;
        o.technique = options_->technique;
        o.draws = options_->draws;
        try {
            auto const made =
                make_plan(read_request(o).request, {.executor = &pool_, .cache = &caches_[profile]});
            files::write(plan, draw(made, options_->charts, chart::Form::pdf).front().bytes);
            say(worded("wrote {0}", plan.string()) + "\n");
            return true;
        } catch (InputError const& error) {
            say(std::string(error.what()) + "\n");
            return false;
        }
    }

    StudioPlansOptions const* options_;
    ThreadPool pool_;
    std::map<std::string, plan::PlanCache> caches_; // by profile
    std::map<std::string, fs::file_time_type> tried_;
};

} // namespace

void make_studio_plans(StudioPlansOptions const& options) {
    studio_files(options.folder); // a folder without anything is told at once
    std::error_code wrong;
    fs::create_directories(options.into, wrong);
    if (wrong)
        throw InputError(worded("the folder for the plans cannot be made: {0}", wrong.message()),
                         worded("name another with --into"), Place{options.into.string(), 0, 0, {}});
    StudioPlans plans(options);
    if (plans.look() == 0 && !options.watch)
        say(worded("every plan is as new as its score and its singer") + "\n");
    if (!options.watch) return;
    say(worded("watching {0}; stop with Ctrl-C", options.folder.string()) + "\n");
    using namespace std::chrono_literals;
    for (;;) {
        std::this_thread::sleep_for(500ms);
        plans.look();
    }
}

} // namespace vowelway::cli
