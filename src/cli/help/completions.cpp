// SPDX-License-Identifier: MIT
#include "cli/help/man_page.hpp"

namespace vowelway::cli {

namespace {

struct Node {
    std::string words; ///< "plan", "profile show": the commands that lead here
    CommandWords const* command;
};

void gather(CommandWords const& command, std::string const& words, std::vector<Node>& out) {
    out.push_back({words, &command});
    for (auto const& one : command.commands) gather(one, (words.empty() ? "" : words + " ") + one.name, out);
}

std::string names_of(std::vector<CommandWords> const& commands) {
    std::string out;
    for (auto const& command : commands) out += (out.empty() ? "" : " ") + command.name;
    return out;
}

std::string in_quotes(std::string const& text) {
    std::string out = "'";
    for (char c : text) out += c == '\'' ? std::string("'\\''") : std::string(1, c);
    return out + "'";
}

// The commands typed so far decide which options there are; the option before decides what may follow it.
std::string bash(std::vector<Node> const& nodes) {
    std::string out = "# Completion for bash; made from the program's own options.\n_vowelway() {\n"
                      "    local now=${COMP_WORDS[COMP_CWORD]} before=${COMP_WORDS[COMP_CWORD-1]} typed= i\n"
                      "    for ((i = 1; i < COMP_CWORD; ++i)); do\n"
                      "        case \"${typed:+$typed }${COMP_WORDS[i]}\" in\n";
    std::string names;
    for (auto const& node : nodes)
        if (!node.words.empty()) names += (names.empty() ? "" : "|") + in_quotes(node.words);
    out += "            " + names +
           ") typed=\"${typed:+$typed }${COMP_WORDS[i]}\" ;;\n        esac\n    done\n"
           "    local words= choices=\n    case \"$typed\" in\n";
    for (auto const& node : nodes) {
        std::string words = names_of(node.command->commands), choices;
        for (auto const& o : node.command->options) {
            if (o.positional) continue;
            std::string all;
            for (auto const& name : o.names) {
                words += (words.empty() ? "" : " ") + name;
                all += (all.empty() ? "" : "|") + name;
            }
            std::string list;
            for (auto const& choice : o.choices) list += (list.empty() ? "" : " ") + choice;
            if (!list.empty()) choices += "                " + all + ") choices=" + in_quotes(list) + " ;;\n";
        }
        out += "        " + in_quotes(node.words) + ")\n            words=" + in_quotes(words) + "\n";
        if (!choices.empty())
            out += "            case \"$before\" in\n" + choices + "            esac ;;\n";
        else
            out += "            ;;\n";
    }
    return out + "    esac\n"
                 "    if [ -n \"$choices\" ]; then mapfile -t COMPREPLY < <(compgen -W \"$choices\" -- "
                 "\"$now\"); return; fi\n"
                 "    if [[ $now == -* || ( -z $typed && $before != -* ) ]]; then\n"
                 "        mapfile -t COMPREPLY < <(compgen -W \"$words\" -- \"$now\"); return\n    fi\n"
                 "    mapfile -t COMPREPLY < <(compgen -W \"$words\" -- \"$now\"; compgen -f -- \"$now\")\n"
                 "}\ncomplete -o filenames -F _vowelway vowelway\n";
}

std::string zsh(std::vector<Node> const& nodes) {
    std::string out = "#compdef vowelway\n# Completion for zsh; made from the program's own options.\n"
                      "_vowelway() {\n    local typed= word\n    for word in ${words[2,CURRENT-1]}; do\n"
                      "        case \"${typed:+$typed }$word\" in\n";
    std::string names;
    for (auto const& node : nodes)
        if (!node.words.empty()) names += (names.empty() ? "" : "|") + in_quotes(node.words);
    out += "            " + names +
           ") typed=\"${typed:+$typed }$word\" ;;\n        esac\n    done\n"
           "    local -a commands options\n    case \"$typed\" in\n";
    for (auto const& node : nodes) {
        out += "        " + in_quotes(node.words) + ")\n            commands=(";
        for (auto const& command : node.command->commands)
            out += in_quotes(command.name + ":" + command.says) + " ";
        out += ")\n            options=(";
        std::string choices;
        for (auto const& o : node.command->options) {
            if (o.positional) continue;
            std::string all;
            for (auto const& name : o.names) {
                out += in_quotes(name + ":" + o.says) + " ";
                all += (all.empty() ? "" : "|") + name;
            }
            std::string list;
            for (auto const& choice : o.choices) list += " " + choice;
            if (!list.empty()) choices += "                " + all + ") compadd --" + list + "; return ;;\n";
        }
        out += ")\n";
        if (!choices.empty())
            out += "            case \"${words[CURRENT-1]}\" in\n" + choices + "            esac\n";
        out += "            ;;\n";
    }
    return out + "    esac\n    (( $#commands )) && _describe command commands\n"
                 "    [[ $PREFIX == -* ]] && _describe option options || _files\n}\n_vowelway \"$@\"\n";
}

std::string fish(std::vector<Node> const& nodes) {
    std::string out = "# Completion for fish; made from the program's own options.\n";
    for (auto const& node : nodes) {
        std::string here = node.words.empty() ? "__fish_use_subcommand" : "__fish_seen_subcommand_from";
        auto const last =
            node.words.substr(node.words.rfind(' ') == std::string::npos ? 0 : node.words.rfind(' ') + 1);
        if (!last.empty()) here += " " + last;
        for (auto const& command : node.command->commands)
            out += "complete -c vowelway -n " + in_quotes(here) + " -a " + command.name + " -d " +
                   in_quotes(command.says) + "\n";
        for (auto const& o : node.command->options) {
            if (o.positional) continue;
            out += "complete -c vowelway -n " + in_quotes(here);
            for (auto const& name : o.names)
                out += name.starts_with("--") ? " -l " + name.substr(2) : " -s " + name.substr(1);
            std::string list;
            for (auto const& choice : o.choices) list += (list.empty() ? "" : " ") + choice;
            if (!list.empty())
                out += " -x -a " + in_quotes(list);
            else if (!o.value.empty())
                out += " -r";
            out += " -d " + in_quotes(o.says) + "\n";
        }
    }
    return out;
}

} // namespace

std::vector<NamedText> completions(CommandWords const& program) {
    std::vector<Node> nodes;
    gather(program, "", nodes);
    return {{"vowelway.bash", bash(nodes)}, {"_vowelway", zsh(nodes)}, {"vowelway.fish", fish(nodes)}};
}

} // namespace vowelway::cli
