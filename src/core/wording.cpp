// SPDX-License-Identifier: MIT
#include "vowelway/core/wording.hpp"

#include <atomic>
#include <list>
#include <mutex>
#include <utility>

namespace vowelway {

namespace {

/// Null is English.
std::atomic<Wording const*>& spoken() {
    static std::atomic<Wording const*> wording{nullptr};
    return wording;
}

} // namespace

void set_wording(Wording wording) {
    static std::mutex one_at_a_time;
    static auto& kept = *new std::list<Wording>; // to the very end: other threads may be speaking
    std::lock_guard const lock(one_at_a_time);
    if (wording.sentences.empty()) {
        spoken() = nullptr;
        return;
    }
    for (auto const& known : kept)
        if (known.language == wording.language && known.sentences == wording.sentences) {
            spoken() = &known;
            return;
        }
    spoken() = &kept.emplace_back(std::move(wording));
}

std::string_view wording_language() {
    auto const* wording = spoken().load();
    return wording ? std::string_view(wording->language) : "en";
}

bool same_places(std::string_view english, std::string_view other) {
    for (char n = '0'; n <= '9'; ++n) {
        char const place[] = {'{', n, '}'};
        std::string_view const sought(place, 3);
        if ((english.find(sought) == std::string_view::npos) !=
            (other.find(sought) == std::string_view::npos))
            return false;
    }
    return true;
}

std::string_view reworded(std::string_view english) {
    auto const* wording = spoken().load();
    if (!wording) return english;
    auto const found = wording->sentences.find(english);
    return found == wording->sentences.end() ? english : std::string_view(found->second);
}

namespace detail {

void wrong_places() {}

std::string filled(std::string_view english, Piece const* pieces, std::size_t count) {
    auto const sentence = reworded(english);
    std::string out;
    for (std::size_t i = 0; i < sentence.size(); ++i) {
        auto const n = static_cast<std::size_t>(i + 2 < sentence.size() ? sentence[i + 1] - '0' : 10);
        bool const place = sentence[i] == '{' && n < count && sentence[i + 2] == '}';
        if (place) {
            out += pieces[n].text();
            i += 2;
        } else {
            out += sentence[i];
        }
    }
    return out;
}

} // namespace detail

} // namespace vowelway
