// SPDX-License-Identifier: MIT
#include "analysis/assign_vowels.hpp"

#include "analysis/decibels.hpp"
#include "analysis/median.hpp"
#include "vowelway/analysis/steady.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <cmath>
#include <cstdio>

namespace vowelway::analysis {
namespace {

constexpr double much_shorter = 0.4; // of the usual length: not one of the vowels
constexpr double much_softer = 15;   // dB
constexpr std::size_t most_takes = 500;

Place in(Recording const& r) { return Place{r.name, 0, 0, {}}; }

std::string times(std::vector<Sound> const& sounds) {
    std::string text;
    std::size_t const shown = std::min<std::size_t>(sounds.size(), 12);
    for (std::size_t i = 0; i < shown; ++i) {
        char one[64];
        double const start = in_seconds(sounds[i].start);
        std::snprintf(one, sizeof one, "%s%.1f-%.1f s", i ? ", " : "", start,
                      start + in_seconds(sounds[i].length()));
        text += one;
    }
    return text + (shown < sounds.size() ? ", .." : "");
}

double level(Sound const& s) {
    double sum = 0;
    for (float x : s.samples) sum += static_cast<double>(x) * static_cast<double>(x);
    return decibels(sum / static_cast<double>(std::max<std::size_t>(s.samples.size(), 1)), floor_of_band);
}

template <class Get> double median_of_sounds(std::vector<Sound> const& sounds, Get get) {
    std::vector<double> values;
    for (auto const& s : sounds) values.push_back(get(s));
    return upper_median(std::move(values));
}

/// The stretches that are neither much shorter nor much softer than the others.
std::vector<std::size_t> likely(std::vector<Sound> const& sounds) {
    auto const length_of = [](Sound const& s) { return in_seconds(s.length()); };
    double const length = median_of_sounds(sounds, length_of), loudness = median_of_sounds(sounds, level);
    std::vector<std::size_t> kept;
    for (std::size_t i = 0; i < sounds.size(); ++i)
        if (length_of(sounds[i]) > much_shorter * length && level(sounds[i]) > loudness - much_softer)
            kept.push_back(i);
    return kept;
}

TimeSpan span_of(Sound const& s) { return {s.start, s.start + s.length()}; }

/// The stretches of one recording cut and labelled: the list, `repeat` times.
class ListMatcher {
  public:
    ListMatcher(Recording const& recording, std::size_t index, std::vector<Vowel> const& vowels,
                Remarks& remarks)
        : recording_(recording), index_(index), vowels_(vowels), remarks_(remarks) {
        for (std::size_t i = 0; i < recording.heard.stretches.size(); ++i) used_.push_back(i);
    }

    std::vector<Assigned> match(int repeat) {
        auto const listed = vowels_.size();
        if (repeat > 0)
            return match_to(listed * static_cast<std::size_t>(repeat), static_cast<std::size_t>(repeat));
        if (used_.size() % listed != 0 && used_.size() > listed) leave_out_unlikely();
        auto const found = used_.size();
        if (found == 1 || found == listed) return match_to(listed, 1);
        if (found % listed == 0) {
            remarks_.push_back(
                {Remark::Kind::assumed, worded("{0}: {1} sounds are taken as the list said {2} times",
                                               recording_.name, found, found / listed)});
            return match_to(found, found / listed);
        }
        disagree(listed);
    }

  private:
    std::vector<Assigned> match_to(std::size_t count, std::size_t repeat) {
        if (used_.size() > count) leave_out_unlikely();
        if (used_.size() > count) disagree(count);
        auto const& stretches = recording_.heard.stretches;
        std::vector<Segment> segments;
        if (used_.size() == count) {
            for (std::size_t i = 0; i < count; ++i) segments.push_back({i, span_of(stretches[used_[i]])});
        } else if (used_.size() == repeat) { // a breath for each time through the list
            for (std::size_t i = 0; i < used_.size(); ++i) {
                auto cut = cut_into({stretches[used_[i]]}, vowels_.size());
                if (!cut) disagree(count);
                for (auto& s : *cut) s.sound = i;
                segments.insert(segments.end(), cut->begin(), cut->end());
            }
        } else {
            std::vector<Sound> sounds;
            for (auto i : used_) sounds.push_back(stretches[i]);
            auto cut = cut_into(sounds, count);
            if (!cut) disagree(count);
            segments = std::move(*cut);
        }
        std::vector<Assigned> assigned;
        for (std::size_t i = 0; i < segments.size(); ++i)
            assigned.push_back(
                {index_, used_[segments[i].sound], segments[i].span, vowels_[i % vowels_.size()]});
        return assigned;
    }

    void leave_out_unlikely() {
        auto kept = likely(recording_.heard.stretches);
        if (kept.size() < used_.size())
            remarks_.push_back({Remark::Kind::assumed,
                                worded("{0}: {1} sounds much shorter or softer than the others are left out",
                                       recording_.name, used_.size() - kept.size())});
        used_ = std::move(kept);
    }

    [[noreturn]] void disagree(std::size_t count) const {
        throw InputError(worded("has {0} sounds, but {1} vowels are listed: {2}",
                                recording_.heard.stretches.size(), count, times(recording_.heard.stretches)),
                         worded("give --repeat if the list is said more than once, leave pauses between the "
                                "vowels, or give the "
                                "times in a cue file (--cues: start, end, vowel)"),
                         in(recording_));
    }

    Recording const& recording_;
    std::size_t index_;
    std::vector<Vowel> const& vowels_;
    Remarks& remarks_;
    std::vector<std::size_t> used_;
};

} // namespace

std::vector<Assigned> assign_vowels(std::vector<Recording> const& recordings, MeasureRequest const& request,
                                    Remarks& remarks) {
    std::vector<Assigned> all;
    auto const& vowels = request.vowels;
    bool const file_each =
        vowels.size() == 1 || (recordings.size() == vowels.size() && recordings.size() > 1);
    for (std::size_t r = 0; r < recordings.size(); ++r) {
        auto const& heard = recordings[r].heard;
        if (!recordings[r].cued.empty()) {
            for (std::size_t i = 0; i < std::min(recordings[r].cued.size(), heard.stretches.size()); ++i)
                all.push_back({r, i, span_of(heard.stretches[i]), recordings[r].cued[i]});
            continue;
        }
        if (vowels.empty())
            throw InputError(worded("no vowels are listed"),
                             worded("list the vowels that were said, such as --vowels \"i e a o u\""),
                             in(recordings[r]));
        if (file_each) {
            auto const& vowel = vowels.size() == 1 ? vowels[0] : vowels[r];
            auto kept = likely(heard.stretches);
            for (auto i : kept) all.push_back({r, i, span_of(heard.stretches[i]), vowel});
            continue;
        }
        auto matched = ListMatcher(recordings[r], r, vowels, remarks).match(request.repeat);
        all.insert(all.end(), matched.begin(), matched.end());
    }
    if (all.size() > most_takes)
        throw InputError(worded("{0} takes at once are too many (the limit is {1})", all.size(), most_takes),
                         worded("measure fewer recordings at a time"));
    return all;
}

} // namespace vowelway::analysis
