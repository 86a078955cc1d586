// SPDX-License-Identifier: MIT
// What is known of a singer, and singers side by side.
#include "page/asks.hpp"
#include "page/text_measurer.hpp"

#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/io/profile/built_in.hpp"
#include "vowelway/io/profile/read_profile.hpp"
#include "vowelway/plan/compare.hpp"
#include "vowelway/report/compare_report.hpp"

#include <vector>

namespace vowelway::page {

namespace {

std::vector<Singer> average_voices() {
    std::vector<Singer> out;
    for (auto const voice : all_voice_types) out.push_back(io::built_in_voice(voice));
    return out;
}

} // namespace

std::string singer_told(Json const& request, std::string_view) {
    report::SingerPicture picture;
    picture.singer = profile_of(request.at("singer")).singer;
    if (!picture.singer.average) picture.remarks = io::profile_remarks(picture.singer);
    auto const averages = average_voices();
    picture.tract = plan::tract_length_of(picture.singer, averages);
    picture.among = plan::place_among(picture.singer, averages);
    if (picture.singer.average)
        picture.remarks.push_back({Remark::Kind::caution, std::string(reworded(average_voice_notice))});
    return report::singer_json(picture);
}

std::string voices_told(Json const& request, std::string_view) {
    std::vector<plan::ComparedSinger> singers;
    for (auto const& one : request.at("singers")) {
        plan::ComparedSinger compared{profile_of(one).singer, std::nullopt};
        compared.reference = io::average_beside(compared.singer);
        singers.push_back(std::move(compared));
    }
    auto const vowels = request.value("vowels", "");
    auto const comparison = plan::compare_singers(std::move(singers), vowels.empty() ? std::vector<Vowel>{}
                                                                                     : parse_vowels(vowels));
    auto const options = chart_options(request);
    Json out{{"text", report::comparison_text(comparison)}, {"pages", Json::array()}};
    for (auto const& page : draw_svg(comparison, options, TextMeasurer(options.theme)))
        out["pages"].push_back(page.bytes);
    return out.dump(-1, ' ', false, Json::error_handler_t::replace);
}

} // namespace vowelway::page
