// SPDX-License-Identifier: MIT
#include "io/score/sung_line.hpp"

#include <algorithm>
#include <array>
#include <map>

namespace vowelway::io {

namespace {

/// Steps from mezzo-forte of what stays after the mark; accents alone (sf, fz) leave the level as it is.
std::optional<double> level_of(std::string_view mark) {
    static constexpr std::array<std::pair<std::string_view, double>, 17> levels{{{"pppppp", -7},
                                                                                 {"ppppp", -6},
                                                                                 {"pppp", -5},
                                                                                 {"ppp", -4},
                                                                                 {"pp", -3},
                                                                                 {"p", -2},
                                                                                 {"mp", -1},
                                                                                 {"mf", 0},
                                                                                 {"f", 1},
                                                                                 {"ff", 2},
                                                                                 {"fff", 3},
                                                                                 {"ffff", 4},
                                                                                 {"fffff", 5},
                                                                                 {"ffffff", 6},
                                                                                 {"fp", -2},
                                                                                 {"sfp", -2},
                                                                                 {"sfpp", -3}}};
    for (auto const& [name, level] : levels)
        if (name == mark) return level;
    return std::nullopt;
}

struct DynamicMark {
    double at = 0;
    enum class Kind { level, swell, fade, end } kind = Kind::level;
    double level = 0;
    int number = 1;
};

using DynamicMarks = std::vector<DynamicMark>;

void read_levels(pugi::xml_node dynamics, double at, DynamicMarks& marks) {
    for (auto const& mark : dynamics.children())
        if (auto const level = level_of(mark.name()))
            marks.push_back({at, DynamicMark::Kind::level, *level, 0});
}

void read_hairpin(pugi::xml_node wedge, double at, DynamicMarks& marks) {
    std::string_view const kind = wedge.attribute("type").value();
    int const number = wedge.attribute("number").as_int(1);
    if (kind == "crescendo") marks.push_back({at, DynamicMark::Kind::swell, 0, number});
    if (kind == "diminuendo") marks.push_back({at, DynamicMark::Kind::fade, 0, number});
    if (kind == "stop") marks.push_back({at, DynamicMark::Kind::end, 0, number});
}

void read_direction(pugi::xml_node direction, double at, DynamicMarks& marks) {
    for (auto const& type : direction.children("direction-type")) {
        for (auto const& dynamics : type.children("dynamics")) read_levels(dynamics, at, marks);
        for (auto const& wedge : type.children("wedge")) read_hairpin(wedge, at, marks);
    }
}

/// The marks over the line's staff and at its notes, in order.
DynamicMarks marks_of(Part const& part, VoiceLine const& line, Timeline const& time) {
    DynamicMarks marks;
    for (std::size_t i = 0; i < part.measures.size(); ++i) {
        for (auto const& direction : part.measures[i].directions) {
            bool const elsewhere = part.staves > 1 && direction.staff != 0 && direction.staff != line.staff;
            if (!elsewhere) read_direction(direction.node, time.start(i) + direction.onset, marks);
        }
        for (auto const& e : line.measures[i].events)
            for (auto const& notations : e.event->node().children("notations"))
                for (auto const& dynamics : notations.children("dynamics"))
                    read_levels(dynamics, time.start(i) + e.onset, marks);
    }
    std::stable_sort(marks.begin(), marks.end(),
                     [](DynamicMark const& a, DynamicMark const& b) { return a.at < b.at; });
    return marks;
}

/// A stretch over which the level moves evenly.
struct Slope {
    double from, to, before, after;
};

/// The level a hairpin leads to: the one written within a quarter note of its end.
std::optional<double> level_at_end(DynamicMarks const& marks, std::size_t end) {
    for (auto next = end + 1; next < std::min(marks.size(), end + 20) && marks[next].at < marks[end].at + 1;
         ++next)
        if (marks[next].kind == DynamicMark::Kind::level) return marks[next].level;
    return std::nullopt;
}

/// A hairpin leads to the level written at its end; where none is written, one step up or down is assumed.
std::vector<Slope> slopes_of(DynamicMarks const& marks) {
    std::vector<Slope> slopes;
    std::optional<double> level;
    std::map<int, DynamicMark> open;
    for (std::size_t m = 0; m < marks.size(); ++m) {
        auto const& mark = marks[m];
        if (mark.kind == DynamicMark::Kind::level) {
            level = mark.level;
            slopes.push_back({mark.at, mark.at, mark.level, mark.level});
        } else if (mark.kind != DynamicMark::Kind::end)
            open[mark.number] = mark;
        else if (auto const begun = open.find(mark.number); begun != open.end()) {
            auto const start = begun->second;
            open.erase(begun);
            if (!level) continue;
            double const assumed = *level + (start.kind == DynamicMark::Kind::swell ? 1 : -1);
            double const after = level_at_end(marks, m).value_or(assumed);
            slopes.push_back({start.at, mark.at, *level, after});
            level = after;
        }
    }
    std::stable_sort(slopes.begin(), slopes.end(),
                     [](Slope const& a, Slope const& b) { return a.from < b.from; });
    return slopes;
}

} // namespace

void set_dynamics(SungLine& sung, Part const& part, VoiceLine const& line, Timeline const& time) {
    auto const slopes = slopes_of(marks_of(part, line, time));
    std::size_t next = 0;
    for (std::size_t n = 0; n < sung.notes.size(); ++n) {
        double const at = sung.onsets[n];
        while (next < slopes.size() && slopes[next].from <= at + time_tolerance) ++next;
        if (next == 0) continue;
        auto const& slope = slopes[next - 1];
        double const share =
            slope.to > slope.from ? std::clamp((at - slope.from) / (slope.to - slope.from), 0.0, 1.0) : 1.0;
        sung.notes[n].dynamic = slope.before + share * (slope.after - slope.before);
    }
}

} // namespace vowelway::io
