// SPDX-License-Identifier: MIT
#include "io/score/outline.hpp"

#include "io/score/decode.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/io/score/read_score.hpp"

#include <algorithm>

namespace vowelway::io {

namespace {

constexpr auto npos = std::string_view::npos;

class Walk {
  public:
    Walk(std::string_view text, std::string const& file) : text_(text), file_(file) {}

    [[noreturn]] void cut(std::size_t at) const {
        throw InputError(worded("the file breaks off in the middle of a tag"),
                         worded("export or download it again"), {file_, line_of(text_, at), 0, {}});
    }

    std::size_t past(std::string_view mark, std::size_t from) const {
        auto const at = text_.find(mark, from);
        if (at == npos) cut(from);
        return at + mark.size();
    }

    /// One past the ">" of a tag, quotes respected.
    std::size_t past_tag(std::size_t from) const {
        for (auto i = from; i < text_.size(); ++i) {
            char const c = text_[i];
            if (c == '>') return i + 1;
            if (c == '"' || c == '\'') {
                i = text_.find(c, i + 1);
                if (i == npos) cut(from);
            }
        }
        cut(from);
    }

    /// One past a document type; its internal subset may hold comments but no entities.
    std::size_t past_doctype(std::size_t from) const {
        bool inside = false;
        for (auto i = from; i < text_.size(); ++i) {
            auto const rest = text_.substr(i);
            if (rest.starts_with("<!--"))
                i = past("-->", i) - 1;
            else if (rest.starts_with("<!ENTITY"))
                throw InputError(
                    worded("the document type defines entities, which are not accepted"),
                    worded("remove the part in [ ] from the <!DOCTYPE>, or export the score again"),
                    {file_, line_of(text_, i), 0, {}});
            else if (text_[i] == '"' || text_[i] == '\'') {
                i = text_.find(text_[i], i + 1);
                if (i == npos) cut(from);
            } else if (text_[i] == '[')
                inside = true;
            else if (text_[i] == ']')
                inside = false;
            else if (text_[i] == '>' && !inside)
                return i + 1;
        }
        cut(from);
    }

  private:
    std::string_view text_;
    std::string const& file_;
};

} // namespace

Outline::Outline(std::string_view text, std::string const& file) {
    Walk const walk(text, file);
    std::vector<std::size_t> open; // indices in elements_
    for (auto at = text.find('<'); at != npos; at = text.find('<', at)) {
        auto const rest = text.substr(at);
        if (rest.starts_with("<!--"))
            at = walk.past("-->", at);
        else if (rest.starts_with("<![CDATA["))
            at = walk.past("]]>", at);
        else if (rest.starts_with("<?"))
            at = walk.past("?>", at);
        else if (rest.starts_with("<!DOCTYPE"))
            at = walk.past_doctype(at);
        else if (rest.starts_with("</")) {
            auto const end = walk.past_tag(at);
            if (!open.empty()) {
                elements_[open.back()].end_tag = at;
                elements_[open.back()].end = end;
                open.pop_back();
            }
            at = end;
        } else {
            auto const end = walk.past_tag(at);
            bool const closed = text[end - 2] == '/';
            elements_.push_back({at, closed ? end - 2 : end, end});
            if (elements_.size() > static_cast<std::size_t>(most_score_elements))
                throw InputError(worded("the score has more than {0} elements", most_score_elements),
                                 worded("export only this song"), {file, line_of(text, at), 0, {}});
            if (!closed) open.push_back(elements_.size() - 1);
            if (open.size() > static_cast<std::size_t>(deepest_score_nesting))
                throw InputError(worded("elements are nested more than {0} deep", deepest_score_nesting),
                                 worded("this does not look like a score; export it again"),
                                 {file, line_of(text, at), 0, {}});
            at = end;
        }
    }
}

Outline::Element const* Outline::at(std::size_t begin) const {
    auto const found = std::lower_bound(elements_.begin(), elements_.end(), begin,
                                        [](Element const& e, std::size_t at) { return e.begin < at; });
    return found != elements_.end() && found->begin == begin ? &*found : nullptr;
}

} // namespace vowelway::io
