// SPDX-License-Identifier: MIT
#include "cli/plan_all.hpp"

#include "core/text.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/files/read.hpp"
#include "vowelway/io/score/sung_parts.hpp"

#include <algorithm>
#include <cctype>

namespace vowelway::cli {

namespace {

bool begins(std::string_view name, std::string_view with) {
    return !with.empty() && name.size() >= with.size() &&
           std::equal(with.begin(), with.end(), name.begin(), [](char a, char b) {
               return std::tolower(static_cast<unsigned char>(a)) ==
                      std::tolower(static_cast<unsigned char>(b));
           });
}

/// How well a name fits a part: its number best, then the longest beginning; 0: not at all.
std::size_t fit(NamedVoice const& voice, io::ScorePart const& part) {
    if (voice.part == part.wish) return 1000;
    if (begins(part.wish, voice.part + ".")) return 900;
    bool const fits = begins(part.name, voice.part) || begins(to_string(part.voice), voice.part);
    return fits ? voice.part.size() : 0;
}

NamedVoice const* best(std::vector<NamedVoice> const& voices, io::ScorePart const& part) {
    NamedVoice const* out = nullptr;
    for (auto const& voice : voices)
        if (auto const f = fit(voice, part); f > (out ? fit(*out, part) : 0)) out = &voice;
    return out;
}

void refuse_unused(std::vector<NamedVoice> const& voices, std::vector<io::ScorePart> const& parts) {
    for (auto const& voice : voices) {
        if (std::any_of(parts.begin(), parts.end(), [&](auto const& part) { return fit(voice, part) > 0; }))
            continue;
        std::string names;
        for (auto const& part : parts) names += (names.empty() ? "" : ", ") + part.name;
        bad_command_line("--voices", worded("no part begins with \"{0}\"; there are {1}", voice.part, names));
    }
}

void put_first(Remarks& remarks, std::string text) {
    remarks.insert(remarks.begin(), {Remark::Kind::assumed, std::move(text)});
}

/// The most verses that a part has.
int verses_of(std::vector<io::ScorePart> const& parts) {
    int most = 0;
    for (auto const& part : parts) most = std::max(most, part.verses);
    return most;
}

/// What is sung by three or more is taken for a choir's: common practice, no source.
std::string technique_for(std::vector<io::ScorePart> const& parts) {
    return parts.size() >= 3 ? "choral" : PlanOptions{}.technique;
}

/// The line of a part with its written words; without any where it lacks the verse asked for.
ReadRequest read_part(PlanOptions options, io::ScorePart const& part, std::string const& singer,
                      int most_verses) {
    options.part = part.wish;
    options.singer = singer;
    auto const verse = verse_of(options.verse);
    bool const lacks = part.words && verse > part.verses && verse <= most_verses;
    if (lacks) options.verse.clear();
    auto out = read_request_without_vowels(options, part.lowest);
    if (lacks)
        for (auto& note : out.request.passage.notes) {
            note.syllables.clear();
            note.typed_ipa.reset();
            note.hummed = false;
        }
    return out;
}

std::size_t syllables_of(Passage const& passage) {
    return static_cast<std::size_t>(
        std::count_if(passage.notes.begin(), passage.notes.end(),
                      [](SungNote const& n) { return !n.syllables.empty() || n.typed_ipa || n.hummed; }));
}

/// Fills in words where a part leaves them to another; says from whom.
class Lender {
  public:
    explicit Lender(std::vector<ReadRequest>& read) {
        for (auto const& one : read) passages_.push_back(one.request.passage); // as written
        for (auto const& passage : passages_)
            if (syllables_of(passage) > 0) with_words_.push_back(&passage);
    }
    std::string lend(Passage& passage, std::size_t index, io::Wanting wanting) const {
        auto others = with_words_;
        others.erase(std::remove(others.begin(), others.end(), &passages_[index]), others.end());
        auto const taken = io::borrow_words(passage, others, wanting);
        if (!taken.from) return {};
        auto const& from = names_.at(static_cast<std::size_t>(taken.from - passages_.data()));
        put_first(
            passage.remarks,
            wanting == io::Wanting::everywhere
                ? worded("it has no words of its own here; those of {0}, which it sings with, are taken",
                         from)
                : worded("{0} syllables are taken from {1}, which it sings with", taken.syllables, from));
        return from;
    }
    void call(std::string name) { names_.push_back(std::move(name)); }

