// SPDX-License-Identifier: MIT
// Takes as they come: which kind they are taken for, what a forced kind and a wrong order of the labels do.
// Speakers are those of Peterson & Barney (1952), whole recordings of five vowels each. Prints the figures
// that docs/measuring.md quotes. Run from the root of the project; an argument chooses one part: kinds,
// forced, order.
#include "taken.hpp"

#include <fmt/core.h>

namespace {

using namespace vowelway;
using namespace vowelway::probes;

/// How often each kind is taken for each, take by take, and what becomes of the numbers.
void kinds() {
    for (auto const kind : all_kinds)
        for (double snr : {40.0, 20.0, 10.0})
            for (bool fan : {false, true}) {
                Maker m;
                std::array<int, 4> as{};
                int takes = 0, refused = 0, alone = 0;
                for (auto const& s : every(3)) {
                    auto const r = heard(m.recording(said(m, s, listed, kind), {snr, fan}));
                    auto const found = try_measure(r, asked(s, list));
                    if (!found) continue;
                    for (auto const& t : found->takes) {
                        ++takes, refused += !t.usable();
                        ++as[static_cast<std::size_t>(t.excitation.kind)];
                        auto const own =
                            std::max_element(t.excitation.evidence.begin(), t.excitation.evidence.end());
                        alone +=
                            !same_source(static_cast<ProbeKind>(own - t.excitation.evidence.begin()), kind);
                    }
                }
                fmt::print(
                    "{:8} {:2.0f} dB {:5}: {:3} takes as whisper {:3}, creak {:3}, sung {:3}, spoken {:3}; "
                    "wrong alone {:2}; no number {:3}\n",
                    to_string(kind), snr, fan ? "fan" : "white", takes, as[0], as[1], as[2], as[3], alone,
                    refused);
            }
}

/// What happens to a kind that is not the one said.
void forced() {
    for (auto const kind : all_kinds)
        for (auto const said_to_be : all_kinds) {
            Maker m;
            int numbers = 0, takes = 0;
            for (auto const& s : every(6)) {
                auto const r = heard(m.recording(said(m, s, listed, kind), {30, false}));
                auto q = asked(s, list);
                q.kind = said_to_be;
                auto const found = try_measure(r, q);
                if (!found) continue;
                for (auto const& t : found->takes) ++takes, numbers += t.usable();
            }
            fmt::print("{:8} said to be {:8}: {} of {} takes give a number\n", to_string(kind),
                       to_string(said_to_be), numbers, takes);
        }
}

/// Lists in the right order and in wrong ones.
void order() {
    for (auto const kind : {ProbeKind::whisper, ProbeKind::creak, ProbeKind::sung}) {
        Maker m;
        int right = 0, right_refused = 0, right_doubted = 0, takes = 0, wrong_numbers = 0, wrong_takes = 0,
            lists = 0, found_out = 0, wrong_lists = 0, the_order = 0;
        for (auto const& s : every(2)) {
            auto const r = heard(m.recording(said(m, s, listed, kind), {30, false}));
            auto const found = try_measure(r, asked(s, list));
            if (found) {
                ++lists, right_refused += found->order && found->order->sure;
                right_doubted += found->order && !found->order->sure;
                for (auto const& t : found->takes) ++takes, right += t.usable();
            }
            for (auto const* wrong : {"u ɔ ɑ ɛ i", "ɛ i ɑ ɔ u", "i ɑ ɛ ɔ u", "ɑ ɛ i ɔ u", "i ɛ ɑ u ɔ"}) {
                auto const other = try_measure(r, asked(s, wrong));
                if (!other) continue;
                ++wrong_lists, found_out += other->order && other->order->sure;
                auto const labels = parse_vowels(wrong), truth = parse_vowels(list);
                bool all = other->order.has_value();
                for (std::size_t i = 0; i < other->takes.size(); ++i) {
                    if (labels[i] == truth[i]) continue;
                    ++wrong_takes, wrong_numbers += other->takes[i].usable();
                    if (other->order)
                        for (std::size_t k = 0; k < other->order->listed.size(); ++k)
                            if (other->order->listed[k] == labels[i])
                                all = all && other->order->better[k] == truth[i];
                }
                the_order += all;
            }
        }
        fmt::print(
            "{:8} right order: {} of {} takes give a number; {} of {} lists refused, {} doubted. Wrong "
            "order: {} "
            "of {} lists refused ({} name the right one); {} of {} wrongly listed takes give a number\n",
            to_string(kind), right, takes, right_refused, lists, right_doubted, found_out, wrong_lists,
            the_order, wrong_numbers, wrong_takes);
    }
}

} // namespace

int main(int argc, char** argv) {
    std::string const chosen = argc > 1 ? argv[1] : "";
    auto const wants = [&](std::string const& name) { return chosen.empty() || chosen == name; };
    if (wants("kinds")) kinds();
    if (wants("forced")) forced();
    if (wants("order")) order();
}
