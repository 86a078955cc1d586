// SPDX-License-Identifier: MIT
#include "vowelway/io/areas/read_areas.hpp"

#include "core/text.hpp"
#include "core/utf8.hpp"
#include "io/areas/csv.hpp"
#include "vowelway/core/input_text.hpp"
#include "vowelway/core/wording.hpp"

#include <algorithm>
#include <array>
#include <map>
#include <optional>

namespace vowelway::io {

namespace {

constexpr std::size_t most_sections = 512, most_tracts = 1000;

enum Wanted { section_length, section_index, area, vowel };
constexpr std::array<std::string_view, 4> column_names{"section_length_cm", "section_index_from_glottis",
                                                       "area_cm2", "vowel"};

struct Columns {
    std::array<std::optional<std::size_t>, 4> place;
    std::size_t count = 0;
    Remarks remarks;
};

std::string lowered(std::string_view text) {
    std::string out(text::trim(text));
    std::transform(out.begin(), out.end(), out.begin(),
                   [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c; });
    return out;
}

Columns columns_of(csv::Row const& header, std::string const& file) {
    Columns out;
    out.count = header.fields.size();
    std::string unused;
    for (std::size_t k = 0; k < header.fields.size(); ++k) {
        auto const& field = header.fields[k];
        auto const name = lowered(field.text);
        auto const known = std::find(column_names.begin(), column_names.end(), name);
        if (known == column_names.end()) {
            unused += (unused.empty() ? "" : ", ") + std::string(text::trim(field.text));
            continue;
        }
        auto& place = out.place[static_cast<std::size_t>(known - column_names.begin())];
        if (place)
            throw InputError(worded("the column {0} appears twice in the header", name), worded("keep one"),
                             Place{file, header.line, field.column, ""});
        place = k;
    }
    for (auto const wanted : {section_length, section_index, area})
        if (!out.place[wanted]) {
            auto remedy = worded(
                "the first line must name the columns: section_length_cm,section_index_from_glottis,area_cm2 "
                "and, for several tracts, vowel");
            if (header.fields.size() == 1 && header.fields[0].text.find_first_of(";\t") != std::string::npos)
                remedy = worded("put commas between the columns and use a decimal point; {0}", remedy);
            throw InputError(worded("there is no column {0}", column_names[wanted]), remedy,
                             Place{file, header.line, 0, ""});
        }
    if (!unused.empty())
        out.remarks.push_back({Remark::Kind::assumed, worded("columns ignored: {0}", unused)});
    return out;
}

// A section as it stands in the table.
struct Entry {
    int line;
    long index;
    MeasuredTract::Section section;
};

class Table {
  public:
    Table(Columns columns, std::string file) : columns_(std::move(columns)), file_(std::move(file)) {}

    void add(csv::Row const& row) {
        if (row.fields.size() != columns_.count)
            throw InputError(
                worded("the line has {0} fields, the header {1}", row.fields.size(), columns_.count),
                worded("give every line a field for each column"), Place{file_, row.line, 0, ""});
        double const length = number(row, section_length, 0.01, 30), wide = number(row, area, 0.001, 100);
        double const index = number(row, section_index, 0, 1e6);
        if (index != static_cast<double>(static_cast<long>(index)))
            throw error(row, section_index, worded("is not a whole number"),
                        worded("number the sections from the glottis 1, 2, 3 .."));
        std::string name;
        if (columns_.place[vowel]) name = text::trim(row.fields[*columns_.place[vowel]].text);
        auto const [known, fresh] = by_name_.try_emplace(name, names_.size());
        if (fresh) {
            if (names_.size() == most_tracts)
                throw error(row, vowel, worded("begins one tract too many"),
                            worded("put at most {0} in a file", most_tracts));
            names_.push_back(name);
            entries_.emplace_back();
        }
        auto& entries = entries_[known->second];
        if (entries.size() == most_sections)
            throw error(row, section_index, worded("is one section too many"),
                        worded("give a tract at most {0}", most_sections));
        entries.push_back(
            {row.line, static_cast<long>(index), {centimetres(length), square_centimetres(wide)}});
    }

