// SPDX-License-Identifier: MIT
// The letters of a word that belong to no nucleus, as they are read into the consonants between the nuclei.
// Private to the layer.
#pragma once

#include "diction/ipa/consonants.hpp"
#include "diction/syllables/grouping.hpp"

#include <algorithm>
#include <cstddef>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace vowelway::diction {

/// A way of reading derives from it, and says what a letter means.
class LettersBetween {
  protected:
    explicit LettersBetween(Reading const& reading)
        : word_(reading.letters), spelled_(in_ascii(word_)), owner_(word_.size(), none),
          out_(reading.sounds.nuclei.size() + 1) {
        auto const& nuclei = reading.sounds.nuclei;
        for (std::size_t k = 0; k < nuclei.size(); ++k) {
            take(nuclei[k].held.letter, k);
            for (auto const& sound : nuclei[k].before) take(sound.letter, k);
            for (auto const& sound : nuclei[k].after) take(sound.letter, k);
        }
    }

    /// `step(i)` says what letter i means and returns the next to read.
    template <class Step> Clusters read_with(Step const& step) {
        std::size_t cluster = 0;
        for (std::size_t i = 0; i < word_.size();) {
            if (owner_[i] != none) {
                cluster = owner_[i] + 1;
                ++i;
                continue;
            }
            to_ = &out_[std::min(cluster, out_.size() - 1)];
            i = step(i);
        }
        return std::move(out_);
    }

    char32_t at(std::size_t i) const { return i < word_.size() ? word_[i].base : U'\0'; }
    bool vowel(std::size_t i) const { return i < word_.size() && is_vowel_letter(at(i)); }
    std::size_t say(std::string_view ipa, std::size_t next) {
        to_->emplace_back(ipa);
        return next;
    }
    bool one_nucleus_at_most() const { return out_.size() <= 2; }

    Word const& word_;
    std::string spelled_; ///< as in_ascii

  private:
    static constexpr std::size_t none = ~std::size_t(0);
    void take(std::size_t letter, std::size_t nucleus) {
        if (letter < owner_.size()) owner_[letter] = nucleus;
    }

    std::vector<std::size_t> owner_; ///< of each letter the nucleus it writes
    Clusters out_;
    std::vector<std::string>* to_ = nullptr;
};

} // namespace vowelway::diction
