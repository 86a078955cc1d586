// SPDX-License-Identifier: MIT
#include "vowelway/io/plan/read_targets.hpp"

#include "core/ranges.hpp"
#include "io/plan/json_bounds.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/input_text.hpp"
#include "vowelway/core/wording.hpp"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <cmath>

namespace vowelway::io {

namespace {

using Json = nlohmann::json;

constexpr double longest_sung = 24 * 60 * 60; // seconds
std::string plan_remedy() { return worded("write one with: vowelway plan .. -o plan.json"); }

Json parse(std::string_view text, std::string const& file) {
    try {
        return Json::parse(text);
    } catch (Json::parse_error const& error) {
        auto const before = text.substr(0, std::min(text.size(), error.byte > 0 ? error.byte - 1 : 0));
        auto const line = 1 + std::count(before.begin(), before.end(), '\n');
        auto const column = before.size() - (before.rfind('\n') + 1) + 1; // npos + 1 is 0
        throw InputError(worded("is not JSON: it breaks off or goes wrong here"), plan_remedy(),
                         Place{file, static_cast<int>(line), static_cast<int>(column), {}});
    } catch (Json::out_of_range const&) {
        throw InputError(worded("has a number too large for any resonance"), plan_remedy(),
                         Place{file, 0, 0, {}});
    }
}

/// One note of the plan, with its place for messages.
class Note {
  public:
    Note(Json const& json, std::size_t index, std::string const& file)
        : json_(json), place_{file, 0, 0, worded("note {0}", index + 1)} {
        if (!json.is_object()) refuse(worded("a note is not an object"));
    }

    [[noreturn]] void refuse(std::string const& wrong) const {
        throw InputError(wrong, plan_remedy(), place_);
    }

    /// Nothing when it is not there, or null.
    static Json const* field(Json const& in, char const* name) {
        auto const at = in.find(name);
        return at == in.end() || at->is_null() ? nullptr : &*at;
    }
    Json const* field(char const* name) const { return field(json_, name); }

    std::string text(Json const& in, char const* name) const {
        auto const* value = field(in, name);
        if (!value || !value->is_string()) refuse(worded("\"{0}\" must be a text", name));
        return value->get<std::string>();
    }

    double number(Json const& in, char const* name, double low, double high, char const* unit) const {
        auto const* value = field(in, name);
        if (!value || !value->is_number()) refuse(worded("\"{0}\" must be a number", name));
        auto const number = value->get<double>();
        if (!(number >= low && number <= high))
            refuse(worded("\"{0}\" is {1}; it must be from {2} to {3} {4}", name, fmt::format("{:g}", number),
                          fmt::format("{:g}", low), fmt::format("{:g}", high), unit));
        return number;
    }

    Vowel vowel(char const* name) const {
        auto const ipa = text(json_, name);
        try {
            return parse_vowel(ipa);
        } catch (InputError& error) {
            throw error.at(place_);
        }
    }

    /// Nothing for a note without a vowel.
    std::optional<PlanTarget> target() const {
        auto const* target = field("target");
        if (!target || !field("ipa")) return std::nullopt;
        if (!target->is_object()) refuse(worded("\"target\" must be an object"));
        auto const near = [](double hz) { return hertz(10 * std::round(hz / 10)); };
        PlanTarget out;
        out.vowel = vowel("ipa").quality();
        out.shade = text(*target, "ipa");
        out.r1 = near(number(*target, "fR1_hz", 50, 6000, "Hz"));
        out.r2 = near(number(*target, "fR2_hz", 100, 8000, "Hz"));
        out.sung = seconds(field("duration_s") ? number(json_, "duration_s", 0, longest_sung, "s") : 0);
        if (field("measure"))
            if (auto bar = text(json_, "measure"); !bar.empty()) out.bars.push_back(std::move(bar));
        return out;
    }

  private:
    Json const& json_;
    Place place_;
};

void add(std::vector<PlanTarget>& targets, PlanTarget one) {
    auto const same = ranges::find_if(targets, [&](PlanTarget const& o) {
        return o.vowel == one.vowel && o.r1 == one.r1 && o.r2 == one.r2;
    });
    if (same == targets.end()) {
        targets.push_back(std::move(one));
        return;
    }
    same->sung = same->sung + one.sung;
    for (auto& bar : one.bars)
        if (same->bars.empty() || same->bars.back() != bar) same->bars.push_back(std::move(bar));
}

} // namespace

std::vector<PlanTarget> parse_plan_targets(std::string_view json, std::string const& file) {
    require_size(json.size(), largest_plan, file);
    require_text(json, file);
    require_json_bounds(json, file);
    auto const plan = parse(json, file);
    Place const place{file, 0, 0, {}};
    if (!plan.is_object()) throw InputError(worded("is not the JSON of a plan"), plan_remedy(), place);
    auto const version = plan.find("vowelway");
    if (version == plan.end() || !version->is_number_integer() || *version != 1)
        throw InputError(worded("is not the JSON of a plan: it does not say \"vowelway\": 1"), plan_remedy(),
                         place);
    auto const notes = plan.find("notes");
    if (notes == plan.end() || !notes->is_array())
        throw InputError(worded("is not the JSON of a plan: it has no list \"notes\""), plan_remedy(), place);
    std::vector<PlanTarget> targets;
    for (std::size_t i = 0; i < notes->size(); ++i)
        if (auto one = Note((*notes)[i], i, file).target()) add(targets, std::move(*one));
    ranges::stable_sort(targets, [](auto const& a, auto const& b) { return a.sung > b.sung; });
    return targets;
}

} // namespace vowelway::io
