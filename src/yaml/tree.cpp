// SPDX-License-Identifier: MIT
#include "yaml/tree.hpp"

#include "vowelway/core/input_text.hpp"
#include "vowelway/core/wording.hpp"

#include <yaml-cpp/eventhandler.h>
#include <yaml-cpp/exceptions.h>
#include <yaml-cpp/mark.h>
#include <yaml-cpp/parser.h>

#include <algorithm>
#include <optional>
#include <sstream>
#include <unordered_map>

namespace vowelway::yaml {

namespace {

/// Line and column of a byte in the text, the column counted in characters.
Place place_of(std::string const& text, std::string const& file, std::size_t offset) {
    offset = std::min(offset, text.size());
    auto const line_start = offset == 0 ? 0 : text.rfind('\n', offset - 1) + 1;
    auto const continuation = [](char c) { return (static_cast<unsigned char>(c) & 0xC0u) == 0x80u; };
    auto const begin = text.begin() + static_cast<std::ptrdiff_t>(line_start),
               end = text.begin() + static_cast<std::ptrdiff_t>(offset);
    Place place;
    place.file = file;
    place.line = 1 + static_cast<int>(std::count(text.begin(), end, '\n'));
    place.column = 1 + static_cast<int>(end - begin - std::count_if(begin, end, continuation));
    return place;
}

/// Builds the tree from the parser's events, so that nothing is ever expanded.
class Builder : public YAML::EventHandler {
  public:
    Builder(std::string const& text, std::string const& file) : text_(text), file_(file) {
        for (std::size_t i = 0; i < text.size(); ++i)
            if (text[i] == '\n') line_starts_.push_back(i + 1);
    }

    Node take() { return std::move(root_); }
    Place at(YAML::Mark const& mark) { return place(offset(mark)); }

    void OnDocumentStart(YAML::Mark const&) override {}
    void OnDocumentEnd() override {}
    void OnNull(YAML::Mark const& mark, YAML::anchor_t anchor) override {
        add(make(Node::Kind::null, mark, anchor, ""));
    }
    void OnAlias(YAML::Mark const& mark, YAML::anchor_t) override { refuse_alias(mark); }
    void OnScalar(YAML::Mark const& mark, std::string const& tag, YAML::anchor_t anchor,
                  std::string const& value) override {
        auto node = make(Node::Kind::scalar, mark, anchor, tag);
        node.text = value;
        node.quoted = tag == "!";
        add(std::move(node));
    }
    void OnSequenceStart(YAML::Mark const& mark, std::string const& tag, YAML::anchor_t anchor,
                         YAML::EmitterStyle::value style) override {
        open(make(Node::Kind::sequence, mark, anchor, tag), style);
    }
    void OnSequenceEnd() override { close(); }
    void OnMapStart(YAML::Mark const& mark, std::string const& tag, YAML::anchor_t anchor,
                    YAML::EmitterStyle::value style) override {
        open(make(Node::Kind::map, mark, anchor, tag), style);
    }
    void OnMapEnd() override { close(); }

