// SPDX-License-Identifier: MIT
#include "cli/profile_ask.hpp"

#include "cli/standard_output.hpp"
#include "core/text.hpp"
#include "core/visible.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/io/profile/built_in.hpp"
#include "vowelway/io/profile/read_profile.hpp"

#include <fmt/format.h>

#include <cmath>
#include <functional>

namespace vowelway::cli {

namespace {

using Check = std::function<void(std::string const&)>;

std::string answer_to(std::istream& in, std::string const& question, std::string const& standard,
                      Check const& check) {
    for (;;) {
        say(question + (standard.empty() ? "" : " [" + standard + "]") + "\n  > ");
        std::string line;
        if (!std::getline(in, line))
            throw InputError(
                worded("the answers end before the profile is complete"),
                worded("nothing was written; answer each question, or fill in the template instead"));
        auto answer = std::string(text::trim(line));
        if (answer.empty()) answer = standard;
        try {
            if (visible(answer) != answer)
                throw InputError(worded("the answer has signs that cannot be shown"),
                                 worded("type letters and numbers"));
            check(answer);
            return answer;
        } catch (InputError const& wrong) {
            say(wrong.wrong() + "\n  " + wrong.remedy() + "\n");
        }
    }
}

/// Reads the lines as those of a profile.
void must_read(std::string const& lines) {
    io::parse_profile("vowelway: 1\n" + lines +
                          (lines.find("vowels:") == std::string::npos
                               ? "vowels:\n  a: {fR1: 700 Hz ± 30, fR2: 1200 Hz ± 80}\n"
                               : ""),
                      "");
}

std::string asked_source(std::istream& in) {
    auto const as_line = [](std::string const& method, std::string const& date) {
        return fmt::format("source: {{method: {}{}}}\n", method, date.empty() ? "" : ", date: " + date);
    };
    auto const method =
        answer_to(in, worded("How were the resonances found: whisper, creak, sung, or typed (by ear)?"),
                  "typed", [&](std::string const& text) { must_read(as_line(text, "")); });
    auto const date =
        answer_to(in, worded("On which day, such as 2026-10-03? Nothing where it is not known."), "",
                  [&](std::string const& text) { must_read(as_line(method, text)); });
    return as_line(method, date);
}

std::string asked_vowel(std::istream& in, Singer const& average, Vowel const& vowel,
                        std::string const& above) {
    auto const* known = average.find(vowel);
    auto const line = [&](std::string const& r1, std::string const& r2) {
        return fmt::format("  {}: {{fR1: {}, fR2: {}}}\n", vowel.ipa(), r1, r2);
    };
    auto const example = [&](ResonanceNumber k, double otherwise) {
        auto const r = known ? known->get(k) : std::nullopt;
        return fmt::format("{} Hz ± {}", std::lround((r ? in_hertz(r->centre) : otherwise) / 10) * 10,
                           k.number == 1 ? 30 : 80);
    };
    auto const ask = [&](int k, Check const& check) {
        return answer_to(
            in,
            worded("fR{0} of /{1}/, in Hz or as a pitch, and how sure? An average has {2}; nothing leaves "
                   "the vowel out.",
                   k, vowel.ipa(), example({k}, k == 1 ? 500 : 1500)),
            "", check);
    };
    auto const r1 = ask(1, [&](std::string const& text) {
        if (!text.empty()) must_read(above + line(text, "4000 Hz ± 80"));
    });
    if (r1.empty()) return "";
    auto const r2 = ask(2, [&](std::string const& text) {
        if (!text.empty()) must_read(above + line(r1, text));
    });
    return r2.empty() ? "" : line(r1, r2);
}

} // namespace

std::string quoted(std::string const& text) {
    std::string out = "\"";
    for (char const c : text) out += c == '"' || c == '\\' ? std::string("\\") + c : std::string(1, c);
    return out + "\"";
}

std::string asked_profile(std::istream& in, std::string const& name, VoiceType voice) {
    auto const average = io::built_in_voice(voice);
    auto out = fmt::format(
        "singer: {}\nvoice: {}\n",
        quoted(answer_to(in, worded("What is the singer's name?"), name,
                         [](std::string const& text) { must_read("singer: " + quoted(text) + "\n"); })),
        to_string(voice));
    auto const add = [&](std::string const& question, std::string const& key, std::string const& standard) {
        auto const line = [&](std::string const& answer) { return key + ": " + answer + "\n"; };
        out +=
            line(answer_to(in, question, standard, [&](std::string const& text) { must_read(line(text)); }));
    };
    add(worded("From which note to which is singing comfortable?"), "range",
        average.range ? average.range->str() : "C3..A4");
    add(worded("How is your A4 tuned?"), "a4", "440 Hz");
    out += asked_source(in);
    auto const vowels =
        answer_to(in, worded("Which vowels do you know the resonances of, in IPA or X-SAMPA?"), "i e a o u",
                  [](std::string const& text) { parse_vowels(text); });
    say(worded("To hear them: a soft whisper or a relaxed creak of a few seconds; never when hoarse; stop if "
               "it tires "
               "you.") +
        "\n");
    std::string lines;
    for (bool again = false; lines.empty(); again = true) { // a profile needs one
        if (again) say(worded("add at least one vowel with fR1 and fR2") + "\n");
        for (auto const& vowel : parse_vowels(vowels))
            lines += asked_vowel(in, average, vowel, out + "vowels:\n" + lines);
    }
    return "vowelway: 1\n" + out + "vowels:\n" + lines;
}

} // namespace vowelway::cli
