// SPDX-License-Identifier: MIT
#include "io/score/repeats.hpp"

#include <algorithm>
#include <map>

namespace vowelway::io {

namespace {

/// What is in force on the staves between two bars.
struct StaffState {
    std::map<int, Clef> clefs;
    std::map<int, KeySignature> keys;
    std::optional<TimeSignature> time;

    void change(StaffChange const& change) {
        if (change.clef) clefs[change.staff] = *change.clef;
        if (change.key && change.staff == 0) keys.clear();
        if (change.key) keys[change.staff] = *change.key;
        if (change.time) time = change.time;
    }
};

/// Before each bar and after the last, as printed.
std::vector<StaffState> states_of(Part const& part) {
    std::vector<StaffState> out(1);
    for (auto const& bar : part.measures) {
        auto state = out.back();
        for (auto const& change : bar.changes) state.change(change);
        out.push_back(std::move(state));
    }
    return out;
}

/// Where a jump leads into another clef, key or time, the bar says so.
void restore(PartMeasure& bar, StaffState const& was, StaffState const& is) {
    std::vector<StaffChange> fresh;
    for (auto const& [staff, clef] : is.clefs)
        if (auto const at = was.clefs.find(staff); at != was.clefs.end() && !(at->second == clef))
            fresh.push_back({0, staff, clef, {}, {}, {}});
    for (auto const& [staff, key] : is.keys)
        if (auto const at = was.keys.find(staff); at == was.keys.end() || !(at->second == key))
            fresh.push_back({0, staff, {}, key, {}, {}});
    if (is.time && was.time && !(*is.time == *was.time)) fresh.push_back({0, 0, {}, {}, is.time, {}});
    bar.changes.insert(bar.changes.begin(), fresh.begin(), fresh.end());
}

} // namespace

void unfold(Part& part, std::vector<SungBar> const& order) {
    auto const states = states_of(part);
    std::vector<PartMeasure> sung;
    for (auto const& bar : order) {
        auto const before = sung.empty() ? 0 : sung.back().printed + 1;
        auto& fresh = sung.emplace_back();
        if (bar.printed < part.measures.size()) fresh = part.measures[bar.printed];
        fresh.printed = bar.printed; // a part that ends before the others has no bar there
        fresh.pass = bar.pass;
        if (bar.printed != before && std::max(bar.printed, before) < states.size())
            restore(fresh, states[before], states[bar.printed]);
    }
    part.measures = std::move(sung);
}

} // namespace vowelway::io
