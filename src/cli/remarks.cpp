// SPDX-License-Identifier: MIT
#include "cli/remarks.hpp"

#include <iostream>

namespace vowelway::cli {

void print_remarks(Remarks const& remarks) {
    for (auto const& remark : remarks) std::cerr << to_string(remark.kind) << ": " << remark.text << "\n";
}

} // namespace vowelway::cli
