// SPDX-License-Identifier: MIT
// Records in and out of a file, and what a survey computes again.
#include "vowelway/survey/run.hpp"
#include "vowelway/survey/store.hpp"

#include "support/scratch_folder.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/thread_pool.hpp"
#include "vowelway/files/write.hpp"

#include <doctest/doctest.h>

#include <atomic>

using namespace vowelway;

namespace {

plan::PlanRecord record(std::string song, int transpose) {
    plan::PlanRecord r;
    r.key = {std::move(song), "me.yaml", "classical", transpose};
    r.source = {"a1", "b2", "c3", "0.1", 0};
    r.title = "L'invito; \"drop table\" ¿?";
    r.figures[static_cast<std::size_t>(plan::Figure::need)] = 0.25;
    return r;
}

Singer singer() {
    Singer s;
    s.name = "Livia Tarn";
    s.voice = VoiceType::soprano;
    s.range = parse_pitch_range("C4..A5");
    VowelResonances v;
    v.vowel = parse_vowel("a");
    v.r1 = {hertz(850), hertz(50), false, {}};
    v.r2 = {hertz(1400), hertz(60), false, {}};
    s.vowels.push_back(v);
    return s;
}

Passage tune() {
    Passage p;
    for (int i = 0; i < 4; ++i) {
        auto const pitch = p.tuning.pitch(60 + 4.0 * i);
        SungNote n{pitch, p.tuning.name(pitch).pitch};
        n.measure = std::to_string(i + 1);
        n.start = seconds(i);
        n.length = seconds(1);
        n.vowel = SungVowel{.held = parse_vowel("a"), .before = {}, .after = {}};
        p.notes.push_back(n);
    }
    return p;
}

survey::Request request(std::atomic<int>& readings) {
    survey::Request r;
    r.songs.push_back({"tune", "h1", [&](Singer const&) {
                           ++readings;
                           return tune();
                       }});
    r.songs.push_back({"broken", "h2", [&](Singer const&) -> Passage {
                           ++readings;
                           throw InputError("it is broken", "mend it");
                       }});
    r.voices.push_back({"me.yaml", "v1", singer(), {}});
    r.way = {Technique{}, "w1"};
    r.keys = {-1, 2};
    r.program = "0.1";
    return r;
}

} // namespace

TEST_CASE("what is put is there, also after the file was closed") {
    test::ScratchFolder const folder;
    auto const file = folder.path() / "songs.db";
    {
        survey::Store store(file);
        store.put(record("b.mxl", 1));
        store.put(record("a.mxl", -2));
        store.put(record("a.mxl", -2)); // the same again
    }
    auto const store = survey::Store::to_read(file);
    CHECK(store.count() == 2);
    CHECK(store.has(record("a.mxl", -2).key, record("a.mxl", -2).source));
    auto changed = record("a.mxl", -2).source;
    changed.song_hash = "other";
    CHECK_FALSE(store.has(record("a.mxl", -2).key, changed));
    auto const all = store.all();
    CHECK(all[0].key.song == "a.mxl"); // in the order of the keys
    CHECK(all[0].key.transpose == -2);
    CHECK(all[0].title == record("", 0).title);
    CHECK(all[0][plan::Figure::need] == 0.25);
    CHECK_FALSE(all[0][plan::Figure::voiced_s].has_value()); // nothing stays nothing
}

TEST_CASE("a file that is no survey is refused and left as it is") {
    test::ScratchFolder const folder;
    auto const file = folder.path() / "notes.db";
    files::write(file, "these are not the tables of a survey, but words, and enough of them to fill a page");
    CHECK_THROWS_AS(survey::Store{file}, InputError);
    CHECK_THROWS_AS(survey::Store::to_read(file), InputError);
    CHECK_THROWS_AS(survey::Store::to_read(folder.path() / "none.db"), InputError);
}

TEST_CASE("a survey plans every song in every key, and nothing twice") {
    std::atomic<int> readings{0};
    auto asked = request(readings);
    survey::Store store;
    ThreadPool pool(2);
    auto const first = survey::run(asked, store, pool, [](auto const&) {});
    CHECK(first.of == 8);
    CHECK(first.done == 8);
    CHECK(first.there == 0);
    CHECK(first.failed == 1);
    CHECK(readings == 2);
    auto const records = store.all();
    REQUIRE(records.size() == 8);
    for (auto const& r : records) {
        CHECK((r.error.empty() ? r.key.song == "tune" : r.key.song == "broken"));
        CHECK(r[plan::Figure::need].has_value() == r.error.empty());
    }
    CHECK(records[0].error.find("it is broken") != std::string::npos);

    auto const again = survey::run(asked, store, pool, [](auto const&) {});
    CHECK(again.there == 8);
    CHECK(readings == 2); // not even read

    asked.songs[0].hash = "h1 changed"; // the score was edited: only it
    auto const after = survey::run(asked, store, pool, [](auto const&) {});
    CHECK(after.there == 4);
    CHECK(readings == 3);
}

TEST_CASE("the figures are those of the key by itself") {
    std::atomic<int> readings{0};
    survey::Store store;
    InlineExecutor alone;
    survey::run(request(readings), store, alone, [](auto const&) {});
    plan::PlanRequest one;
    one.singer = singer();
    one.passage = tune();
    one.draws = 0;
    auto const key = plan::plan_key(one, 2);
    auto const all = store.all();
    auto const& found = all.back();
    CHECK(found.key.transpose == 2);
    CHECK(*found[plan::Figure::need] == doctest::Approx(key.terms.total()).epsilon(0.001));
    CHECK(*found[plan::Figure::voiced_s] == doctest::Approx(4));
    CHECK(*found[plan::Figure::low_key] == doctest::Approx(62));
    CHECK(*found[plan::Figure::high_key] == doctest::Approx(74));
}

TEST_CASE("two surveys become one, the later counts") {
    test::ScratchFolder const folder;
    auto const a = folder.path() / "a.db", b = folder.path() / "b.db";
    {
        survey::Store one(a), other(b);
        one.put(record("x", 0));
        one.put(record("y", 0));
        auto newer = record("y", 0);
        newer.title = "newer";
        other.put(newer);
        one.settle();
        other.settle();
    }
    survey::Store all;
    all.take(a);
    all.take(b);
    REQUIRE(all.count() == 2);
    CHECK(all.all()[1].title == "newer");
}

// The check value of CRC-64/ECMA-182 for the digits 1 to 9, as catalogues of CRC give it (from memory).
TEST_CASE("a short name of bytes") {
    CHECK(survey::hash_of("123456789") == "6c40df5f0b497347-9");
    CHECK(survey::hash_of("") == "0000000000000000-0");
}
