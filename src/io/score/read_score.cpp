// SPDX-License-Identifier: MIT
#include "vowelway/io/score/read_score.hpp"

#include "io/score/archive.hpp"
#include "io/score/decode.hpp"
#include "io/score/other_formats.hpp"
#include "io/score/passage_text.hpp"
#include "io/score/score_reading.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/input_text.hpp"
#include "vowelway/core/wording.hpp"

#include <cmath>
#include <filesystem>
#include <initializer_list>

namespace vowelway::io {

namespace {

bool has_extension(std::string const& name, std::initializer_list<char const*> extensions) {
    auto extension = std::filesystem::path(name).extension().string();
    for (char& c : extension) c = static_cast<char>(c | 0x20);
    for (auto const* wanted : extensions)
        if (extension == wanted) return true;
    return false;
}

} // namespace

Passage parse_score(std::string bytes, std::string const& name, ScoreOptions const& options) {
    double const asked = options.transpose_semitones.value_or(0);
    if (!std::isfinite(asked) || std::abs(asked) > 48)
        throw InputError(worded("a transposition of more than four octaves is not possible"),
                         worded("give --transpose -48 to 48"));
    if (has_extension(name, {".yaml", ".yml"})) return read_passage_yaml(bytes, name, options);
    require_size(bytes.size(), largest_score_file, name);
    if (bytes.empty())
        throw InputError(worded("the file is empty"), worded("export or save it again"), {name, 0, 0, {}});
    if (auto const other = other_format(bytes))
        throw InputError(other->what, other->remedy, {name, looks_like_xml(bytes) ? 1 : 0, 0, {}});
    if (looks_like_zip(bytes) || looks_like_xml(bytes)) {
        auto score = unpack_score(std::move(bytes), name);
        XmlSource const source(std::move(score.xml), score.shown);
        return read_music(source, options).passage;
    }
    if (has_extension(name, {".musicxml", ".xml", ".mxl"}))
        throw InputError(has_extension(name, {".mxl"})
                             ? worded("this is not a compressed score: it is not a zip archive")
                             : worded("this is not XML: it does not begin with <"),
                         worded("export or download it again as MusicXML"), {name, 1, 0, {}});
    if (auto const own = own_format(bytes)) throw InputError(own->what, own->remedy, {name, 0, 0, {}});
    if (bytes.starts_with("vowelway:")) return read_passage_yaml(bytes, name, options);
    if (has_extension(name, {".txt", ".song"}) || has_pitches(std::string_view(bytes).substr(0, 100'000)))
        return read_passage_text(bytes, name, options);
    throw InputError(
        worded("this is neither MusicXML nor a YAML passage"),
        worded("give a .musicxml, .xml or .mxl score, a .yaml passage, or a text of syllables and pitches"),
        {name, 0, 0, {}});
}

} // namespace vowelway::io
