// SPDX-License-Identifier: MIT
#include "analysis/kinds_of_takes.hpp"
#include "vowelway/core/wording.hpp"

#include <cstdio>
#include <string>

namespace vowelway::analysis {
namespace {

constexpr double least_sure = 0.75;         // of the kind, to read the takes at all
constexpr double worth_saying = 0.95;       // below this the probability is said as a caution
constexpr double contradicted = 0.05;       // of the forced kind: the sound speaks against it
constexpr Frequency low_voice = hertz(100); // a creak may be as regular as this and still be one

std::string percent(double p) {
    char text[20];
    std::snprintf(text, sizeof text, p > 0.995 ? "%.1f %%" : "%.0f %%", std::min(100 * p, 99.9));
    return text;
}

std::string as_heard(ProbeKind kind, std::optional<Frequency> rate) {
    auto const hz = rate ? static_cast<int>(in_hertz(*rate) + 0.5) : 0;
    switch (kind) {
    case ProbeKind::whisper:
        return worded("a whisper");
    case ProbeKind::creak:
        return worded("a creak");
    case ProbeKind::sung:
        return rate ? worded("sung at {0} Hz", hz) : worded("sung");
    case ProbeKind::spoken:
        return rate ? worded("spoken at {0} Hz", hz) : worded("spoken");
    }
    return "";
}

double probability_of(KindOfRecording const& decided, ProbeKind kind) {
    double sum = 0;
    for (std::size_t k = 0; k < decided.probability.size(); ++k)
        if (same_source(static_cast<ProbeKind>(k), kind)) sum += decided.probability[k];
    return sum;
}

/// Whether the sound speaks against the kind it is said to be.
bool speaks_against(KindOfRecording const& decided, ProbeKind forced, Excitation const& e) {
    if (probability_of(decided, forced) >= contradicted) return false;
    bool const low = forced == ProbeKind::creak && e.pitch && *e.pitch < low_voice;
    return !low;
}

void force(std::vector<Take*> const& takes, KindOfRecording const& decided, ProbeKind forced) {
    for (auto* t : takes) {
        if (speaks_against(decided, forced, t->excitation))
            t->refused =
                worded("it is said to be {0} but sounds like {1}: leave out --probe, or record it again",
                       as_heard(forced, {}), as_heard(t->excitation.kind, t->excitation.rate));
        take_kind(t->excitation, forced);
        t->excitation.probability = probability_of(decided, forced);
    }
}

void decide(std::vector<Take*> const& takes, KindOfRecording const& decided, Recording const& r,
            Remarks& remarks) {
    double const sure = probability_of(decided, decided.kind);
    if (sure < least_sure)
        for (auto* t : takes)
            t->refused = worded(
                "it cannot be told whether this is {0} ({1}): say it with --probe, or record it closer and "
                "in less noise",
                as_heard(decided.kind, {}), percent(sure));
    else if (sure < worth_saying)
        remarks.push_back(
            {Remark::Kind::assumed, worded("{0} is taken for {1} ({2}); --probe settles it if that is wrong",
                                           r.name, as_heard(decided.kind, {}), percent(sure))});
    for (auto const i : decided.disagreeing)
        takes[i]->refused = worded(
            "it sounds like {0} ({1}), and the recording is {2}: make one kind of sound in a recording",
            as_heard(takes[i]->excitation.kind, takes[i]->excitation.rate),
            percent(takes[i]->excitation.probability), as_heard(decided.kind, {}));
}

} // namespace

void settle_kinds(Measurements& m, std::vector<Recording> const& recordings,
                  std::optional<ProbeKind> forced) {
    for (std::size_t r = 0; r < recordings.size(); ++r) {
        std::vector<Take*> takes;
        std::vector<Excitation*> sounds;
        for (auto& t : m.takes)
            if (t.recording == r && t.usable()) takes.push_back(&t), sounds.push_back(&t.excitation);
        auto const decided = decide_kind(sounds);
        m.kinds.push_back(decided);
        if (takes.empty()) continue;
        if (forced)
            force(takes, decided, *forced);
        else
            decide(takes, decided, recordings[r], m.remarks);
    }
}

} // namespace vowelway::analysis
