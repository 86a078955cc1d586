// SPDX-License-Identifier: MIT
// Takes as they come: what is heard of them under the conditions of real phones and rooms. Speakers are those
// of Peterson & Barney (1952), whole recordings of some vowels each. Prints the figures that
// docs/measuring.md quotes. Run from the root of the project; an argument chooses one part: kinds, forced,
// order, other.
#include "probes.hpp"

#include "analysis/resample.hpp"
#include "vowelway/analysis/measure.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/io/profile/built_in.hpp"

#include <fmt/core.h>

#include <algorithm>
#include <fstream>
#include <map>
#include <sstream>
#include <string>

namespace {

using namespace vowelway;
using namespace vowelway::probes;
using analysis::ProbeKind;

struct Speaker {
    std::string group;
    std::map<std::string, std::array<double, 3>> formants; // by IPA
};

/// Every speaker with all of the vowels.
std::vector<Speaker> speakers() {
    std::map<std::string, Speaker> all;
    std::ifstream file("tests/data/measuring/pb1952_first_repetition.csv");
    std::string line;
    std::getline(file, line);
    while (std::getline(file, line)) {
        std::istringstream row(line);
        std::vector<std::string> r;
        for (std::string cell; std::getline(row, cell, ',');) r.push_back(cell);
        auto& s = all[r.at(0) + r.at(1)];
        s.group = r.at(0);
        s.formants[r.at(2)] = {std::stod(r.at(4)), std::stod(r.at(5)), std::stod(r.at(6))};
    }
    if (all.empty()) throw std::runtime_error("no speakers: run from the root of the project");
    std::vector<Speaker> list;
    for (auto& [name, s] : all) list.push_back(std::move(s));
    return list;
}

double spacing_of(std::string const& group) { return group == "m" ? 1036 : group == "w" ? 1241 : 1400; }
VoiceType voice_of(std::string const& group) {
    return group == "m" ? VoiceType::baritone : group == "w" ? VoiceType::mezzo : VoiceType::treble;
}

struct Room {
    double snr_db = 40;
    bool fan = false; ///< noise that falls by 6 dB an octave above 180 Hz; else white
};

struct Maker {
    std::mt19937 random{7};
    std::uniform_real_distribution<double> unit;
    double draw(double low, double high) { return low + (high - low) * unit(random); }

    make::Samples at_listening_rate(make::Samples const& x, double rate) {
        std::vector<float> small(x.size());
        for (std::size_t n = 0; n < x.size(); ++n) small[n] = static_cast<float>(1e-3 * x[n]);
        return analysis::resample(small, hertz(rate), hertz(16000)).samples;
    }

    /// One take of unit power, 0.5 to 1 s. A whisper has the published shift (Swerdlin, Smith & Wolfe 2010)
    /// with its deviation between singers, `singer` in deviations.
    make::Samples take(Speaker const& s, std::string const& ipa, ProbeKind kind, double singer, double fo) {
        auto f = s.formants.at(ipa);
        if (kind == ProbeKind::whisper) {
            bool const close = ipa == "i" || ipa == "u";
            f[0] += (close ? 0.6 : 1.0) * (255 + 60 * singer + draw(-60, 60)), f[1] += 115 + 70 * singer,
                f[2] += 125;
        } else if (kind == ProbeKind::creak) {
            f[0] += 45 + 25 * singer;
        }
        double const rate = kind == ProbeKind::whisper ? 16000 : 48000;
        auto const n = static_cast<std::size_t>(draw(0.5, 1) * rate);
        auto const all = make::peaks(f, spacing_of(s.group) * draw(0.92, 1.08), 7800,
                                     kind == ProbeKind::whisper ? draw(1, 3) : draw(1, 2));
        make::Samples source;
        if (kind == ProbeKind::whisper) {
            source = make::sloped(make::white(n, random), draw(-0.5, 0.5));
            double const beat = draw(3, 8), depth = draw(0, 0.4); // breath is not even
            for (std::size_t i = 0; i < n; ++i)
                source[i] *= 1 + depth * std::sin(2 * make::pi * beat * static_cast<double>(i) / rate);
        } else if (kind == ProbeKind::creak) {
            source = make::creak_source(n, rate, draw(18, 65), random);
        } else {
            bool const spoken = kind == ProbeKind::spoken;
            source = make::voiced_source(n, rate, fo, draw(0.5, 0.7), draw(1500, 4000), spoken ? 0.01 : 0.004,
                                         spoken ? 0 : draw(0, 0.5), random);
            if (spoken) source = glide(std::move(source), draw(0.75, 0.9));
        }
        auto x = make::resonate(std::move(source), all, rate);
        if (rate > 16000) x = at_listening_rate(x, rate);
        double const size = std::sqrt(make::power(x));
        for (auto& v : x) v /= size;
        return x;
    }