  private:
    std::size_t offset(YAML::Mark const& mark) const {
        if (mark.line < 0) return 0;
        auto const line = std::min(static_cast<std::size_t>(mark.line), line_starts_.size() - 1);
        return std::min(line_starts_[line] + static_cast<std::size_t>(std::max(0, mark.column)),
                        text_.size());
    }
    /// As place_of, but counting on from the place before: the parser goes forward.
    Place place(std::size_t at) {
        auto const next = std::upper_bound(line_starts_.begin(), line_starts_.end(), at);
        auto const start = *(next - 1);
        if (start > counted_to_ || at < counted_to_) counted_to_ = start, characters_ = 0;
        for (; counted_to_ < at; ++counted_to_)
            if ((static_cast<unsigned char>(text_[counted_to_]) & 0xC0u) != 0x80u) ++characters_;
        Place out;
        out.file = file_;
        out.line = static_cast<int>(next - line_starts_.begin());
        out.column = 1 + characters_;
        return out;
    }
    [[noreturn]] void refuse_alias(YAML::Mark const& mark) {
        throw InputError(worded("anchors and aliases (& and *) are not supported"),
                         worded("write the value out where it is needed"), place(offset(mark)));
    }
    Node make(Node::Kind kind, YAML::Mark const& mark, YAML::anchor_t anchor, std::string const& tag) {
        if (anchor != YAML::NullAnchor) refuse_alias(mark);
        Node node;
        node.kind = kind;
        node.offset = offset(mark);
        node.place = place(node.offset);
        if (!tag.empty() && tag != "?" && tag != "!")
            throw InputError(worded("the tag {0} is not supported", tag), worded("remove it"), node.place);
        if (++count_ > most_values)
            throw InputError(worded("more than {0} values", most_values), worded("split the file"),
                             node.place);
        return node;
    }
    void open(Node node, YAML::EmitterStyle::value style) {
        node.flow = style == YAML::EmitterStyle::Flow;
        if (open_.size() >= deepest)
            throw InputError(worded("nested more than {0} deep", deepest), worded("use fewer levels"),
                             node.place);
        open_.push_back({std::move(node), std::nullopt, {}});
    }
    void close() {
        auto node = std::move(open_.back().node);
        open_.pop_back();
        add(std::move(node));
    }
    void add(Node node) {
        if (open_.empty()) {
            root_ = std::move(node);
            return;
        }
        auto& [parent, key, keys] = open_.back();
        if (parent.kind == Node::Kind::sequence) {
            parent.items.push_back(std::move(node));
        } else if (!key) {
            if (node.kind != Node::Kind::scalar)
                throw InputError(worded("a key must be a word"), worded("write key: value"), node.place);
            auto const [first, fresh] = keys.emplace(node.text, node.place.line);
            if (!fresh)
                throw InputError(worded("\"{0}\" appears twice", node.text),
                                 worded("keep one of the two; the first is on line {0}", first->second),
                                 node.place);
            key = std::move(node);
        } else {
            parent.fields.push_back({std::move(*key), std::move(node)});
            key.reset();
        }
    }

    struct Open {
        Node node;
        std::optional<Node> key;                   // a key whose value is still to come
        std::unordered_map<std::string, int> keys; // the lines of all keys so far
    };
    std::string const& text_;
    std::string const& file_;
    std::vector<std::size_t> line_starts_{0};
    std::vector<Open> open_;
    Node root_;
    std::size_t count_ = 0;
    std::size_t counted_to_ = 0; // where place() stopped counting
    int characters_ = 0;         // before it, on its line
};

} // namespace

Node const* Node::find(std::string_view key) const {
    auto const found =
        std::find_if(fields.begin(), fields.end(), [&](auto const& field) { return field.key.text == key; });
    return found == fields.end() ? nullptr : &found->value;
}

Node parse(std::string const& text, std::string const& file) {
    require_size(text.size(), largest_file, file);
    require_text(text, file);
    Builder builder(text, file);
    try {
        std::istringstream in(text);
        YAML::Parser parser(in);
        if (!parser.HandleNextDocument(builder)) {
            Node nothing;
            nothing.place = place_of(text, file, 0);
            return nothing;
        }
        auto node = builder.take();
        Builder second(text, file);
        if (parser.HandleNextDocument(second))
            throw InputError(worded("has a second document (---)"), worded("keep one document in a file"),
                             second.take().place);
        return node;
    } catch (YAML::Exception const& error) {
        Place place;
        place.file = file;
        if (!error.mark.is_null()) place = builder.at(error.mark);
        throw InputError(worded("is not YAML: {0}", error.msg),
                         worded("check brackets, quotes and the spaces at the start of the line"), place);
    }
}

InputError error_at(Node const& node, std::string wrong, std::string remedy) {
    return InputError(std::move(wrong), std::move(remedy), node.place);
}

std::string const& scalar(Node const& node, std::string_view what) {
    if (node.kind != Node::Kind::scalar)
        throw error_at(node, worded("{0} must be one value", what), worded("write it after the colon"));
    return node.text;
}

Node const& map(Node const& node, std::string_view what, std::string_view example) {
    if (node.kind != Node::Kind::map)
        throw error_at(node, worded("{0} must be keys with values", what), worded("write {0}", example));
    return node;
}

Node const& sequence(Node const& node, std::string_view what, std::string_view example) {
    if (node.kind != Node::Kind::sequence)
        throw error_at(node, worded("{0} must be a list", what), worded("write {0}", example));
    return node;
}

void only_keys(Node const& map, std::string_view known) {
    std::vector<std::string> words;
    std::istringstream in{std::string(known)};
    for (std::string word; in >> word;) words.push_back(word);
    for (auto const& [key, value] : map.fields) {
        if (std::find(words.begin(), words.end(), key.text) != words.end()) continue;
        std::string list;
        for (auto const& word : words) list += (list.empty() ? "" : ", ") + word;
        throw error_at(key, worded("unknown key \"{0}\"", key.text), worded("known keys: {0}", list));
    }
}

} // namespace vowelway::yaml
