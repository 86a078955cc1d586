// SPDX-License-Identifier: MIT
// What the synthesiser says, written down: a page that has no synthesiser is told it. Private to the library.
#pragma once

#include <map>
#include <string>

namespace vowelway::diction {

/// "it amor" -> its IPA.
using Said = std::map<std::string, std::string>;

/// While it lives, everything that is said goes into `into` too. One at a time.
class Recording {
  public:
    explicit Recording(Said& into);
    ~Recording();
    Recording(Recording const&) = delete;
    Recording& operator=(Recording const&) = delete;
};

} // namespace vowelway::diction
