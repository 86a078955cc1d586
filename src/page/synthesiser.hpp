// SPDX-License-Identifier: MIT
// What the page's synthesiser was asked and could not answer.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace vowelway::page {

/// While one lives, words without an answer are no error: they are collected, and "a" stands in, so that all
/// of them are found in one pass. The last one made collects.
class Unanswered {
  public:
    Unanswered();
    ~Unanswered();
    Unanswered(Unanswered const&) = delete;
    Unanswered& operator=(Unanswered const&) = delete;

    std::vector<std::string> const& asked() const { return asked_; }
    void add(std::string_view word) { asked_.emplace_back(word); }

    /// The one that collects now, or null.
    static Unanswered* current();

  private:
    std::vector<std::string> asked_;
    Unanswered* outer_;
};

} // namespace vowelway::page