    MeasuredTracts tracts() {
        MeasuredTracts out{{}, columns_.remarks};
        for (std::size_t k = 0; k < names_.size(); ++k) {
            auto& entries = entries_[k];
            std::stable_sort(entries.begin(), entries.end(),
                             [](Entry const& a, Entry const& b) { return a.index < b.index; });
            MeasuredTract tract{names_[k], {}};
            long expected = std::min(entries.front().index, 1L);
            std::string const whose = tract.vowel.empty() ? "" : " " + worded("of {0}", tract.vowel);
            for (auto const& entry : entries) {
                if (entry.index < expected)
                    throw InputError(worded("section {0}{1} is given twice", entry.index, whose),
                                     columns_.place[vowel]
                                         ? worded("keep one; rows of another tract need another vowel")
                                         : worded("keep one; several tracts in one file need a vowel column"),
                                     place(entry.line, section_index));
                if (entry.index > expected)
                    throw InputError(worded("section {0}{1} is missing", expected, whose),
                                     worded("number the sections from the glottis 1, 2, 3 .. without gaps"),
                                     place(entry.line, section_index));
                tract.sections.push_back(entry.section);
                ++expected;
            }
            out.tracts.push_back(std::move(tract));
        }
        return out;
    }

    bool empty() const { return names_.empty(); }

  private:
    Place place(int line, Wanted column) const {
        return {file_, line, 0, worded("column {0}", column_names[column])};
    }

    InputError error(csv::Row const& row, Wanted column, std::string const& wrong, std::string remedy) const {
        auto const& field = row.fields[*columns_.place[column]];
        auto shown = field.text.size() > 40 ? field.text.substr(0, 37) + "..." : field.text;
        if (!utf8::valid(shown)) shown = worded("(not UTF-8)");
        return InputError("\"" + shown + "\" " + wrong, std::move(remedy),
                          Place{file_, row.line, field.column, worded("column {0}", column_names[column])});
    }

    double number(csv::Row const& row, Wanted column, double low, double high) const {
        auto s = text::trim(row.fields[*columns_.place[column]].text);
        auto const value = text::eat_number(s);
        if (!value || !s.empty())
            throw error(row, column, worded("is not a number"),
                        worded("write a number with a decimal point and no unit"));
        if (!(*value >= low && *value <= high)) {
            auto const shown = [](double x) {
                return x < 1 && x > 0 ? std::to_string(x).substr(0, x < 0.01 ? 5 : 4)
                                      : std::to_string(static_cast<long>(x));
            };
            std::string const unit = column == section_length ? " cm" : column == area ? " cm²" : "";
            auto const upper = shown(high) + unit;
            throw error(row, column, worded("is out of range"),
                        column == area
                            ? worded("give {0} to {1}; a closed airway has no resonances", shown(low), upper)
                            : worded("give {0} to {1}", shown(low), upper));
        }
        return *value;
    }

    Columns columns_;
    std::string file_;
    std::map<std::string, std::size_t> by_name_;
    std::vector<std::string> names_;
    std::vector<std::vector<Entry>> entries_;
};

} // namespace

MeasuredTracts parse_areas(std::string_view text, std::string const& name) {
    require_size(text.size(), largest_areas, name);
    require_text(text, name);
    csv::Reader reader(text, name);
    auto const header = reader.next();
    if (!header)
        throw InputError(worded("the table is empty"),
                         worded("the first line must name the columns: "
                                "section_length_cm,section_index_from_glottis,area_cm2"),
                         Place{name, 0, 0, ""});
    Table table(columns_of(*header, name), name);
    while (auto const row = reader.next()) table.add(*row);
    if (table.empty())
        throw InputError(worded("the table has a header but no sections"),
                         worded("give a line for each section"), Place{name, 0, 0, ""});
    return table.tracts();
}

} // namespace vowelway::io
