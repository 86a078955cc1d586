// SPDX-License-Identifier: MIT
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"

#include <utility>

namespace vowelway {

std::string Place::str() const {
    std::string out = file;
    if (line > 0) {
        out = out.empty() ? worded("line {0}", line) : out + ":" + std::to_string(line);
        if (column > 0) out += ":" + std::to_string(column);
    }
    if (!musical.empty()) out += (out.empty() ? "" : ", ") + musical;
    return out;
}

InputError::InputError(std::string wrong, std::string remedy, Place place)
    : wrong_(std::move(wrong)), remedy_(std::move(remedy)), place_(std::move(place)) {
    compose();
}

InputError& InputError::at(Place const& place) {
    if (place_.file.empty()) place_.file = place.file;
    if (place_.line == 0) {
        place_.line = place.line;
        place_.column = place.column;
    }
    if (place_.musical.empty()) place_.musical = place.musical;
    compose();
    return *this;
}

InputError& InputError::during(std::string context) {
    context_.push_back(std::move(context));
    compose();
    return *this;
}

void InputError::compose() {
    auto const place = place_.str();
    message_ = place.empty() ? wrong_ : place + ": " + wrong_;
    if (!remedy_.empty()) message_ += "\n  " + remedy_;
    for (auto const& line : context_) message_ += "\n" + line;
}

std::string_view to_string(Remark::Kind kind) {
    switch (kind) {
    case Remark::Kind::assumed:
        return to_word("assumed");
    case Remark::Kind::guessed:
        return to_word("guessed");
    case Remark::Kind::caution:
        return to_word("caution");
    }
    return "";
}

} // namespace vowelway
