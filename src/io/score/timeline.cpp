// SPDX-License-Identifier: MIT
#include "io/score/timeline.hpp"

#include "core/text.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <array>
#include <map>

namespace vowelway::io {

namespace {

/// A mark as it stands: quarters a minute, or a ratio to the tempo before (one note value equals another).
struct TempoMark {
    double at = 0;
    double per_minute = 0, ratio = 0;
    int rank = 0; ///< of marks at one place: what is meant to sound before its picture, then the own part
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

std::optional<TempoMark> metronome(pugi::xml_node node) {
    auto const first = node.child("beat-unit");
    if (!first) return std::nullopt;
    double const beat = unit_quarters(first);
    if (auto const second = first.next_sibling("beat-unit")) {
        double const other = unit_quarters(second);
        if (beat > 0 && other > 0) return TempoMark{.ratio = other / beat};
        return std::nullopt;
    }
    auto const value = number_in(node.child_value("per-minute"));
    if (!value || !(*value > 0) || *value > 2000 || !(beat > 0)) return std::nullopt;
    return TempoMark{.per_minute = *value * beat};
}

/// A <sound tempo> wins over the metronome mark beside it, which is only its picture.
std::optional<TempoMark> mark_of(XmlSource const& source, pugi::xml_node node, std::string const& bar) {
    auto const sound = node.name() == std::string_view("sound") ? node : node.child("sound");
    if (auto const tempo = sound.attribute("tempo")) {
        std::string_view text = text::trim(tempo.value());
        auto const value = text::eat_number(text);
        if (!value || !text.empty() || !(*value > 0) || *value > 10000)
            throw InputError(
                worded("a tempo of \"{0}\" quarter notes a minute is not possible", tempo.value()),
                worded("write a number above 0"), source.place(sound, bar));
        return TempoMark{.per_minute = *value, .rank = 2};
    }
    for (auto const& type : node.children("direction-type"))
        for (auto const& mark : type.children("metronome"))
            if (auto const found = metronome(mark)) return found;
    return std::nullopt;
}

/// The marks of all parts in one bar, by onset; of those at one place the one that counts.
std::vector<TempoMark> marks_in(XmlSource const& source, std::vector<Part> const& parts, std::size_t own,
                                std::size_t bar, double length) {
    std::vector<TempoMark> all;
    for (std::size_t p = 0; p < parts.size(); ++p) {
        if (bar >= parts[p].measures.size()) continue;
        auto const& measure = parts[p].measures[bar];
        for (auto const& direction : measure.directions)
            if (auto mark = mark_of(source, direction.node, bar_name(measure))) {
                mark->at = std::min(direction.onset, length);
                mark->rank += p == own ? 1 : 0;
                all.push_back(*mark);
            }
    }
    std::stable_sort(all.begin(), all.end(),
                     [](TempoMark const& a, TempoMark const& b) { return a.at < b.at; });
    std::vector<TempoMark> out;
    for (auto const& mark : all)
        if (out.empty() || out.back().at < mark.at - time_tolerance)
            out.push_back(mark);
        else if (out.back().rank < mark.rank || (out.back().rank == mark.rank && mark.per_minute > 0))
            out.back() = mark;
    return out;
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
    std::vector<std::vector<TempoMark>> marks;
    for (std::size_t i = 0; i < mine.size(); ++i)
        marks.push_back(marks_in(source, parts, own, i, lengths_[i]));
    // Before the first mark its tempo holds: an upbeat has no tempo of its own.
    tempos_.push_back({0, default_tempo, 0});
    for (std::size_t i = 0; i < mine.size() && !has_tempo_; ++i)
        for (auto const& mark : marks[i])
            if (mark.per_minute > 0 && !has_tempo_) {
                has_tempo_ = true;
                tempos_.front().per_minute = mark.per_minute;
                if (i > 1 || (i == 1 && lengths_[0] > mine[0].nominal - time_tolerance))
                    first_tempo_bar_ = mine[i].number;
            }
    std::map<std::size_t, double> came_in; // the tempo in which a printed bar was first reached
    for (std::size_t i = 0; i < mine.size(); ++i) {
        auto const [known, fresh] = came_in.emplace(mine[i].printed, tempos_.back().per_minute);
        bool const jump = i > 0 && mine[i].printed != mine[i - 1].printed + 1;
        if (jump && !fresh) set_tempo(starts_[i], known->second);
        for (auto const& mark : marks[i])
            set_tempo(starts_[i] + mark.at,
                      mark.per_minute > 0 ? mark.per_minute : tempos_.back().per_minute * mark.ratio);
    }
}

void Timeline::set_tempo(double at, double per_minute) {
    auto& last = tempos_.back();
    double const tempo = std::clamp(per_minute, 1.0, 10000.0);
    if (last.from > at - time_tolerance)
        last.per_minute = tempo;
    else
        tempos_.push_back({at, tempo, last.seconds + (at - last.from) * 60 / last.per_minute});
}

Duration Timeline::at(double quarters) const {
    auto const after = std::upper_bound(tempos_.begin() + 1, tempos_.end(), quarters,
                                        [](double q, Tempo const& t) { return q < t.from; });
    auto const& tempo = *(after - 1);
    return vowelway::seconds(tempo.seconds + (quarters - tempo.from) * 60 / tempo.per_minute);
}

} // namespace vowelway::io
