// SPDX-License-Identifier: MIT
#include "vowelway/analysis/excitation.hpp"

#include <algorithm>
#include <cmath>

namespace vowelway::analysis {
namespace {

constexpr double sure = 0.8;   // probability of another kind above which a take disagrees
constexpr double least = 1e-4; // no single take is believed more

ByKind normalised(ByKind p) {
    double sum = 0;
    for (double v : p) sum += v;
    for (auto& v : p) v /= sum;
    return p;
}

ByKind of_take(Excitation const& e) {
    ByKind p{};
    for (std::size_t k = 0; k < p.size(); ++k) p[k] = std::max(std::exp(e.evidence[k]), least);
    return normalised(p);
}

/// Share of takes of kind `k` in a recording of kind `of`.
double share(std::size_t k, std::size_t of) {
    return k == of ? 1 - odd_take : odd_take / (std::tuple_size_v<ByKind> - 1);
}

} // namespace

bool same_source(ProbeKind a, ProbeKind b) { return a == b || (is_voiced(a) && is_voiced(b)); }

KindOfRecording decide_kind(std::vector<Excitation*> const& takes) {
    KindOfRecording decided;
    ByKind ln{};
    for (auto const* t : takes) {
        auto const p = of_take(*t);
        for (std::size_t kind = 0; kind < ln.size(); ++kind) {
            double sum = 0;
            for (std::size_t k = 0; k < p.size(); ++k) sum += share(k, kind) * p[k];
            ln[kind] += std::log(sum);
        }
    }
    double const most = *std::max_element(ln.begin(), ln.end());
    for (std::size_t k = 0; k < ln.size(); ++k) decided.probability[k] = std::exp(ln[k] - most);
    decided.probability = normalised(decided.probability);
    auto const best = std::max_element(decided.probability.begin(), decided.probability.end());
    decided.kind = static_cast<ProbeKind>(best - decided.probability.begin());

    for (std::size_t i = 0; i < takes.size(); ++i) {
        auto p = of_take(*takes[i]);
        for (std::size_t k = 0; k < p.size(); ++k) p[k] *= share(k, index(decided.kind));
        p = normalised(p);
        auto const own = std::max_element(p.begin(), p.end());
        auto const kind = static_cast<ProbeKind>(own - p.begin());
        bool const disagrees = !same_source(kind, decided.kind) && *own > sure;
        if (disagrees) decided.disagreeing.push_back(i);
        take_kind(*takes[i], disagrees ? kind : decided.kind);
        takes[i]->probability =
            disagrees ? *own : std::min(p[index(decided.kind)], decided.probability[index(decided.kind)]);
    }
    return decided;
}

} // namespace vowelway::analysis
