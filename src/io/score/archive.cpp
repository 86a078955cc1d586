// SPDX-License-Identifier: MIT
#include "io/score/archive.hpp"

#include "io/score/decode.hpp"
#include "io/score/outline.hpp"
#include "io/score/zip.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/input_text.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/io/score/read_score.hpp"

#include <algorithm>
#include <ctime>
#include <memory>
#include <pugixml.hpp>

namespace vowelway::io {

namespace {

constexpr std::uintmax_t largest_container = 1u << 20;

struct Discard {
    void operator()(zip_t* archive) const { zip().zip_discard(archive); }
    void operator()(zip_file_t* file) const { zip().zip_fclose(file); }
};
using Archive = std::unique_ptr<zip_t, Discard>;

[[noreturn]] void broken(std::string const& file, std::string const& detail) {
    throw InputError(worded("the compressed score cannot be unpacked: {0}", detail),
                     worded("export or download it again"), {file, 0, 0, {}});
}

std::string text_of(zip_error_t& error) {
    std::string out = zip().zip_error_strerror(&error);
    zip().zip_error_fini(&error);
    return out;
}

/// `source` must stay alive through the archive's life when something is read from it after closing.
Archive open(zip_source_t* source, int flags, std::string const& file) {
    zip_error_t error;
    zip().zip_error_init(&error);
    Archive archive(zip().zip_open_from_source(source, flags, &error));
    if (!archive) {
        zip().zip_source_free(source);
        broken(file, text_of(error));
    }
    zip().zip_error_fini(&error);
    return archive;
}

zip_source_t* source_of(std::string_view bytes, std::string const& file) {
    zip_error_t error;
    zip().zip_error_init(&error);
    auto* source = zip().zip_source_buffer_create(bytes.data(), bytes.size(), 0, &error);
    if (!source) broken(file, text_of(error));
    zip().zip_error_fini(&error);
    return source;
}

/// The unpacked member; counted while unpacking, as the size an archive states may be a lie.
std::string unpack(zip_t* archive, std::string const& member, std::uintmax_t bound, std::string const& file) {
    std::unique_ptr<zip_file_t, Discard> in(zip().zip_fopen(archive, member.c_str(), 0));
    if (!in) broken(file, "\"" + member + "\": " + zip().zip_strerror(archive));
    std::string out;
    char buffer[1 << 16];
    for (;;) {
        auto const got = zip().zip_fread(in.get(), buffer, sizeof buffer);
        if (got < 0) broken(file, worded("\"{0}\" is damaged", member));
        if (got == 0) return out;
        out.append(buffer, static_cast<std::size_t>(got));
        if (out.size() > bound)
            throw InputError(worded("\"{0}\" unpacks to more than {1}", member, size_in_words(bound)),
                             worded("check that it is a score, or export the song again"), {file, 0, 0, {}});
    }
}

struct Release {
    zip_source_t* source;
    ~Release() { zip().zip_source_free(source); }
};

/// Closes an archive written to a buffer and gives its bytes. The caller has kept the source.
std::string closed(Archive archive, zip_source_t* source, std::string const& file) {
    if (zip().zip_close(archive.get()) < 0) broken(file, zip().zip_strerror(archive.get()));
    (void)archive.release(); // closed
    if (zip().zip_source_open(source) < 0) broken(file, worded("the new archive cannot be read back"));
    zip().zip_source_seek(source, 0, SEEK_END);
    auto const size = zip().zip_source_tell(source);
    zip().zip_source_seek(source, 0, SEEK_SET);
    std::string out(static_cast<std::size_t>(std::max<zip_int64_t>(0, size)), '\0');
    auto const got = zip().zip_source_read(source, out.data(), out.size());
    zip().zip_source_close(source);
    if (got != size) broken(file, worded("the new archive cannot be read back"));
    return out;
}

std::string root_file(std::string const& container, std::string const& file) {
    std::string const where = file + "/META-INF/container.xml";
    auto const decoded = decode_xml(container, where);
    Outline const outline(decoded.text, where);
    pugi::xml_document doc;
    auto const result =
        doc.load_buffer(decoded.text.data(), decoded.text.size(), pugi::parse_default, pugi::encoding_utf8);
    if (!result)
        throw InputError(
            worded("this is not well-formed XML: {0}", result.description()),
            worded("export the score again"),
            {where,
             line_of(decoded.text, static_cast<std::size_t>(std::max<std::ptrdiff_t>(0, result.offset))),
             0,
             {}});
    for (auto const& entry : doc.child("container").child("rootfiles").children("rootfile")) {
        std::string const type = entry.attribute("media-type").value();
        if (!type.empty() && type.find("musicxml") == std::string::npos &&
            type.find("xml") == std::string::npos)
            continue;
        std::string const path = entry.attribute("full-path").value();
        if (path.empty()) continue;
        if (path.front() == '/' || path.find('\\') != std::string::npos || path == ".." ||
            path.starts_with("../") || path.find("/../") != std::string::npos || path.ends_with("/..") ||
            (path.size() > 1 && path[1] == ':'))
            throw InputError(worded("the score's path \"{0}\" points outside the archive", path),
                             worded("export the score again"), {where, 0, 0, {}});
        return path;
    }
    throw InputError(worded("no <rootfile full-path=\"...\"> names the score"),
                     worded("export the score again"), {where, 0, 0, {}});
}

} // namespace

bool looks_like_zip(std::string_view bytes) {
    return bytes.starts_with("PK\x03\x04") || bytes.starts_with("PK\x05\x06");
}

MxlScore read_mxl(std::string const& bytes, std::string const& file) {
    auto const archive = open(source_of(bytes, file), ZIP_RDONLY, file);
    if (zip().zip_name_locate(archive.get(), "META-INF/container.xml", 0) < 0)
        throw InputError(
            worded("the archive has no META-INF/container.xml, so it is not a compressed score"),
            worded("give a .mxl exported by a notation program, or unpack it and give the .xml inside"),
            {file, 0, 0, {}});
    auto const member =
        root_file(unpack(archive.get(), "META-INF/container.xml", largest_container, file), file);
    if (zip().zip_name_locate(archive.get(), member.c_str(), 0) < 0)
        throw InputError(worded("the container names \"{0}\", which is not in the archive", member),
                         worded("export the score again"), {file, 0, 0, {}});
    return {member, unpack(archive.get(), member, largest_score_text, file)};
}

std::string replace_member(std::string const& bytes, std::string const& member, std::string_view content,
                           std::string const& file) {
    auto* source = source_of(bytes, file);
    auto archive = open(source, 0, file);
    zip().zip_source_keep(source); // what is written is read from it after closing
    Release const release{source};
    auto const index = zip().zip_name_locate(archive.get(), member.c_str(), 0);
    if (index < 0) broken(file, worded("\"{0}\" is missing", member));
    zip_stat_t before;
    zip().zip_stat_init(&before);
    zip().zip_stat_index(archive.get(), static_cast<zip_uint64_t>(index), 0, &before);
    auto* fresh = zip().zip_source_buffer(archive.get(), content.data(), content.size(), 0);
    if (!fresh) broken(file, zip().zip_strerror(archive.get()));
    if (zip().zip_file_replace(archive.get(), static_cast<zip_uint64_t>(index), fresh, 0) < 0) {
        zip().zip_source_free(fresh);
        broken(file, zip().zip_strerror(archive.get()));
    }
    // The member keeps its time, so that the same input gives the same bytes whatever the clock says.
    if ((before.valid & ZIP_STAT_MTIME) != 0)
        zip().zip_file_set_mtime(archive.get(), static_cast<zip_uint64_t>(index), before.mtime, 0);
    return closed(std::move(archive), source, file);
}

std::string make_mxl(std::string_view musicxml, std::string const& file) {
    static constexpr std::string_view container =
        "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<container>\n  <rootfiles>\n    <rootfile "
        "full-path=\"score.musicxml\" "
        "media-type=\"application/vnd.recordare.musicxml+xml\"/>\n  </rootfiles>\n</container>\n";
    auto* source = source_of({}, file);
    auto archive = open(source, ZIP_CREATE | ZIP_TRUNCATE, file);
    zip().zip_source_keep(source);
    Release const release{source};
    for (auto const& [name, content] :
         {std::pair("META-INF/container.xml", container), std::pair("score.musicxml", musicxml)}) {
        auto* member = zip().zip_source_buffer(archive.get(), content.data(), content.size(), 0);
        if (!member) broken(file, zip().zip_strerror(archive.get()));
        auto const index = zip().zip_file_add(archive.get(), name, member, ZIP_FL_ENC_UTF_8);
        if (index < 0) {
            zip().zip_source_free(member);
            broken(file, zip().zip_strerror(archive.get()));
        }
        constexpr std::time_t any_day = 1'000'000'000; // no clock in the bytes
        zip().zip_file_set_mtime(archive.get(), static_cast<zip_uint64_t>(index), any_day, 0);
    }
    return closed(std::move(archive), source, file);
}

} // namespace vowelway::io
