// SPDX-License-Identifier: MIT
#include "cli/studio_folder.hpp"

#include "cli/profiles_named.hpp"
#include "cli/scores_named.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/files/read.hpp"
#include "vowelway/io/profile/read_profile.hpp"
#include "vowelway/io/score/read_score.hpp"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace vowelway::cli {

namespace fs = std::filesystem;

namespace {

constexpr std::uintmax_t largest_plan = 256u << 20; // bytes

report::StudioSong read_one(std::string const& file) {
    report::StudioSong out{file, {}, {}, {}, {}, {}};
    try {
        auto const passage = io::read_score(file);
        out.title = passage.title.empty() ? fs::path(file).stem().string() : passage.title;
        out.composer = passage.composer;
        auto const by_height = [](SungNote const& a, SungNote const& b) { return a.pitch < b.pitch; };
        auto const [low, high] = std::minmax_element(passage.notes.begin(), passage.notes.end(), by_height);
        if (low == passage.notes.end())
            throw InputError(worded("there is no note to plan"), worded("give a score with a vocal line"));
        out.low = low->spelled.str();
        out.high = high->spelled.str();
    } catch (InputError const& error) {
        out.error = error.wrong();
    }
    return out;
}

/// A JSON file that is a plan of ours.
std::optional<report::StudioPlan> plan_in(std::string const& file) {
    try {
        auto const json = nlohmann::json::parse(files::read(file, largest_plan), nullptr, false);
        if (!json.is_object() || !json.contains("vowelway") || !json.contains("singer") ||
            !json.contains("notes"))
            return std::nullopt;
        auto const text = [&](char const* key) {
            return json.contains(key) && json[key].is_string() ? json[key].get<std::string>() : std::string();
        };
        return report::StudioPlan{file, text("title"), text("singer"), false};
    } catch (std::exception const&) {
        return std::nullopt; // not ours, or not readable: nothing is lost by passing it over
    }
}

/// Of a plan that `studio plans` made, by its name.
std::optional<report::StudioPlan> plan_named(std::string const& file, report::Studio const& studio) {
    for (auto const& song : studio.songs)
        for (auto const& [profile, singer] : studio.singers)
            if (fs::path(file).filename() == plan_name(song.file, profile))
                return report::StudioPlan{file, song.title, singer.profile.singer.name,
                                          changed(file) < std::max(changed(song.file), changed(profile))};
    return std::nullopt;
}

} // namespace

fs::file_time_type changed(std::string const& file) {
    std::error_code none;
    return fs::last_write_time(file, none);
}

std::string plan_name(std::string const& score, std::string const& profile) {
    return fs::path(score).stem().string() + "--" + fs::path(profile).stem().string() + ".pdf";
}

StudioFiles studio_files(fs::path const& folder) {
    StudioFiles out;
    std::error_code none;
    Place const place{folder.string(), 0, 0, {}};
    if (!fs::is_directory(folder, none))
        throw InputError(worded("there is no such folder"), worded("name a folder with profiles and scores"),
                         place);
    auto each = fs::recursive_directory_iterator(folder, fs::directory_options::skip_permission_denied, none);
    for (; each != fs::recursive_directory_iterator(); each.increment(none)) {
        auto const& path = each->path();
        if (path.filename().string().starts_with('.')) {
            if (each->is_directory(none)) each.disable_recursion_pending();
            continue;
        }
        if (!each->is_regular_file(none)) continue;
        if (looks_like_profile(path.string()))
            out.profiles.push_back(path.string());
        else if (looks_like_score(path.string()))
            out.scores.push_back(path.string());
        else if (path.extension() == ".json" || path.extension() == ".pdf")
            out.plans.push_back(path.string());
    }
    if (out.profiles.empty() && out.scores.empty())
        throw InputError(worded("there is neither a singer nor a song in this folder"),
                         worded("put profiles (.yaml) and scores (.mxl, .musicxml) into it"), place);
    for (auto* list : {&out.profiles, &out.scores, &out.plans}) std::sort(list->begin(), list->end());
    return out;
}

report::Studio read_studio(fs::path const& folder, std::string const& today) {
    auto const found = studio_files(folder);
    report::Studio out;
    out.folder = folder.string();
    out.today = today;
    auto newest = fs::file_time_type::min();
    for (auto const& file : found.profiles) {
        newest = std::max(newest, changed(file));
        try {
            out.singers.emplace_back(file, analysis::studio_singer(io::read_whole_profile(file), today));
        } catch (InputError const& error) {
            out.unread.emplace_back(file, error.wrong());
        }
    }
    for (auto const& file : found.scores) {
        newest = std::max(newest, changed(file));
        out.songs.push_back(read_one(file));
    }
    for (auto const& file : found.plans) {
        bool const named = fs::path(file).extension() == ".pdf";
        auto plan = named ? plan_named(file, out) : plan_in(file);
        if (!plan) continue;
        if (!named) plan->behind = changed(file) < newest;
        out.plans.push_back(std::move(*plan));
    }
    return out;
}

} // namespace vowelway::cli