  private:
    std::vector<Passage> passages_;
    std::vector<Passage const*> with_words_;
    std::vector<std::string> names_;
};

void lend_words(std::vector<ReadRequest>& read, std::vector<io::ScorePart> const& parts,
                std::vector<plan::ChoirPart>& out) {
    Lender lender(read);
    for (auto const& part : parts) lender.call(part.name);
    int const most = verses_of(parts);
    for (std::size_t i = 0; i < read.size(); ++i) {
        auto& passage = read[i].request.passage;
        if (syllables_of(passage) == 0) {
            out[i].words_from = lender.lend(passage, i, io::Wanting::everywhere);
            continue;
        }
        out[i].words_from = lender.lend(passage, i, io::Wanting::gaps);
        if (passage.verse != "all" || parts[i].verses == most) continue;
        auto later = lender.lend(passage, i, io::Wanting::later);
        if (out[i].words_from.empty()) out[i].words_from = std::move(later);
    }
}

/// The part with most words decides the language of all that do not say theirs.
void give_vowels_to_all(std::vector<ReadRequest>& read, PlanOptions options) {
    auto const richest = std::max_element(read.begin(), read.end(), [](auto const& a, auto const& b) {
        return syllables_of(a.request.passage) < syllables_of(b.request.passage);
    });
    give_vowels(richest->request.passage, options);
    for (auto one = read.begin(); one != read.end(); ++one) {
        if (one == richest) continue;
        auto own = options;
        if (own.language.empty() && one->request.passage.language.empty())
            own.language = richest->request.passage.language;
        give_vowels(one->request.passage, own);
    }
}

bool has_vowel(Passage const& passage) {
    return std::any_of(passage.notes.begin(), passage.notes.end(),
                       [](SungNote const& n) { return n.vowel.has_value(); });
}

/// Parts of which no vowel is known have no plan; says so.
void leave_out_wordless(std::vector<plan::ChoirPart>& parts, std::vector<ReadRequest>& read) {
    std::string left_out;
    for (std::size_t i = read.size(); i-- > 0;) {
        if (has_vowel(read[i].request.passage)) continue;
        left_out = parts[i].name + (left_out.empty() ? "" : ", ") + left_out;
        auto const at = static_cast<std::ptrdiff_t>(i);
        read.erase(read.begin() + at);
        parts.erase(parts.begin() + at);
    }
    if (read.empty())
        throw InputError(worded("no part of the score has words"),
                         worded("plan one part, with the vowels to sing in --vowels"));
    if (!left_out.empty())
        put_first(read.front().request.passage.remarks,
                  worded("left out, for it has no words: {0}", left_out));
}

} // namespace

std::vector<NamedVoice> parse_voices(std::string const& list) {
    std::vector<NamedVoice> out;
    for (std::string_view rest = list; !rest.empty();) {
        auto const comma = rest.find(',');
        auto const one = text::trim(rest.substr(0, comma));
        auto const equals = one.find('=');
        NamedVoice voice{std::string(text::trim(one.substr(0, equals))),
                         std::string(equals == one.npos ? "" : text::trim(one.substr(equals + 1)))};
        if (voice.part.empty() || voice.singer.empty())
            bad_command_line("--voices",
                             worded("\"{0}\" names no part and singer; write S=soprano, A=alto", one));
        out.push_back(std::move(voice));
        rest.remove_prefix(comma == rest.npos ? rest.size() : comma + 1);
    }
    return out;
}

AllParts plan_all(PlanOptions options, std::vector<NamedVoice> const& voices, Executor& executor) {
    auto const parts = io::sung_parts(files::read(options.score, io::largest_score_file), options.score);
    refuse_unused(voices, parts);
    bool const chosen = !options.technique.empty();
    if (!chosen) options.technique = technique_for(parts);
    int const most_verses = verses_of(parts);
    std::vector<plan::ChoirPart> planned(parts.size());
    std::vector<ReadRequest> read(parts.size());
    executor.run(parts.size(), [&](std::size_t i) {
        auto const* voice = best(voices, parts[i]);
        planned[i].name = parts[i].name;
        planned[i].voice_guessed = !voice;
        read[i] = read_part(options, parts[i], voice ? voice->singer : std::string(to_string(parts[i].voice)),
                            most_verses);
        auto& passage = read[i].request.passage;
        passage.part = parts[i].name;
        if (!voice)
            put_first(passage.remarks, worded("taken to be sung by an average {0} (--voices chooses)",
                                              reworded(to_string(parts[i].voice))));
    });
    lend_words(read, parts, planned);
    give_vowels_to_all(read, options);
    leave_out_wordless(planned, read);
    if (!chosen && options.technique != PlanOptions{}.technique)
        for (auto& one : read)
            put_first(one.request.passage.remarks,
                      worded("{0} parts: planned as a choir, in the technique {1} (--technique chooses)",
                             parts.size(), options.technique));
    AllParts out;
    for (auto& one : read) out.read_with.push_back(one.score);
    plan::PlanCache cache;
    plan::Means const means{.executor = &executor, .cache = &cache};
    auto const technique = read.front().request.technique;
    executor.run(read.size(),
                 [&](std::size_t i) { planned[i].plan = make_plan(std::move(read[i].request), means); });
    out.choir = choir_of(std::move(planned), technique, means);
    return out;
}

} // namespace vowelway::cli
