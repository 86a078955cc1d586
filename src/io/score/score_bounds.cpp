// SPDX-License-Identifier: MIT
#include "io/score/score_bounds.hpp"

#include "vowelway/core/input_text.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/io/score/read_score.hpp"

namespace vowelway::io {

namespace {

std::string other_file() { return worded("check that it is a score, or export the song again"); }

class TextBounds : public pugi::xml_tree_walker {
  public:
    explicit TextBounds(XmlSource const& source) : source_(source) {}

  private:
    bool for_each(pugi::xml_node& node) override {
        require(node, node.name(), longest_attribute, worded("a name"));
        require(node.parent(), node.value(), longest_text, worded("a text"));
        for (auto const& attribute : node.attributes()) {
            require(node, attribute.name(), longest_attribute, worded("a name"));
            require(node, attribute.value(), longest_attribute, worded("an attribute"));
        }
        return true;
    }
    void require(pugi::xml_node where, std::string_view text, int bound, std::string const& what) const {
        if (text.size() > static_cast<std::size_t>(bound))
            throw InputError(worded("{0} is longer than {1} bytes", what, bound), other_file(),
                             source_.place(where));
    }

    XmlSource const& source_;
};

std::size_t words_under(pugi::xml_node note, XmlSource const& source) {
    std::size_t all = 0;
    for (auto const& lyric : note.children("lyric")) {
        std::size_t bytes = 0;
        for (auto const& text : lyric.children("text")) bytes += std::string_view(text.child_value()).size();
        if (bytes > static_cast<std::size_t>(longest_lyric))
            throw InputError(worded("the words under one note are longer than {0} bytes", longest_lyric),
                             worded("give each syllable a note"), source.place(lyric));
        all += bytes;
    }
    return all;
}

} // namespace

void require_sung_notes(std::size_t notes, std::string const& file) {
    if (notes > static_cast<std::size_t>(most_sung_notes))
        throw InputError(worded("more than {0} notes are sung", most_sung_notes),
                         worded("give one song, not a whole opera"), Place{file, 0, 0, {}});
}

void require_score_bounds(XmlSource const& source, std::vector<PartInfo> const& parts) {
    TextBounds texts(source);
    source.root().traverse(texts);
    for (auto const& part : parts) {
        Place const place{source.file(), 0, 0, worded("part {0}", part.id)};
        if (part.measures.size() > static_cast<std::size_t>(most_score_bars))
            throw InputError(worded("a part has more than {0} bars", most_score_bars),
                             worded("export only this song"), place);
        std::size_t words = 0;
        for (auto const& measure : part.measures)
            for (auto const& note : measure.music.children("note")) words += words_under(note, source);
        if (words > most_lyrics)
            throw InputError(worded("a part has more than {0} of words", size_in_words(most_lyrics)),
                             worded("export only this song"), place);
    }
}

} // namespace vowelway::io
