// SPDX-License-Identifier: MIT
#include "plan/reading.hpp"

#include "vowelway/acoustics/note_spectrum.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/plan/pencil.hpp"
#include "vowelway/plan/zones.hpp"

#include <algorithm>
#include <cmath>
#include <string>

namespace vowelway::plan {

std::string_view to_string(Advice advice) {
    switch (advice) {
    case Advice::hold:
        return to_word("hold");
    case Advice::migrate:
        return to_word("migrate");
    case Advice::modify:
        return to_word("modify");
    }
    return "";
}

namespace {

// Resonances are known to about 10 Hz at best, so sentences say no more.
std::string hz(Frequency f) { return std::to_string(std::lround(in_hertz(f) / 10) * 10) + " Hz"; }
// A note's own harmonics are known exactly.
std::string sung_hz(Frequency f) { return std::to_string(std::lround(in_hertz(f))) + " Hz"; }
std::string whole(double v) { return std::to_string(std::lround(v)); }

Target target_of(VowelModel const& model, ShapeGrid const& grid, std::size_t shape,
                 acoustics::VowelSpace const& space) {
    auto const& r = model.resonances;
    Target target{r.r1, r.r2, r.vowel.quality()};
    if (shape == grid.home()) return target;
    double const up1 = std::exp2(grid.d1(shape) / 12.0), up2 = std::exp2(grid.d2(shape) / 12.0);
    for (auto [resonance, up] : {std::pair{&target.r1, up1}, std::pair{&target.r2, up2}}) {
        resonance->centre *= up;
        resonance->sd *= up;
    }
    target.shade = space.shade_of(
        acoustics::resonance_set(target.r1.centre, target.r2.centre, space.quarter()), model.in_space);
    return target;
}

// "closer", "more open", "darker", "brighter": the way from the intended to the heard place.
std::string drift(acoustics::HeardPlace const& intended, acoustics::HeardPlace const& heard, bool as_order) {
    double const open = (heard.openness - intended.openness).value,
                 front = 0.5 * (heard.front - intended.front).value;
    if (std::abs(open) >= std::abs(front))
        return open < 0 ? (as_order ? worded("let it close") : worded("closer"))
                        : (as_order ? worded("let it open") : worded("more open"));
    return front < 0 ? (as_order ? worded("let it darken") : worded("darker"))
                     : (as_order ? worded("let it brighten") : worded("brighter"));
}

std::string relation_sentence(Task const& task, VowelModel const& model, Target const& target,
                              Technique const& technique) {
    auto const& wanted = technique.relations.front();
    bool const first = wanted.resonance.number == 1;
    auto const harmonic = wanted.harmonic.str(), resonance = wanted.resonance.str();
    auto const wish = wanted.side == WantedRelation::Side::below
                          ? worded("{0} wants {1} below {2}", technique.name, harmonic, resonance)
                      : wanted.side == WantedRelation::Side::above
                          ? worded("{0} wants {1} above {2}", technique.name, harmonic, resonance)
                          : worded("{0} wants {1} at {2}", technique.name, harmonic, resonance);
    return worded("{0}: {1} is {2}, {3} goes from {4} to {5}", wish, harmonic,
                  sung_hz(frequency_of(wanted.harmonic, task.pitch)), resonance,
                  hz(first ? model.home.r1 : model.home.r2), hz(first ? target.r1.centre : target.r2.centre));
}

std::string why_ring(Task const& task, VowelModel const& model, Decision const& d) {
    auto const fo = task.pitch.frequency();
    std::string const r1 = hz(model.home.r1), to = hz(d.target.r1.centre);
    auto const gain =
        d.gain.value >= 0.5 ? worded("gains {0} dB", whole(d.gain.value)) : worded("keeps the tone carrying");
    if (fo > model.home.r1)
        return worded("fo is {0}, above fR1 at {1}: raising fR1 to {2} {3}", sung_hz(fo), r1, to, gain);
    if (2.0 * fo > model.home.r1)
        return worded("fR1 at {0} lies between fo ({1}) and 2fo ({2}) and carries neither: fR1 at {3} {4}",
                      r1, sung_hz(fo), sung_hz(2.0 * fo), to, gain);
    return worded("no harmonic lies near fR1 at {0}: fR1 at {1} {2}", r1, to, gain);
}

// Which term of the cost the change saves most, said with its numbers.
std::string why_modify(Strategy const& strategy, Task const& task, VowelModel const& model,
                       Decision const& d) {
    auto const &kept = d.cost_kept, &moved = d.cost_planned;
    double const text = kept.text - moved.text, ring = kept.ring - moved.ring,
                 stability = kept.stability - moved.stability, relation = kept.relation - moved.relation;
    double const most = std::max({text, ring, stability, relation});
    auto const fo = task.pitch.frequency();
    std::string const r1 = hz(model.home.r1), to = hz(d.target.r1.centre);
    if (most == relation && relation > 0)
        return relation_sentence(task, model, d.target, strategy.aim().technique);
    if (most == ring) return why_ring(task, model, d);
    if (most == stability) {
        auto const n = fo > 0.97 * model.home.r1 ? Harmonic{1} : Harmonic{2};
        return worded(
            "{0} at {1} lies just above fR1 at {2}, where the tract supports the folds least: fR1 at {3} "
            "takes it out of there",
            n.str(), sung_hz(frequency_of(n, task.pitch)), r1, to);
    }
    return worded("kept, it would be heard as {0}; fR1 at {1} and fR2 at {2} keep it nearer to {3}",
                  d.heard_kept.words(), to, hz(d.target.r2.centre), model.resonances.vowel.ipa());
}

std::string why_left(Task const& task, VowelModel const& model, Decision const& d,
                     acoustics::HeardPlace const& heard) {
    auto const fo = task.pitch.frequency();
    auto const r1 = model.home.r1;
    std::string where;
    if (2.0 * fo < r1)
        where = worded("2fo at {0} is below fR1 at {1}", sung_hz(2.0 * fo), hz(r1));
    else if (fo < r1)
        where =
            worded("fR1 at {0} lies between fo ({1}) and 2fo ({2})", hz(r1), sung_hz(fo), sung_hz(2.0 * fo));
    else
        where = worded("fo at {0} is above fR1 at {1}", sung_hz(fo), hz(r1));
    std::string said = where + ": ";
    if (d.turns_here)
        said += worded("it turns over here: let it; do not open for it") + "; ";
    else if (d.turned)
        said += worded("it has turned over") + "; ";
    if (d.advice == Advice::hold) return said + worded("it is heard as meant");
    return said + worded("the same shape sounds {0}, like {1}; a change would cost more than it gains",
                         drift(model.home.spoken, heard, false), d.heard_kept.words());
}

// What a singer can think of at once: the three largest, and small ones only where there is nothing else.
std::vector<acoustics::Gesture> gestures_of(acoustics::GestureVector const& vector, bool rounded) {
    auto gestures = acoustics::describe(vector, rounded);
    if (gestures.empty()) gestures = acoustics::describe(vector, rounded, 0.05);
    // A tongue that gives way a little while others lead is no instruction.
    std::erase_if(gestures, [](acoustics::Gesture const& g) {
        return g.part == acoustics::GesturePart::tongue_advancement && g.amount < 0 && g.amount > -0.3;
    });
    if (gestures.size() > 3) gestures.erase(gestures.begin() + 3, gestures.end());
    return gestures;
}

// The main gesture with its degree, in the words of the pencil: a student who does not read how much opens
// too far.
std::string brief_of(Decision const& d) {
    return d.gestures.empty() ? worded("think toward {0}", d.target.shade.ipa())
                              : in_short({d.gestures.front()});
}

} // namespace

Pitch level_turn(VowelModel const& model, Strategy const& strategy) {
    auto const quarter = strategy.space().quarter();
    auto const shape = acoustics::resonance_set(model.home.r1, model.home.r2, quarter);
    auto const turn = Pitch(model.home.r1 / 2.0);
    bool below = false;
    for (double step = -4; step <= 12; step += 0.25) {
        acoustics::NoteSpectrum const note(turn + semitones(step), quarter, strategy.source());
        auto const levels = note.harmonic_levels(shape);
        bool const led = levels.size() > 1 && levels[0] > levels[1];
        if (led && below) return note.pitch();
        below = !led;
    }
    return turn;
}

Decision read_decision(Strategy const& strategy, Task const& task, Choice const& choice,
                       Beside const& beside) {
    auto const& model = strategy.models()[task.vowel];
    auto const& grid = strategy.grid();
    auto const& space = strategy.space();
    Decision d;
    d.zone = read_zone(task.pitch, model.resonances.r1);
    d.heard = space.hear(choice.heard, model.in_space, beside.heard);
    d.heard_kept = space.hear(choice.heard_kept, model.in_space, beside.kept);
    d.advice = choice.advice;
    d.certainty = choice.certainty;
    d.shares = choice.shares;
    d.kept = {choice.heard_kept.openness - model.home.spoken.openness,
              choice.heard_kept.front - model.home.spoken.front};
    d.cost_kept = beside.cost_kept;
    d.cost_planned = beside.cost_planned;
    d.turned = !(task.pitch < beside.turning);
    d.turns_here = d.turned && beside.from && *beside.from < beside.turning;
    d.gain = choice.gain;
    d.text_cost = d.heard.distance;
    d.target = target_of(model, grid, choice.shape, space);
    acoustics::NoteSpectrum const spectrum(task.pitch, space.quarter(), strategy.source(), task.loudness);
    auto const levels = [&](Frequency r1, Frequency r2) {
        auto out = spectrum.harmonic_levels(acoustics::resonance_set(r1, r2, space.quarter()));
        if (out.size() > 8) out.resize(8);
        return out;
    };
    d.levels_kept = levels(model.home.r1, model.home.r2);
    d.levels_planned =
        choice.shape == grid.home() ? d.levels_kept : levels(d.target.r1.centre, d.target.r2.centre);
    if (d.advice == Advice::modify) {
        d.gestures =
            gestures_of(gesture_of(grid, choice.shape, *model.reach), has_round_lips(model.resonances.vowel));
        d.why = why_modify(strategy, task, model, d);
        d.brief = brief_of(d);
    } else {
        d.why = why_left(task, model, d, choice.heard_kept);
        if (d.turns_here)
            d.brief = worded("let it turn over");
        else if (d.advice == Advice::migrate)
            d.brief = drift(model.home.spoken, choice.heard_kept, true);
    }
    return d;
}

double importance_of(Decision const& d, Duration length, Decision const* before) {
    if (d.advice == Advice::hold && !d.turns_here && d.zone.zone != Zone::turning &&
        d.zone.zone != Zone::meeting)
        return 0;
    double const held = std::clamp(std::sqrt(in_seconds(length) / 2), 0.2, 1.0);
    double const far = std::min(1.0, d.heard_kept.distance.value / 3);
    double weight = d.advice == Advice::modify ? 0.6 : d.advice == Advice::migrate ? 0.25 : 0.15;
    weight += 0.15 * far + (d.certainty < 0.8 ? 0.1 : 0);
    bool const changes = !before || before->advice != d.advice || !(before->target.shade == d.target.shade);
    return std::min(1.0, held * weight * (changes ? 1.0 : 0.6) / 0.85);
}

} // namespace vowelway::plan
