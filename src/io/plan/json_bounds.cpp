// SPDX-License-Identifier: MIT
#include "io/plan/json_bounds.hpp"

#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/io/plan/read_targets.hpp"

#include <fmt/format.h>
#include <nlohmann/json.hpp>

namespace vowelway::io {

namespace {

using Json = nlohmann::json;

// Not the parser's own callback: with one it looks through a whole list after each of its items.
class Counter : public nlohmann::json_sax<Json> {
  public:
    explicit Counter(std::string const& file) : file_(file) {}

    bool null() override { return count(); }
    bool boolean(bool) override { return count(); }
    bool number_integer(number_integer_t) override { return count(); }
    bool number_unsigned(number_unsigned_t) override { return count(); }
    bool number_float(number_float_t, string_t const&) override { return count(); }
    bool string(string_t&) override { return count(); }
    bool binary(binary_t&) override { return count(); }
    bool key(string_t&) override { return true; }
    bool start_object(std::size_t) override { return begin(); }
    bool start_array(std::size_t) override { return begin(); }
    bool end_object() override { return end(); }
    bool end_array() override { return end(); }
    bool parse_error(std::size_t, std::string const&, Json::exception const&) override { return false; }

  private:
    [[noreturn]] void refuse(std::string const& wrong) const {
        throw InputError(wrong, worded("write one with: vowelway plan .. -o plan.json"),
                         Place{file_, 0, 0, {}});
    }
    bool count() {
        if (++values_ > most_plan_values) refuse(worded("has more than {0} values", most_plan_values));
        return true;
    }
    bool begin() {
        if (++depth_ > deepest_plan) refuse(worded("is nested more than {0} deep", deepest_plan));
        return count();
    }
    bool end() {
        --depth_;
        return true;
    }

    std::string const& file_;
    int depth_ = 0;
    std::size_t values_ = 0;
};

} // namespace

void require_json_bounds(std::string_view json, std::string const& file) {
    Counter counter(file);
    Json::sax_parse(json, &counter);
}

} // namespace vowelway::io
