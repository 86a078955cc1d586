// SPDX-License-Identifier: MIT
#include "vowelway/io/score/read_score.hpp"

#include "io/score/archive.hpp"
#include "io/score/bytes.hpp"
#include "io/score/decode.hpp"
#include "io/score/score_reading.hpp"
#include "io/yaml/tree.hpp"

#include <cmath>

namespace vowelway::io {

namespace {

bool has_extension(std::filesystem::path const& file, std::initializer_list<char const*> extensions) {
    auto extension = file.extension().string();
    for (char& c : extension) c = static_cast<char>(c | 0x20);
    for (auto const* wanted : extensions)
        if (extension == wanted) return true;
    return false;
}

} // namespace

Passage read_score(std::filesystem::path const& file, ScoreOptions const& options) {
    if (!std::isfinite(options.transpose_semitones) || std::abs(options.transpose_semitones) > 48)
        throw InputError("a transposition of more than four octaves is not possible",
                         "give --transpose -48 to 48");
    if (has_extension(file, {".yaml", ".yml"}))
        return read_passage_yaml(yaml::read_text(file), file.string(), options);
    auto bytes = read_bytes(file, largest_score_file);
    if (looks_like_zip(bytes) || looks_like_xml(bytes)) {
        auto score = unpack_score(std::move(bytes), file);
        XmlSource const source(std::move(score.xml), score.shown);
        return read_music(source, options).passage;
    }
    if (has_extension(file, {".musicxml", ".xml", ".mxl"}))
        throw InputError(has_extension(file, {".mxl"})
                             ? "this is not a compressed score: it is not a zip archive"
                             : "this is not XML: it does not begin with <",
                         "export or download it again as MusicXML", {file.string(), 1, 0, {}});
    throw InputError("this is neither MusicXML nor a YAML passage",
                     "give a .musicxml, .xml or .mxl score, or a .yaml passage", {file.string(), 0, 0, {}});
}

} // namespace vowelway::io
