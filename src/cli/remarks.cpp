// SPDX-License-Identifier: MIT
#include "cli/remarks.hpp"

#include "cli/standard_output.hpp"
#include "vowelway/core/wording.hpp"

#include <string>

namespace vowelway::cli {

void print_remarks(Remarks const& remarks) {
    for (auto const& remark : remarks)
        say(std::string(reworded(to_string(remark.kind))) + ": " + remark.text + "\n");
}

} // namespace vowelway::cli
