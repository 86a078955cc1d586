// SPDX-License-Identifier: MIT
// What goes wrong with the user's input, said so that it can be mended; and what was assumed.
#pragma once

#include <exception>
#include <string>
#include <string_view>
#include <vector>

namespace vowelway {

/// Where in the input: any part may be missing (empty, or 0). Lines and columns count from 1.
struct Place {
    std::string file;
    int line = 0;
    int column = 0;
    std::string musical; ///< "bar 12, beat 3", "note 4 of the passage"

    /// "song.musicxml:12:3, bar 4"; empty when nothing is known.
    std::string str() const;
};

/// Bad input: what is wrong, where, and how to mend it. The program ends with exit code 3.
/// Core functions that parse a text throw it without a file; readers add the place with at().
class InputError : public std::exception {
  public:
    InputError(std::string wrong, std::string remedy, Place place = {});

    std::string const& wrong() const { return wrong_; }
    std::string const& remedy() const { return remedy_; }
    Place const& place() const { return place_; }
    std::vector<std::string> const& context() const { return context_; }

    /// Fills in the parts of the place that are still unknown.
    InputError& at(Place const& place);
    /// Adds a line such as `while reading the profile "mezzo"`.
    InputError& during(std::string context);

    /// The whole message: "place: what is wrong", the remedy on the next line, then the context.
    char const* what() const noexcept override { return message_.c_str(); }

  private:
    void compose();

    std::string wrong_, remedy_;
    Place place_;
    std::vector<std::string> context_;
    std::string message_;
};

/// Something the user should know though the work went on: an assumption, a guess, a caution.
struct Remark {
    enum class Kind {
        assumed, ///< a choice made for the user (part, verse, language, default deviation)
        guessed, ///< a value made up from less than certain knowledge (vowel of an unknown word)
        caution  ///< health, or a result that means less than it seems
    };
    Kind kind = Kind::assumed;
    std::string text; ///< a sentence without final line break

    friend bool operator==(Remark const&, Remark const&) = default;
};
using Remarks = std::vector<Remark>;

/// "assumed", "guessed", "caution".
std::string_view to_string(Remark::Kind kind);

} // namespace vowelway
