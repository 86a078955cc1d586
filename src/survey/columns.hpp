// SPDX-License-Identifier: MIT
// The columns of the table `plans`: keys, texts, figures. Private to the layer.
#pragma once

#include "survey/sqlite.hpp"
#include "vowelway/plan/record.hpp"

#include <string>

namespace vowelway::survey {

/// CREATE TABLE IF NOT EXISTS plans (..)
std::string table_sql();
/// INSERT OR REPLACE INTO plans VALUES (?, ..)
std::string insert_sql();
/// SELECT .. in the order of the keys
std::string select_sql();
/// INSERT OR REPLACE INTO plans .. SELECT .. FROM other.plans
std::string take_sql();
/// SELECT of what the record of a key (four parameters) was computed from
std::string source_sql();

void bind(Statement& statement, plan::RecordKey const& key);
plan::RecordSource read_source(Statement const& statement);

void bind(Statement& statement, plan::PlanRecord const& record);
plan::PlanRecord read(Statement const& statement);

} // namespace vowelway::survey
