// SPDX-License-Identifier: MIT
// How consistent a singer was today, and in the days before.
#include "page/asks.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <vector>

namespace vowelway::page {

namespace {

struct Repeats {
    std::vector<double> r1, r2; // cents from the aim
    int hits = 0;
};

void tell(Json& out, std::string const& name, std::vector<double> const& cents) {
    double sum = 0, squares = 0;
    for (double const c : cents) sum += c;
    double const mean = sum / static_cast<double>(cents.size());
    for (double const c : cents) squares += (c - mean) * (c - mean);
    out[name + "_off_cents"] = std::round(mean);
    // The deviation of a sample; of one alone there is none.
    double const freedom = static_cast<double>(cents.size()) - 1;
    out[name + "_sd_cents"] = freedom > 0 ? Json(std::round(std::sqrt(squares / freedom))) : Json("?");
}

Json told(Repeats const& repeats) {
    if (repeats.r1.empty()) return nullptr;
    Json out{{"count", repeats.r1.size()}, {"hits", repeats.hits}};
    tell(out, "fR1", repeats.r1);
    tell(out, "fR2", repeats.r2);
    return out;
}

} // namespace

std::string practice_told(Json const& request, std::string_view) {
    std::string const today = request.at("today"), from = request.at("from"); // ISO days compare as texts
    std::map<std::string, std::array<Repeats, 2>> by_aim;
    std::vector<std::string> order; // what was practised last comes first
    for (auto const& one : request.at("repeats")) {
        std::string const date = one.at("date"), aim = one.at("aim");
        if (date < from || date > today) continue;
        auto& into = by_aim[aim][date == today ? 0 : 1];
        into.r1.push_back(one.at("fR1_off_cents"));
        into.r2.push_back(one.at("fR2_off_cents"));
        into.hits += one.value("hit", false) ? 1 : 0;
        order.erase(std::remove(order.begin(), order.end(), aim), order.end());
        order.insert(order.begin(), aim);
    }
    Json out{{"aims", Json::array()}};
    for (auto const& aim : order)
        out["aims"].push_back(
            {{"aim", aim}, {"today", told(by_aim[aim][0])}, {"before", told(by_aim[aim][1])}});
    return out.dump(-1, ' ', false, Json::error_handler_t::replace);
}

} // namespace vowelway::page
