// SPDX-License-Identifier: MIT
#include "core/text.hpp"
#include "io/score/repeats.hpp"

#include <algorithm>
#include <cctype>

namespace vowelway::io {

namespace {

std::string letters_of(std::string_view text) {
    std::string out;
    for (unsigned char c : text)
        if (std::isalpha(c) != 0) out += static_cast<char>(std::tolower(c));
    return out;
}

/// "1, 2" -> 1, 2; "1-3" -> 1, 2, 3.
std::vector<int> numbers_in(std::string_view list) {
    std::vector<int> out;
    bool range = false;
    while (!list.empty()) {
        if (list.front() >= '0' && list.front() <= '9') {
            int const n = static_cast<int>(std::min(text::eat_number(list).value_or(1), 99.0));
            while (range && !out.empty() && out.back() + 1 < n) out.push_back(out.back() + 1);
            out.push_back(n);
            range = false;
            continue;
        }
        range = list.front() == '-' || (range && list.front() == ' ');
        list.remove_prefix(1);
    }
    return out;
}

void read_barline(pugi::xml_node node, BarSigns& out) {
    auto const repeat = node.child("repeat");
    std::string_view const direction = repeat.attribute("direction").value();
    out.repeat_begins |= direction == "forward";
    if (direction == "backward") {
        out.repeat_ends = true;
        out.times = std::max(out.times, std::min(repeat.attribute("times").as_int(0), 99));
        out.also_after_jump |= repeat.attribute("after-jump").value() == std::string_view("yes");
    }
    auto const ending = node.child("ending");
    std::string_view const type = ending.attribute("type").value();
    if (type == "start") out.ending = numbers_in(ending.attribute("number").value());
    out.ending_ends |= type == "stop" || type == "discontinue";
}

struct Found {
    std::vector<BarSigns>& signs;
    std::vector<std::size_t> coda_signs; ///< bars with a coda sign and nothing that says what it is for

    /// A sign to jump to at the end of a bar is meant for the next.
    BarSigns& target(std::size_t bar, double onset, double filled) {
        bool const next = onset > time_tolerance && onset > filled - time_tolerance && bar + 1 < signs.size();
        return signs[bar + (next ? 1 : 0)];
    }

    bool sounding(pugi::xml_node sound, std::size_t bar, double onset, double filled) {
        auto const has = [&](char const* name) {
            return !sound.attribute(name).empty() && sound.attribute(name).value() != std::string_view("no");
        };
        auto& here = signs[bar];
        here.da_capo |= has("dacapo");
        here.dal_segno |= has("dalsegno");
        here.to_coda |= has("tocoda");
        here.fine |= has("fine");
        if (has("segno")) target(bar, onset, filled).segno = true;
        if (has("coda")) target(bar, onset, filled).coda = true;
        return has("dacapo") || has("dalsegno") || has("tocoda") || has("fine") || has("segno") ||
               has("coda");
    }

    void written(pugi::xml_node direction, std::size_t bar, double onset, double filled) {
        auto& here = signs[bar];
        for (auto const& type : direction.children("direction-type")) {
            if (type.child("segno")) target(bar, onset, filled).segno = true;
            if (type.child("coda")) coda_signs.push_back(bar);
            for (auto const& words : type.children("words")) {
                auto const said = letters_of(words.child_value());
                here.da_capo |= said.starts_with("dacapo") || said == "dc" || said.starts_with("dcal");
                here.dal_segno |= said.starts_with("dalsegno") || said == "ds" || said.starts_with("dsal");
                here.to_coda |= said == "tocoda" || said == "allacoda";
                here.fine |= said == "fine";
            }
        }
    }
};

} // namespace

std::vector<BarSigns> signs_of(std::vector<Part> const& parts) {
    std::size_t bars = 0;
    for (auto const& part : parts) bars = std::max(bars, part.measures.size());
    std::vector<BarSigns> out(bars);
    Found found{out, {}};
    for (auto const& part : parts)
        for (std::size_t i = 0; i < part.measures.size(); ++i) {
            auto const& bar = part.measures[i];
            for (auto const& line : bar.barlines) read_barline(line, out[i]);
            for (auto const& d : bar.directions) {
                auto const sound =
                    d.node.name() == std::string_view("sound") ? d.node : d.node.child("sound");
                if (!found.sounding(sound, i, d.onset, bar.filled))
                    found.written(d.node, i, d.onset, bar.filled);
            }
        }
    auto& codas = found.coda_signs;
    std::sort(codas.begin(), codas.end());
    bool const told = std::any_of(out.begin(), out.end(), [](auto const& s) { return s.coda; });
    if (!told && !codas.empty() && codas.front() < codas.back()) {
        out[codas.front()].to_coda = true;
        out[codas.back()].coda = true;
    }
    return out;
}

} // namespace vowelway::io
