// SPDX-License-Identifier: MIT
#include "analysis/kinds_of_takes.hpp"

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
    auto const at = rate ? " at " + std::to_string(static_cast<int>(in_hertz(*rate) + 0.5)) + " Hz" : "";
    switch (kind) {
    case ProbeKind::whisper:
        return "a whisper";
    case ProbeKind::creak:
        return "a creak";
    case ProbeKind::sung:
        return "sung" + at;
    case ProbeKind::spoken:
        return "spoken" + at;
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
            t->refused = "it is said to be " + as_heard(forced, {}) + " but sounds like " +
                         as_heard(t->excitation.kind, t->excitation.rate) +
                         ": leave out --probe, or record it again";
        take_kind(t->excitation, forced);
        t->excitation.probability = probability_of(decided, forced);
    }
}

void decide(std::vector<Take*> const& takes, KindOfRecording const& decided, Recording const& r,
            Remarks& remarks) {
    double const sure = probability_of(decided, decided.kind);
    if (sure < least_sure)
        for (auto* t : takes)
            t->refused = "it cannot be told whether this is " + as_heard(decided.kind, {}) + " (" +
                         percent(sure) + "): say it with --probe, or record it closer and in less noise";
    else if (sure < worth_saying)
        remarks.push_back({Remark::Kind::assumed, r.name + " is taken for " + as_heard(decided.kind, {}) +
                                                      " (" + percent(sure) +
                                                      "); --probe settles it if that is wrong"});
    for (auto const i : decided.disagreeing)
        takes[i]->refused = "it sounds like " +
                            as_heard(takes[i]->excitation.kind, takes[i]->excitation.rate) + " (" +
                            percent(takes[i]->excitation.probability) + "), and the recording is " +
                            as_heard(decided.kind, {}) + ": make one kind of sound in a recording";
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
