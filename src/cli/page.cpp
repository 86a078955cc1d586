// SPDX-License-Identifier: MIT
// vowelway page: the page with a song and a singer inside, for a teacher to send.
#include "cli/command.hpp"
#include "cli/commands.hpp"
#include "cli/outputs.hpp"
#include "cli/page_folder.hpp"
#include "cli/plan_request.hpp"
#include "cli/remarks.hpp"
#include "cli/standard_output.hpp"
#include "diction/synthesis/recording.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/files/read.hpp"
#include "vowelway/files/write.hpp"
#include "vowelway/io/profile/built_in.hpp"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <cstdint>
#include <filesystem>
#include <memory>

namespace vowelway::cli {

namespace {

namespace fs = std::filesystem;
using Json = nlohmann::json;

struct Options {
    PlanOptions plan;
    std::string output, folder;
    bool overwrite = false;
};

constexpr std::uintmax_t largest_page = std::uintmax_t{32} << 20,
                         largest_yaml = std::uintmax_t{1} << 20; // bytes
constexpr std::string_view place = R"(<script type="application/json" id="lesson"></script>)";

/// RFC 4648, section 4.
std::string base64(std::string_view bytes) {
    constexpr std::string_view digits = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
    std::string out;
    for (std::size_t i = 0; i < bytes.size(); i += 3) {
        std::size_t const here = std::min<std::size_t>(3, bytes.size() - i);
        std::uint32_t group = 0;
        for (std::size_t k = 0; k < 3; ++k)
            group = group << 8U | (k < here ? static_cast<unsigned char>(bytes[i + k]) : 0U);
        for (std::size_t k = 0; k < 4; ++k) out += k <= here ? digits[group >> (18U - 6U * k) & 63U] : '=';
    }
    return out;
}

Json singer_of(std::string const& singer) {
    if (auto const voice = io::named_voice(singer))
        return {{"voice", singer.substr(0, singer.find(' ') + 1) + std::string(to_string(voice->voice))}};
    return {{"profile", files::read_text(singer, largest_yaml)},
            {"file", fs::path(singer).filename().string()}};
}

Json settings_of(PlanOptions const& o, Tuning const& tuning) {
    Json out{{"part", o.part}, {"verse", o.verse}, {"language", o.language}};
    out["technique"] = o.technique;
    out["draws"] = o.draws;
    if (!o.a4.empty()) out["a4_hz"] = in_hertz(tuning.a4);
    out["transpose"] = o.transpose ? Json(*o.transpose) : Json("");
    if (!o.words.empty()) out["words_text"] = files::read_text(o.words, largest_yaml);
    return out;
}

/// Everything the page begins with. What the synthesiser says of the words goes along: a page has none.
Json lesson_of(PlanOptions const& o) {
    diction::Said said;
    Tuning tuning;
    {
        diction::Recording const recording(said);
        auto const passage = read_request(o).request.passage;
        print_remarks(passage.remarks);
        tuning = passage.tuning;
    }
    return {{"singer", singer_of(o.singer)},
            {"song",
             {{"file", fs::path(o.score).filename().string()},
              {"base64", base64(files::read(o.score, io::largest_score_file))}}},
            {"settings", settings_of(o, tuning)},
            {"said", said}};
}

/// Nothing in it ends the element it stands in.
std::string within_html(std::string json) {
    for (auto at = json.find('<'); at != std::string::npos; at = json.find('<', at))
        json.replace(at, 1, "\\u003c");
    return json;
}

void run(Options const& o) {
    if (fs::path(o.output).extension() != ".html")
        bad_command_line("--output", worded("{0} is no page; let its name end in .html", o.output));
    auto const inputs = inputs_of(o.plan);
    if (!o.overwrite) refuse_what_is_read(o.output, inputs);
    if (o.plan.technique.find('.') != std::string::npos)
        bad_command_line("--technique", worded("a page knows the techniques that come with the program"));
    auto page = files::read((page_folder(o.folder) / "vowelway.html").string(), largest_page);
    auto const at = page.find(place);
    if (at == std::string::npos)
        throw InputError(worded("is not the page of this version"),
                         worded("build it again with sh src/page/make.sh"),
                         {(page_folder(o.folder) / "vowelway.html").string(), 0, 0, {}});
    auto lesson = lesson_of(o.plan).dump(-1, ' ', false, Json::error_handler_t::replace);
    page.insert(at + place.find("</"), within_html(std::move(lesson)));
    files::write(o.output, page);
    say(worded("wrote {0}", o.output) + "\n");
}

} // namespace

void add_page(Command& program) {
    auto command =
        program.add("page", "The page for a browser, with a song and a singer inside: a lesson to send");
    auto o = std::make_shared<Options>();
    add_score(command, o->plan).required();
    add_singer(command, o->plan);
    add_song_options(command, o->plan);
    command.value("-o,--output", o->output, "the page to write, .html").required().called("FILE");
    command.flag("--overwrite", o->overwrite, "the page may replace a file that was read");
    command.value("--page", o->folder, "the folder that src/page/make.sh builds (default: found)")
        .called("FOLDER");
    command.footer("Example: vowelway page song.mxl --singer me.yaml -o lesson.html");
    command.runs([o] { run(*o); });
}

} // namespace vowelway::cli