    /// Played slower and slower: the pitch falls to `to` of what it was.
    static make::Samples glide(make::Samples const& x, double to) {
        make::Samples y(x.size(), 0.0);
        double at = 0;
        for (std::size_t n = 0; n < y.size(); ++n) {
            auto const i = static_cast<std::size_t>(at);
            if (i + 1 >= x.size()) break;
            double const part = at - static_cast<double>(i);
            y[n] = (1 - part) * x[i] + part * x[i + 1];
            at += 1 - (1 - to) * static_cast<double>(n) / static_cast<double>(y.size());
        }
        return y;
    }

    make::Samples noise(std::size_t n, bool fan) {
        auto x = make::white(n, random);
        double y = 0;
        if (fan)
            for (auto& v : x) v = y = 0.93 * y + v;
        double const size = std::sqrt(make::power(x));
        for (auto& v : x) v /= size;
        return x;
    }

    std::vector<float> recording(std::vector<make::Samples> const& takes, Room room) {
        make::Samples all(12000, 0.0);
        for (auto const& t : takes) {
            all.insert(all.end(), t.begin(), t.end());
            all.insert(all.end(), 8000, 0.0);
        }
        auto const hiss = noise(all.size(), room.fan);
        for (std::size_t n = 0; n < all.size(); ++n) all[n] += std::pow(10, -room.snr_db / 20) * hiss[n];
        return make::scaled(all);
    }
};

analysis::Recording heard(std::vector<float> const& samples) {
    analysis::Recording r;
    r.name = "take.wav";
    r.heard = listened(samples);
    return r;
}

analysis::MeasureRequest asked(Speaker const& s, std::string const& vowels) {
    analysis::MeasureRequest q;
    q.reference = io::built_in_voice(voice_of(s.group));
    q.vowels = parse_vowels(vowels);
    return q;
}

std::optional<analysis::Measurements> try_measure(analysis::Recording const& r,
                                                  analysis::MeasureRequest const& q) {
    try {
        return analysis::measure({r}, q);
    } catch (InputError const&) {
        return std::nullopt;
    }
}

constexpr std::array all_kinds{ProbeKind::whisper, ProbeKind::creak, ProbeKind::sung, ProbeKind::spoken};
std::vector<std::string> const listed{"i", "ɛ", "ɑ", "ɔ", "u"};
std::string const list = "i ɛ ɑ ɔ u";

std::vector<Speaker> every(std::size_t step) {
    auto const all = speakers();
    std::vector<Speaker> some;
    for (std::size_t i = 0; i < all.size(); i += step) some.push_back(all[i]);
    return some;
}

std::vector<make::Samples> said(Maker& m, Speaker const& s, std::vector<std::string> const& vowels,
                                ProbeKind kind) {
    double const singer = m.draw(-1.5, 1.5),
                 fo = kind == ProbeKind::spoken ? m.draw(95, 260) : m.draw(80, 290);
    std::vector<make::Samples> takes;
    for (auto const& v : vowels)
        takes.push_back(m.take(s, v, kind, singer, kind == ProbeKind::spoken ? fo * m.draw(0.85, 1.15) : fo));
    return takes;
}

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
