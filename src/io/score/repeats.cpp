// SPDX-License-Identifier: MIT
#include "io/score/repeats.hpp"

#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/io/score/read_score.hpp"

#include <algorithm>
#include <optional>
#include <set>

namespace vowelway::io {

namespace {

class Walker {
  public:
    Walker(std::vector<BarSigns> const& signs, std::vector<int> const& verses, int whole)
        : signs_(signs), verses_(verses), whole_(whole), reached_(signs.size(), 0) {}

    std::vector<SungBar> walk() {
        for (round_ = 1; round_ <= std::max(1, whole_); ++round_) {
            jumped_ = false;
            start_ = 0;
            pass_ = 1;
            through();
            if (turns_ >= whole_) break; // verses that had their turn in repeats
        }
        return std::move(out_);
    }

  private:
    void through() {
        for (std::size_t i = 0; i < signs_.size();) {
            auto const& here = signs_[i];
            if (here.repeat_begins && i != start_) {
                start_ = i;
                pass_ = 1;
            }
            if (!here.ending.empty() && !takes(i)) {
                i = ending_end(i) + 1;
                continue;
            }
            sing(i);
            auto const next = after(i);
            if (!next) return;
            i = *next;
        }
    }

    int section() const { return std::max(pass_, round_); }

    void sing(std::size_t bar) {
        if (out_.size() >= static_cast<std::size_t>(most_score_bars))
            throw InputError(worded("with its repeats the score has more than {0} bars", most_score_bars),
                             worded("sing one verse at a time (--verse 1)"));
        out_.push_back({bar, ++reached_[bar], section()});
        if (verses_[bar] > 1) turns_ = std::max(turns_, section());
    }

    /// Where it goes on after a bar; nothing at the end.
    std::optional<std::size_t> after(std::size_t i) {
        auto const& here = signs_[i];
        if (jumped_ && here.fine) return std::nullopt;
        if (jumped_ && here.to_coda)
            if (auto const coda = find(&BarSigns::coda)) return section_from(*coda);
        if (here.repeat_ends && (!jumped_ || here.also_after_jump)) {
            if (pass_ < times(i)) {
                ++pass_;
                return start_;
            }
            done_here_ = start_;
            section_from(i + 1);
        } else if (here.ending_ends && !continues_as_ending(i)) {
            section_from(i + 1);
        }
        bool const jump = here.da_capo || here.dal_segno;
        if (jump && !jumped_) {
            auto const to = here.dal_segno ? find(&BarSigns::segno).value_or(0) : 0;
            // A repeat sign and a jump to the same place are one instruction.
            if (!(here.repeat_ends && done_here_ == to) && to <= i) {
                jumped_ = true;
                return section_from(to);
            }
        }
        return i + 1 < signs_.size() ? std::optional(i + 1) : std::nullopt;
    }

    std::size_t section_from(std::size_t bar) {
        start_ = bar;
        pass_ = 1;
        return bar;
    }

    std::optional<std::size_t> find(bool BarSigns::*sign) const {
        for (std::size_t i = 0; i < signs_.size(); ++i)
            if (signs_[i].*sign) return i;
        return std::nullopt;
    }

    std::size_t ending_end(std::size_t from) const {
        for (auto i = from; i < signs_.size(); ++i)
            if (signs_[i].ending_ends || (i > from && !signs_[i].ending.empty()))
                return signs_[i].ending_ends ? i : i - 1;
        return signs_.size() - 1;
    }

    bool continues_as_ending(std::size_t bar) const {
        return bar + 1 < signs_.size() && !signs_[bar + 1].ending.empty();
    }

    /// The endings beside each other.
    struct Group {
        int last = 0;         ///< the highest number of a pass
        bool repeats = false; ///< one leads back
        std::set<int> passes; ///< that they name
    };
    Group group_of(std::size_t bar) const {
        auto first = bar;
        while (first > start_ && !(signs_[first].ending_ends && first != bar && !continues_as_ending(first)))
            --first;
        Group out;
        for (auto i = first; i < signs_.size(); ++i) {
            for (int n : signs_[i].ending) {
                out.last = std::max(out.last, n);
                out.passes.insert(n);
            }
            out.repeats |= out.last > 0 && signs_[i].repeat_ends;
            if (out.last > 0 && i >= bar && signs_[i].ending_ends && !continues_as_ending(i)) break;
        }
        return out;
    }

    bool takes(std::size_t bar) const {
        auto const& numbers = signs_[bar].ending;
        auto const [last, repeats, passes] = group_of(bar);
        int wanted = jumped_ ? last : std::min(repeats ? pass_ : section(), last);
        while (wanted > 1 && passes.count(wanted) == 0) --wanted; // "1 and 2" may be written as 1 alone
        return numbers.empty() || std::find(numbers.begin(), numbers.end(), wanted) != numbers.end();
    }

    bool within_ending(std::size_t bar) const {
        for (auto i = bar + 1; i-- > start_;) {
            if (!signs_[i].ending.empty()) return true;
            if (i < bar && signs_[i].ending_ends) return false;
        }
        return false;
    }

    int times(std::size_t bar) const {
        if (signs_[bar].times > 0) return signs_[bar].times;
        if (within_ending(bar)) return group_of(bar).last;
        int lines = 0;
        for (auto i = start_; i <= bar; ++i) lines = std::max(lines, verses_[i]);
        return std::max(2, lines);
    }

    std::vector<BarSigns> const& signs_;
    std::vector<int> const& verses_;
    int whole_;
    std::vector<int> reached_;
    std::vector<SungBar> out_;
    std::size_t start_ = 0, done_here_ = 0; ///< where the repeated section begins; that of the last one done
    int pass_ = 1, round_ = 1, turns_ = 1;
    bool jumped_ = false;
};

} // namespace

std::vector<SungBar> order_of(std::vector<BarSigns> const& signs, std::vector<int> const& verses, int whole) {
    return Walker(signs, verses, whole).walk();
}

std::string name_of_pass(std::string const& bar, int pass) {
    if (pass < 2) return bar;
    bool const teen = pass % 100 / 10 == 1;
    auto const* ending = teen             ? "th"
                         : pass % 10 == 1 ? "st"
                         : pass % 10 == 2 ? "nd"
                         : pass % 10 == 3 ? "rd"
                                          : "th";
    auto const time = std::to_string(pass) + ending + " time";
    return bar.empty() ? time : bar + " (" + time + ")";
}

} // namespace vowelway::io
