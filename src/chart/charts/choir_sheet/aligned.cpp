// SPDX-License-Identifier: MIT
#include "chart/charts/choir_sheet/aligned.hpp"

#include <algorithm>
#include <cmath>
#include <compare>
#include <cstdlib>
#include <map>

namespace vowelway::chart {
namespace {

/// Where a thing stands in a bar, whatever part it is in.
struct Slot {
    int rank = 0;   ///< clef, key, time, repeat; all that has a time; barline
    long onset = 0; ///< ten-thousandths of a quarter
    int before = 0; ///< a clef or grace notes ahead of what begins at that time
    auto operator<=>(Slot const&) const = default;
};
constexpr int in_time = 4, at_end = 5;

int rank_of(Atom const& a) {
    switch (a.kind) {
    case Atom::Kind::clef:
        return 0;
    case Atom::Kind::key:
        return 1;
    case Atom::Kind::time:
        return 2;
    case Atom::Kind::repeat_begin:
        return 3;
    case Atom::Kind::barline:
        return at_end;
    default:
        return in_time;
    }
}

long ticks(double onset) { return std::lround(onset * 10000); }

/// The slots of a bar's atoms, in their order.
std::vector<Slot> slots_of(Bar const& bar, StaffMeasure const& measure) {
    std::vector<Slot> out;
    bool begun = false;
    for (std::size_t i = 0; i < bar.atoms.size(); ++i) {
        auto const& a = bar.atoms[i];
        Slot slot{rank_of(a)};
        auto const onset_from = [&](std::size_t k) {
            for (; k < bar.atoms.size(); ++k)
                if (bar.atoms[k].kind == Atom::Kind::event && bar.atoms[k].event < measure.events.size())
                    return measure.events[bar.atoms[k].event].onset;
            return measure.length;
        };
        if (slot.rank == 0 && begun) slot = {in_time, ticks(onset_from(i)), -100};
        if (a.kind == Atom::Kind::event) {
            begun = true;
            slot.onset = ticks(onset_from(i));
            if (measure.events[a.event].grace) slot.before = -50;
            if (!out.empty() && slot.before == -50 && out.back().rank == in_time &&
                out.back().onset == slot.onset && out.back().before >= -50)
                slot.before = out.back().before + 1;
        }
        out.push_back(slot);
    }
    return out;
}

/// A copy in which each bar of rest stands alone, as other parts may sing there.
Staff with_every_bar(Staff staff) {
    for (auto& measure : staff.measures)
        if (measure.texts.empty()) measure.texts.push_back({});
    return staff;
}

struct PartBars {
    std::vector<Bar> bars;
    std::vector<std::vector<Slot>> slots; ///< of each bar's atoms
};

PartBars part_bars_of(plan::Plan const& plan, Staff const& staff, TextMeasurer const& measurer) {
    PartBars out{measure_bars(plan, staff, measurer, Under::words), {}};
    for (auto const& bar : out.bars) out.slots.push_back(slots_of(bar, staff.measures[bar.measure]));
    return out;
}

/// The columns of one bar: the widest of each slot.
std::map<Slot, Atom> slot_columns_of(std::vector<PartBars> const& parts, std::size_t bar) {
    std::map<Slot, Atom> out;
    for (auto const& part : parts) {
        if (bar >= part.bars.size()) continue;
        for (std::size_t i = 0; i < part.slots[bar].size(); ++i) {
            auto const& a = part.bars[bar].atoms[i];
            auto const [at, fresh] = out.emplace(part.slots[bar][i], a);
            auto& column = at->second;
            column.left = std::max(column.left, a.left);
            column.right = std::max(column.right, a.right);
            column.under = std::max(column.under, a.under);
            column.spring = std::max(column.spring, a.spring);
            column.underlay.hyphen = column.underlay.hyphen || a.underlay.hyphen;
        }
    }
    return out;
}

/// What begins at a time wants room until the next thing in any part begins.
void stretch_to_next(std::map<Slot, Atom>& columns, double length) {
    for (auto it = columns.begin(); it != columns.end(); ++it) {
        if (it->first.rank != in_time || it->first.before < 0) continue;
        auto next = std::next(it);
        while (next != columns.end() && next->first.rank == in_time && next->first.onset == it->first.onset)
            ++next;
        long const end =
            next != columns.end() && next->first.rank == in_time ? next->first.onset : ticks(length);
        double const quarters = static_cast<double>(end - it->first.onset) / 10000;
        it->second.spring = 3.6 * space * std::pow(std::clamp(quarters, 0.06, 8.0), 0.58);
    }
}

struct Merged {
    std::vector<Bar> bars;
    std::vector<std::vector<Slot>> slots; ///< of each bar's columns
};

Merged merge(std::vector<PartBars> const& parts, std::vector<Staff> const& staves) {
    Merged out;
    std::size_t count = 0;
    for (auto const& part : parts) count = std::max(count, part.bars.size());
    for (std::size_t i = 0; i < count; ++i) {
        Bar bar;
        bar.measure = i;
        double length = 0;
        for (std::size_t p = 0; p < parts.size(); ++p) {
            if (i >= parts[p].bars.size()) continue;
            length = std::max(length, staves[p].measures[i].length);
            if (std::abs(parts[p].bars[i].key.fifths) >= std::abs(bar.key.fifths))
                bar.key = parts[p].bars[i].key;
        }
        auto columns = slot_columns_of(parts, i);
        stretch_to_next(columns, length);
        auto& slots = out.slots.emplace_back();
        for (auto& [slot, atom] : columns) {
            atom.measure = i;
            atom.event = slots.size();
            slots.push_back(slot);
            bar.atoms.push_back(std::move(atom));
        }
        out.bars.push_back(std::move(bar));
    }
    return out;
}

/// The atoms of one part where the merged system has their columns.
System of_part(System const& merged, std::vector<std::vector<Slot>> const& slots, PartBars const& part) {
    System out;
    out.width = merged.width;
    out.first_measure = merged.first_measure;
    out.begins_mid_bar = merged.begins_mid_bar;
    auto const& first = part.bars[std::min(merged.first_measure, part.bars.size() - 1)];
    out.clef = first.clef;
    std::size_t head = 1;
    out.atoms.push_back(merged.atoms[0]);
    out.atoms[0].clef = first.clef;
    if (merged.atoms.size() > 1 && merged.atoms[1].kind == Atom::Kind::key) {
        ++head;
        if (first.key.fifths != 0) {
            out.atoms.push_back(merged.atoms[1]);
            out.atoms[1].clef = first.clef;
            out.atoms[1].key = out.atoms[1].key_before = first.key;
        }
    }
    std::map<std::size_t, std::map<Slot, double>> places; // by bar
    for (auto i = head; i < merged.atoms.size(); ++i) {
        auto const& a = merged.atoms[i];
        places[a.measure][slots[a.measure][a.event]] = a.x;
    }
    for (auto const& [bar, columns] : places) {
        if (bar >= part.bars.size()) continue;
        Clef clef = part.bars[bar].clef;
        for (std::size_t i = 0; i < part.slots[bar].size(); ++i) {
            auto const at = columns.find(part.slots[bar][i]);
            if (at == columns.end()) continue;
            auto a = part.bars[bar].atoms[i];
            a.x = at->second;
            if (a.kind == Atom::Kind::clef) clef = a.clef;
            if (a.kind == Atom::Kind::key) a.clef = clef;
            out.atoms.push_back(std::move(a));
        }
    }
    return out;
}

} // namespace

AlignedScore aligned(plan::Choir const& choir, double width, TextMeasurer const& measurer) {
    AlignedScore out;
    std::vector<PartBars> parts;
    for (auto const& part : choir.parts) {
        out.staves.push_back(with_every_bar(staff_to_draw(part.plan.passage)));
        parts.push_back(part_bars_of(part.plan, out.staves.back(), measurer));
    }
    auto merged = merge(parts, out.staves);
    auto const slots = merged.slots;
    for (auto const& system : assign_systems(std::move(merged.bars), width)) {
        ChoirSystem one;
        one.width = system.width;
        for (auto const& part : parts) one.parts.push_back(of_part(system, slots, part));
        out.systems.push_back(std::move(one));
    }
    return out;
}

} // namespace vowelway::chart
