// SPDX-License-Identifier: MIT
#include "cli/help/command_words.hpp"
#include "vowelway/core/wording.hpp"

#include <CLI/CLI.hpp>

namespace vowelway::cli {

namespace {

std::vector<std::string> split(std::string const& text, char at) {
    std::vector<std::string> out;
    std::size_t from = 0;
    for (std::size_t to; (to = text.find(at, from)) != std::string::npos; from = to + 1)
        out.push_back(text.substr(from, to - from));
    out.push_back(text.substr(from));
    return out;
}

std::string joined(std::vector<std::string> const& parts, std::string const& between) {
    std::string out;
    for (auto const& part : parts) out += (out.empty() ? "" : between) + part;
    return out;
}

// The parser appends what a value may be to its type: "TEXT:{table,csv,json}", "INT:INT in [1 - 99]".
void read_type(std::string const& type, OptionWords& out) {
    auto const colon = type.find(':');
    out.value = type.substr(0, colon);
    if (colon == std::string::npos) return;
    auto const limits = type.substr(colon + 1);
    if (limits.front() == '{' && limits.back() == '}') {
        out.choices = split(limits.substr(1, limits.size() - 2), ',');
        out.value = joined(out.choices, "|");
        return;
    }
    auto const low = limits.find('['), dash = limits.find(" - "), high = limits.find(']');
    if (low != std::string::npos && dash != std::string::npos && high != std::string::npos)
        out.says += " (" +
                    worded("{0} to {1}", limits.substr(low + 1, dash - low - 1),
                           limits.substr(dash + 3, high - dash - 3)) +
                    ")";
}

OptionWords option_words(CLI::Option const& option) {
    OptionWords out;
    out.positional = option.nonpositional() == false;
    out.required = option.get_required();
    out.says = option.get_description();
    if (out.positional) {
        out.names = {option.get_name(true, false)};
    } else {
        for (auto const& name : option.get_snames()) out.names.push_back("-" + name);
        for (auto const& name : option.get_lnames()) out.names.push_back("--" + name);
    }
    if (option.get_expected_min() != 0 && option.get_type_size() != 0) read_type(option.get_type_name(), out);
    if (auto const standard = option.get_default_str();
        !standard.empty() && out.says.find(worded("default")) == std::string::npos)
        out.says += " (" + worded("default") + ": " + standard + ")";
    return out;
}

std::vector<OptionWords> options_of(CLI::App const& app) {
    std::vector<OptionWords> positionals, rest;
    for (auto const* option : app.get_options()) {
        if (option->get_group().empty()) continue; // hidden
        auto words = option_words(*option);
        (words.positional ? positionals : rest).push_back(std::move(words));
    }
    positionals.insert(positionals.end(), rest.begin(), rest.end());
    return positionals;
}

} // namespace

CommandWords words_of(CLI::App const& app) {
    CommandWords out{app.get_name(), app.get_description(), app.get_footer(), options_of(app), {}};
    for (auto const* command :
         app.get_subcommands([](CLI::App const* one) { return !one->get_group().empty(); }))
        out.commands.push_back(words_of(*command));
    return out;
}

} // namespace vowelway::cli
