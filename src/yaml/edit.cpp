// SPDX-License-Identifier: MIT
#include "yaml/edit.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <string_view>

namespace vowelway::yaml {

namespace {

InputError cannot(Node const& node) {
    return error_at(node, worded("nothing can be added here without losing the text around it"),
                    worded("write each value on one line, as in docs/profile-format.md"));
}

std::size_t end_of_scalar(std::string_view t, Node const& node) {
    if (!node.quoted) {
        if (t.compare(node.offset, node.text.size(), node.text) != 0) throw cannot(node);
        return node.offset + node.text.size();
    }
    if (node.offset >= t.size() || (t[node.offset] != '"' && t[node.offset] != '\'')) throw cannot(node);
    char const quote = t[node.offset];
    for (std::size_t i = node.offset + 1; i < t.size(); ++i) {
        if (quote == '"' && t[i] == '\\')
            ++i;
        else if (t[i] == quote && quote == '\'' && i + 1 < t.size() && t[i + 1] == quote)
            ++i;
        else if (t[i] == quote)
            return i + 1;
    }
    throw cannot(node);
}

} // namespace

std::size_t Edit::end_of(Node const& node) const {
    switch (node.kind) {
    case Node::Kind::null:
        return node.offset;
    case Node::Kind::scalar:
        return end_of_scalar(text_, node);
    case Node::Kind::sequence:
    case Node::Kind::map:
        break;
    }
    std::size_t end = node.offset + (node.flow ? 1 : 0);
    for (auto const& item : node.items) end = std::max(end, end_of(item));
    for (auto const& [key, value] : node.fields) end = std::max({end, end_of(key), end_of(value)});
    if (!node.flow) return end;
    auto const& t = text_;
    char const bracket = node.kind == Node::Kind::map ? '}' : ']';
    for (; end < t.size(); ++end) {
        if (t[end] == bracket) return end + 1;
        if (t[end] == '#') end = std::min(t.find('\n', end), t.size()) - 1;
    }
    throw cannot(node);
}

std::size_t Edit::end_of_line(std::size_t at) const {
    auto const end = std::min(text_.find('\n', at), text_.size());
    return end > at && text_[end - 1] == '\r' ? end - 1 : end;
}

std::string Edit::indent_of(Node const& node) const {
    auto const start = node.offset == 0 ? 0 : text_.rfind('\n', node.offset - 1) + 1;
    return text_.substr(start, node.offset - start);
}

void Edit::replace(Node const& value, std::string with) {
    changes_.push_back({value.offset, end_of(value) - value.offset, std::move(with)});
}

void Edit::add_field(Node const& map, std::string_view key, std::string const& value) {
    if (map.fields.empty()) throw cannot(map);
    add_field_after(map, map.fields.size() - 1, key, value);
}

void Edit::add_field_after(Node const& map, std::size_t field, std::string_view key,
                           std::string const& value) {
    auto const& before = map.fields[field];
    auto const end = std::max(end_of(before.key), end_of(before.value));
    auto const entry = std::string(key) + ": " + value;
    if (map.flow) {
        changes_.push_back({end, 0, ", " + entry});
        return;
    }
    auto const indent = indent_of(map.fields.front().key);
    if (indent.find_first_not_of(' ') != std::string::npos) throw cannot(map);
    changes_.push_back({end_of_line(end), 0, "\n" + indent + entry});
}

void Edit::remove_field(Node const& map, std::size_t field) {
    auto const& [key, value] = map.fields[field];
    auto const end = std::max(end_of(key), end_of(value));
    if (!map.flow) { // the whole line
        auto const start = key.offset - indent_of(key).size();
        auto const stop = std::min(text_.find('\n', end), text_.size() - 1) + 1;
        changes_.push_back({start, stop - start, ""});
    } else if (field > 0) {
        auto const& before = map.fields[field - 1];
        auto const start = std::max(end_of(before.key), end_of(before.value));
        changes_.push_back({start, end - start, ""});
    } else if (map.fields.size() > 1) {
        changes_.push_back({key.offset, map.fields[1].key.offset - key.offset, ""});
    } else {
        changes_.push_back({key.offset, end - key.offset, ""});
    }
}

void Edit::add_item(Node const& sequence, std::string const& item) {
    if (sequence.items.empty()) throw cannot(sequence);
    auto const end = end_of(sequence.items.back());
    if (sequence.flow) {
        changes_.push_back({end, 0, ", " + item});
        return;
    }
    auto const before = indent_of(sequence.items.front());
    auto const dash = before.find_first_not_of(' ');
    if (dash == std::string::npos || before[dash] != '-') throw cannot(sequence);
    changes_.push_back({end_of_line(end), 0, "\n" + std::string(dash, ' ') + "- " + item});
}

void Edit::add_block(std::string_view key, std::string const& line) {
    std::string const start = text_.empty() || text_.back() == '\n' ? "" : "\n";
    changes_.push_back({text_.size(), 0, start + std::string(key) + ":\n  " + line + "\n"});
}

void Edit::fill(Node const& value, std::string const& line) {
    auto const field = std::find_if(root_.fields.begin(), root_.fields.end(),
                                    [&](auto const& f) { return &f.value == &value; });
    if (field == root_.fields.end()) throw cannot(value);
    auto const key_end = end_of(field->key);
    auto const colon = text_.find(':', key_end);
    if (colon == std::string::npos) throw cannot(value);
    if (value.kind == Node::Kind::null)
        changes_.push_back({end_of_line(colon), 0, "\n  " + line});
    else
        changes_.push_back({value.offset, end_of(value) - value.offset, "\n  " + line});
}

std::string Edit::done() const {
    auto changes = changes_;
    std::stable_sort(changes.begin(), changes.end(), [](Change const& a, Change const& b) {
        // What is put in stands before what is taken out at the same place.
        return a.at != b.at ? a.at < b.at : a.length == 0 && b.length > 0;
    });
    bool const windows = text_.find("\r\n") != std::string::npos;
    std::string out;
    std::size_t from = 0;
    for (auto const& change : changes) {
        if (change.at < from) throw cannot(root_); // two changes overlap
        out.append(text_, from, change.at - from);
        for (char const c : change.with) {
            if (c == '\n' && windows) out += '\r';
            out += c;
        }
        from = change.at + change.length;
    }
    return out.append(text_, from);
}

std::string quoted(std::string_view text) {
    std::string out = "\"";
    for (char const c : text) {
        if (c == '"' || c == '\\') out += '\\';
        if (c == '\t' || c == '\n' || c == '\r')
            out += c == '\t' ? "\\t" : c == '\n' ? "\\n" : "\\r";
        else
            out += static_cast<unsigned char>(c) < 0x20 ? ' ' : c;
    }
    return out + "\"";
}

} // namespace vowelway::yaml
