// SPDX-License-Identifier: MIT
#include "page/answer.hpp"

#include "vowelway/core/error.hpp"

#include <nlohmann/json.hpp>

#include <exception>

namespace vowelway::page {

namespace {

std::string last; // the module has one thread

std::string as_json(InputError const& error) {
    nlohmann::ordered_json const json{{"wrong", error.wrong()},         {"remedy", error.remedy()},
                                      {"file", error.place().file},     {"line", error.place().line},
                                      {"column", error.place().column}, {"musical", error.place().musical},
                                      {"context", error.context()}};
    // A message may quote bytes of the input that are no UTF-8.
    return json.dump(-1, ' ', false, nlohmann::ordered_json::error_handler_t::replace);
}

} // namespace

Outcome answer(std::function<std::string()> const& work) {
    try {
        last = work();
        return done;
    } catch (InputError const& error) {
        last = as_json(error);
        return bad_input;
    } catch (std::exception const& error) {
        last = as_json(InputError(error.what(), ""));
        return our_fault;
    }
}

extern "C" {
char const* vowelway_answer() { return last.data(); }
std::size_t vowelway_answer_size() { return last.size(); }
}

} // namespace vowelway::page
