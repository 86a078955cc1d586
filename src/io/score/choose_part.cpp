// SPDX-License-Identifier: MIT
#include "core/text.hpp"
#include "io/score/voice_line.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <cctype>

namespace vowelway::io {

namespace {

std::string lower(std::string_view text) {
    std::string out(text);
    std::transform(out.begin(), out.end(), out.begin(),
                   [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return out;
}

std::string shown(PartInfo const& part, std::size_t index) {
    return std::to_string(index + 1) + (part.name.empty() ? "" : " \"" + part.name + "\"");
}

/// The index of the part a wish names: number, id, name, then the beginning of a single name.
std::optional<std::size_t> find(std::vector<PartInfo> const& parts, std::string_view wish) {
    auto rest = wish;
    bool const whole = wish.find('.') == std::string_view::npos; // "1.2" is a voice of part 1
    if (auto const number = text::eat_number(rest);
        whole && number && rest.empty() && *number >= 1 && *number <= static_cast<double>(parts.size()))
        return static_cast<std::size_t>(*number) - 1;
    auto const name = lower(wish);
    std::optional<std::size_t> found;
    for (std::size_t i = 0; i < parts.size(); ++i)
        if (parts[i].id == wish || lower(parts[i].name) == name) return i;
    for (std::size_t i = 0; i < parts.size(); ++i)
        if (!name.empty() && lower(parts[i].name).starts_with(name)) {
            if (found) return std::nullopt;
            found = i;
        }
    return found;
}

std::size_t words_in(PartInfo const& part) {
    std::size_t count = 0;
    for (auto const& measure : part.measures)
        for (auto const& note : measure.music.children("note"))
            for (auto const& lyric : note.children("lyric"))
                if (lyric.attribute("name").value() != mark_name && lyric.child("text")) {
                    ++count;
                    break;
                }
    return count;
}

bool has_pitches(PartInfo const& part) {
    for (auto const& measure : part.measures)
        for (auto const& note : measure.music.children("note"))
            if (note.child("pitch")) return true;
    return false;
}

} // namespace

PartInfo choose_part(XmlSource const& source, std::vector<PartInfo> const& parts, ScoreOptions const& options,
                     int& voice, Remarks& remarks) {
    voice = 0;
    if (parts.empty())
        throw InputError(worded("the score has no parts"), worded("export the score again"),
                         {source.file(), 0, 0, {}});
    if (!options.part.empty()) {
        std::string_view wish = text::trim(options.part);
        auto found = find(parts, wish);
        if (auto const dot = wish.rfind('.'); !found && dot != std::string_view::npos) {
            auto tail = wish.substr(dot + 1);
            auto const number = text::eat_number(tail);
            if (number && tail.empty() && *number >= 1 && *number < 100) {
                found = find(parts, wish.substr(0, dot));
                voice = static_cast<int>(*number);
            }
        }
        if (found) return parts[*found];
        std::string list;
        for (std::size_t i = 0; i < parts.size() && i < 12; ++i)
            list += (i > 0 ? ", " : "") + shown(parts[i], i);
        throw InputError(worded("the score has no part \"{0}\"", options.part),
                         worded("its parts are {0}; name one or give its number", list),
                         {source.file(), 0, 0, {}});
    }
    std::size_t best = 0, most = 0, with_words = 0;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        auto const words = words_in(parts[i]);
        with_words += words > 0 ? 1 : 0;
        if (words > most) {
            most = words;
            best = i;
        }
    }
    if (most == 0) {
        auto const first = [&](auto const& fits) {
            auto const found = std::find_if(parts.begin(), parts.end(), fits);
            return found == parts.end() ? std::nullopt
                                        : std::optional(static_cast<std::size_t>(found - parts.begin()));
        };
        auto choice = first([](PartInfo const& p) { return p.vocal && has_pitches(p); });
        if (!choice) choice = first([](PartInfo const& p) { return has_pitches(p); });
        best = choice.value_or(0);
        if (parts.size() > 1)
            remarks.push_back({Remark::Kind::assumed,
                               worded("no part has words; part {0} is taken (--part chooses another)",
                                      shown(parts[best], best))});
    } else if (with_words > 1) {
        remarks.push_back(
            {Remark::Kind::assumed,
             worded("{0} parts have words; part {1}, which has the most, is taken (--part chooses another)",
                    with_words, shown(parts[best], best))});
    }
    return parts[best];
}

} // namespace vowelway::io
