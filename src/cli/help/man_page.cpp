// SPDX-License-Identifier: MIT
#include "cli/help/man_page.hpp"

#include <cctype>
#include <sstream>

namespace vowelway::cli {

namespace {

// A line that begins with a dot or a quote is a request to man, a backslash an escape, a hyphen a dash.
std::string escaped(std::string const& text) {
    std::string out;
    for (char c : text) {
        if (c == '\\')
            out += "\\e";
        else if (c == '-')
            out += "\\-";
        else
            out += c;
    }
    return out.empty() || (out[0] != '.' && out[0] != '\'') ? out : "\\&" + out;
}

std::string lines_as_written(std::string const& text) {
    std::istringstream in(text);
    std::string out = ".nf\n";
    for (std::string line; std::getline(in, line);) out += escaped(line) + "\n";
    return out + ".fi\n";
}

void option(std::string& out, OptionWords const& o) {
    out += ".TP\n.B ";
    for (std::size_t i = 0; i < o.names.size(); ++i) out += (i ? ", " : "") + escaped(o.names[i]);
    if (!o.value.empty() && !o.positional) out += " \\fI" + escaped(o.value) + "\\fR";
    out += "\n" + escaped(o.says) + (o.required && !o.positional ? " (required)" : "") + "\n";
}

constexpr char const* common_end = R"(.SH EXIT STATUS
0 done, 1 a fault of the program, 2 a bad command line, 3 bad input or output that could not be written.
.SH CAUTIONS
Results are predictions, never orders; comfort decides. They replace no teacher and no physician.
)";

void one_page(std::vector<NamedText>& pages, CommandWords const& command, std::string const& name,
              std::string const& version) {
    std::string dashed = name;
    for (auto& c : dashed)
        if (c == ' ') c = '-';
    std::string title = dashed;
    for (auto& c : title) c = static_cast<char>(std::toupper(static_cast<unsigned char>(c)));
    std::string out =
        ".TH " + escaped(title) + " 1 \"\" \"vowelway " + version + "\" \"vowelway\"\n.SH NAME\n";
    out += escaped(dashed) + " \\- " + escaped(command.says) + "\n.SH SYNOPSIS\n.B " + escaped(name);
    if (!command.commands.empty()) out += " \\fICOMMAND\\fR";
    for (auto const& o : command.options)
        if (o.positional)
            out += " \\fI" + escaped(o.required ? o.names.front() : "[" + o.names.front() + "]") + "\\fR";
    out += " [options]\n";
    if (!command.commands.empty()) {
        out += ".SH COMMANDS\n";
        for (auto const& one : command.commands)
            out += ".TP\n.B " + escaped(one.name) + "\n" + escaped(one.says) + "\n";
    }
    out += ".SH OPTIONS\n";
    for (auto const& o : command.options) option(out, o);
    if (!command.footer.empty()) out += ".SH NOTES\n" + lines_as_written(command.footer);
    pages.push_back({dashed + ".1", out + common_end});
    for (auto const& one : command.commands) one_page(pages, one, name + " " + one.name, version);
}

} // namespace

std::vector<NamedText> man_pages(CommandWords const& program, std::string const& version) {
    std::vector<NamedText> pages;
    one_page(pages, program, program.name, version);
    return pages;
}

} // namespace vowelway::cli
