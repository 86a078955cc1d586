// SPDX-License-Identifier: MIT
#include "survey/columns.hpp"

#include <array>

namespace vowelway::survey {

namespace {

using plan::PlanRecord;

/// A column of words.
struct TextColumn {
    std::string_view name;
    std::string PlanRecord::*direct;
    std::string plan::RecordKey::*of_key;
    std::string plan::RecordSource::*of_source;
    std::string& in(PlanRecord& r) const {
        return direct ? r.*direct : of_key ? r.key.*of_key : r.source.*of_source;
    }
    std::string const& in(PlanRecord const& r) const { return in(const_cast<PlanRecord&>(r)); }
};
using Key = plan::RecordKey;
using Source = plan::RecordSource;

constexpr std::array texts{
    TextColumn{"song", nullptr, &Key::song, nullptr},
    TextColumn{"singer", nullptr, &Key::singer, nullptr},
    TextColumn{"technique", nullptr, &Key::technique, nullptr},
    TextColumn{"title", &PlanRecord::title, nullptr, nullptr},
    TextColumn{"composer", &PlanRecord::composer, nullptr, nullptr},
    TextColumn{"part", &PlanRecord::part, nullptr, nullptr},
    TextColumn{"language", &PlanRecord::language, nullptr, nullptr},
    TextColumn{"name", &PlanRecord::name, nullptr, nullptr},
    TextColumn{"voice", &PlanRecord::voice, nullptr, nullptr},
    TextColumn{"worst_bar", &PlanRecord::worst_bar, nullptr, nullptr},
    TextColumn{"worst_syllable", &PlanRecord::worst_syllable, nullptr, nullptr},
    TextColumn{"error", &PlanRecord::error, nullptr, nullptr},
    TextColumn{"song_hash", nullptr, nullptr, &Source::song_hash},
    TextColumn{"singer_hash", nullptr, nullptr, &Source::singer_hash},
    TextColumn{"technique_hash", nullptr, nullptr, &Source::technique_hash},
    TextColumn{"program", nullptr, nullptr, &Source::program},
};
constexpr int text_count = static_cast<int>(texts.size()), transpose_at = text_count,
              draws_at = text_count + 1, figures_at = text_count + 2,
              columns = figures_at + static_cast<int>(plan::figure_count);

std::string all_names() {
    std::string out;
    for (auto const& t : texts) out += std::string(t.name) + ", ";
    out += "transpose, draws";
    for (auto const& f : plan::figure_names()) out += ", \"" + std::string(f.name) + "\"";
    return out;
}

} // namespace

std::string table_sql() {
    std::string out = "CREATE TABLE IF NOT EXISTS plans (";
    for (auto const& t : texts) out += std::string(t.name) + " TEXT NOT NULL, ";
    out += "transpose INTEGER NOT NULL, draws INTEGER NOT NULL, ";
    for (auto const& f : plan::figure_names()) out += "\"" + std::string(f.name) + "\" REAL, ";
    return out + "PRIMARY KEY (song, singer, technique, transpose)) WITHOUT ROWID";
}

std::string insert_sql() {
    std::string marks = "?";
    for (int i = 1; i < columns; ++i) marks += ", ?";
    return "INSERT OR REPLACE INTO plans (" + all_names() + ") VALUES (" + marks + ")";
}

std::string select_sql() {
    return "SELECT " + all_names() + " FROM plans ORDER BY song, singer, technique, transpose";
}

std::string take_sql() {
    return "INSERT OR REPLACE INTO main.plans (" + all_names() + ") SELECT " + all_names() +
           " FROM other.plans";
}

std::string source_sql() {
    return "SELECT song_hash, singer_hash, technique_hash, program, draws FROM plans "
           "WHERE song = ? AND singer = ? AND technique = ? AND transpose = ?";
}

void bind(Statement& statement, plan::RecordKey const& key) {
    statement.bind(0, std::string_view(key.song));
    statement.bind(1, std::string_view(key.singer));
    statement.bind(2, std::string_view(key.technique));
    statement.bind(3, std::int64_t{key.transpose});
}

plan::RecordSource read_source(Statement const& statement) {
    return {statement.text(0), statement.text(1), statement.text(2), statement.text(3),
            static_cast<int>(statement.integer(4))};
}

void bind(Statement& statement, PlanRecord const& record) {
    for (int i = 0; i < text_count; ++i)
        statement.bind(i, std::string_view(texts[static_cast<std::size_t>(i)].in(record)));
    statement.bind(transpose_at, std::int64_t{record.key.transpose});
    statement.bind(draws_at, std::int64_t{record.source.draws});
    for (std::size_t i = 0; i < plan::figure_count; ++i)
        statement.bind(figures_at + static_cast<int>(i), record.figures[i]);
}

PlanRecord read(Statement const& statement) {
    PlanRecord out;
    for (int i = 0; i < text_count; ++i) texts[static_cast<std::size_t>(i)].in(out) = statement.text(i);
    out.key.transpose = static_cast<int>(statement.integer(transpose_at));
    out.source.draws = static_cast<int>(statement.integer(draws_at));
    for (std::size_t i = 0; i < plan::figure_count; ++i)
        out.figures[i] = statement.real(figures_at + static_cast<int>(i));
    return out;
}

} // namespace vowelway::survey
