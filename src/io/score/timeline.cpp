// SPDX-License-Identifier: MIT
#include "io/score/timeline.hpp"

#include "core/text.hpp"

#include <algorithm>
#include <array>

namespace vowelway::io {

namespace {

/// A mark as it stands: quarters a minute, or a ratio to the tempo before (one note value equals another).
struct Mark {
    double at = 0;
    double per_minute = 0, ratio = 0;
};

double unit_quarters(pugi::xml_node unit) {
    double quarters = quarters_of(trimmed(unit));
    double dot = quarters / 2;
    for (auto next = unit.next_sibling(); next && next.name() == std::string_view("beat-unit-dot");
         next = next.next_sibling()) {
        quarters += dot;
        dot /= 2;
    }
    return quarters;
}

/// The first number in "ca. 80", "80", "♩ 76-84".
std::optional<double> number_in(std::string_view text) {
    auto const at = text.find_first_of("0123456789");
    if (at == std::string_view::npos) return std::nullopt;
    text.remove_prefix(at);
    return text::eat_number(text);
}

std::optional<Mark> metronome(pugi::xml_node node) {
    auto const first = node.child("beat-unit");
    if (!first) return std::nullopt;
    double const beat = unit_quarters(first);
    if (auto const second = first.next_sibling("beat-unit")) {
        double const other = unit_quarters(second);
        if (beat > 0 && other > 0) return Mark{0, 0, other / beat};
        return std::nullopt;
    }
    auto const value = number_in(node.child_value("per-minute"));
    if (!value || !(*value > 0) || *value > 2000 || !(beat > 0)) return std::nullopt;
    return Mark{0, *value * beat, 0};
}

/// A <sound tempo> wins over the metronome mark beside it, which is only its picture.
std::optional<Mark> mark_of(XmlSource const& source, pugi::xml_node node, std::string const& bar) {
    auto const sound = node.name() == std::string_view("sound") ? node : node.child("sound");
    if (auto const tempo = sound.attribute("tempo")) {
        std::string_view text = text::trim(tempo.value());
        auto const value = text::eat_number(text);
        if (!value || !text.empty() || !(*value > 0) || *value > 10000)
            throw InputError("a tempo of \"" + std::string(tempo.value()) +
                                 "\" quarter notes a minute is not possible",
                             "write a number above 0", source.place(sound, bar));
        return Mark{0, *value, 0};
    }
    for (auto const& type : node.children("direction-type"))
        for (auto const& mark : type.children("metronome"))
            if (auto const found = metronome(mark)) return found;
    return std::nullopt;
}

} // namespace

double quarters_of(std::string_view name) {
    static constexpr std::array<std::pair<std::string_view, double>, 14> values{{{"maxima", 32},
                                                                                 {"long", 16},
                                                                                 {"breve", 8},
                                                                                 {"whole", 4},
                                                                                 {"half", 2},
                                                                                 {"quarter", 1},
                                                                                 {"eighth", 0.5},
                                                                                 {"16th", 1.0 / 4},
                                                                                 {"32nd", 1.0 / 8},
                                                                                 {"64th", 1.0 / 16},
                                                                                 {"128th", 1.0 / 32},
                                                                                 {"256th", 1.0 / 64},
                                                                                 {"512th", 1.0 / 128},
                                                                                 {"1024th", 1.0 / 256}}};
    for (auto const& [known, quarters] : values)
        if (known == name) return quarters;
    return 0;
}

Timeline::Timeline(XmlSource const& source, std::vector<Part> const& parts, std::size_t own) {
    auto const& mine = parts[own].measures;
    double now = 0;
    for (std::size_t i = 0; i < mine.size(); ++i) {
        double const nominal = mine[i].nominal;
        double length = mine[i].filled;
        if (length < nominal - time_tolerance || length == 0) { // not full: do others fill the bar?
            double others = length;
            for (auto const& part : parts)
                if (i < part.measures.size()) others = std::max(others, part.measures[i].filled);
            length = nominal > 0 ? std::max(length, std::min(others, nominal)) : others;
        }
        if (length == 0) length = nominal > 0 ? nominal : 4;
        lengths_.push_back(length);
        starts_.push_back(now);
        now += length;
    }
    std::vector<Mark> marks;
    for (auto const& part : parts)
        for (std::size_t i = 0; i < part.measures.size() && i < starts_.size(); ++i)
            for (auto const& direction : part.measures[i].directions)
                if (auto mark = mark_of(source, direction.node, bar_name(part.measures[i]))) {
                    mark->at = starts_[i] + std::min(direction.onset, lengths_[i]);
                    marks.push_back(*mark);
                }
    std::stable_sort(marks.begin(), marks.end(), [](Mark const& a, Mark const& b) { return a.at < b.at; });
    has_tempo_ = std::any_of(marks.begin(), marks.end(), [](Mark const& m) { return m.per_minute > 0; });
    tempos_.push_back({0, default_tempo, 0});
    // Before the first mark its tempo holds: an upbeat has no tempo of its own.
    for (auto const& mark : marks)
        if (mark.per_minute > 0) {
            tempos_.front().per_minute = mark.per_minute;
            break;
        }
    for (std::size_t i = 0; i < marks.size(); ++i) {
        auto const& mark = marks[i];
        auto& last = tempos_.back();
        double const tempo =
            std::clamp(mark.per_minute > 0 ? mark.per_minute : last.per_minute * mark.ratio, 1.0, 10000.0);
        bool const repeated =
            i > 0 && marks[i - 1].at > mark.at - time_tolerance; // the same mark in another part
        if (repeated && (mark.ratio > 0 || marks[i - 1].ratio > 0)) continue;
        if (last.from > mark.at - time_tolerance)
            last.per_minute = tempo;
        else
            tempos_.push_back({mark.at, tempo, last.seconds + (mark.at - last.from) * 60 / last.per_minute});
    }
}

Duration Timeline::at(double quarters) const {
    auto const after = std::upper_bound(tempos_.begin() + 1, tempos_.end(), quarters,
                                        [](double q, Tempo const& t) { return q < t.from; });
    auto const& tempo = *(after - 1);
    return vowelway::seconds(tempo.seconds + (quarters - tempo.from) * 60 / tempo.per_minute);
}

} // namespace vowelway::io
