// SPDX-License-Identifier: MIT
#include "vowelway/survey/run.hpp"

#include "vowelway/core/wording.hpp"

#include <mutex>

namespace vowelway::survey {

namespace {

/// Where and what, without the remedy: one line of a table.
std::string first_line(std::string const& message) { return message.substr(0, message.find('\n')); }

/// One singer's part of a survey.
class OneVoice {
  public:
    OneVoice(Request const& request, Voice const& voice, Store& store, Executor& executor)
        : request_(&request), voice_(&voice), store_(&store), executor_(&executor) {}

    template <class Told> void run(Progress& progress, Told const& told) {
        find_missing(progress);
        told();
        read_songs(progress, told);
        executor_->run(missing_.size(), [&](std::size_t i) {
            auto const& piece = missing_[i];
            if (!passages_[piece.song]) return; // told by its error
            auto record = plan_one(piece);
            std::lock_guard const alone(mutex_);
            store_->put(record);
            ++progress.done;
            told();
        });
    }

  private:
    struct Piece {
        std::size_t song;
        int semitones;
    };

    plan::RecordKey key_of(std::size_t song, int semitones) const {
        return {request_->songs[song].name, voice_->name, request_->way.technique.name, semitones};
    }
    plan::RecordSource source_of(std::size_t song) const {
        return {request_->songs[song].hash, voice_->hash, request_->way.hash, request_->program,
                request_->draws};
    }

    void find_missing(Progress& progress) {
        for (std::size_t song = 0; song < request_->songs.size(); ++song)
            for (int k = request_->keys.lowest; k <= request_->keys.highest; ++k)
                if (store_->has(key_of(song, k), source_of(song)))
                    ++progress.there, ++progress.done;
                else
                    missing_.push_back({song, k});
    }

    /// Of the songs that miss a record; one that cannot be read becomes a record with its error.
    template <class Told> void read_songs(Progress& progress, Told const& told) {
        passages_.resize(request_->songs.size());
        std::vector<std::size_t> wanted;
        for (auto const& piece : missing_)
            if (wanted.empty() || wanted.back() != piece.song) wanted.push_back(piece.song);
        executor_->run(wanted.size(), [&](std::size_t i) {
            auto const song = wanted[i];
            try {
                auto passage = request_->songs[song].read(voice_->singer);
                if (passage.notes.empty())
                    throw InputError(worded("there is no note to plan"),
                                     worded("give a score with a vocal line"));
                passages_[song] = std::move(passage);
            } catch (InputError const& error) {
                std::lock_guard const alone(mutex_);
                put_error(song, error);
                ++progress.failed;
                for (auto const& piece : missing_) progress.done += piece.song == song ? 1 : 0;
                told();
            }
        });
    }

    /// A record for each key, so that none of them is tried again until the file changes.
    void put_error(std::size_t song, InputError const& error) {
        for (int k = request_->keys.lowest; k <= request_->keys.highest; ++k) {
            plan::PlanRecord record;
            record.key = key_of(song, k);
            record.source = source_of(song);
            record.name = voice_->singer.name;
            record.voice = std::string(to_string(voice_->singer.voice));
            record.error = first_line(error.what());
            store_->put(record);
        }
    }

    plan::PlanRecord plan_one(Piece const& piece) const {
        plan::PlanRequest asked;
        asked.singer = voice_->singer;
        asked.reference = voice_->reference;
        asked.passage = *passages_[piece.song];
        asked.technique = request_->way.technique;
        asked.draws = request_->draws;
        auto const key = plan::plan_key(std::move(asked), piece.semitones, {nullptr, &cache_});
        return record_of(key_of(piece.song, piece.semitones), source_of(piece.song), voice_->singer,
                         *passages_[piece.song], key);
    }

    Request const* request_;
    Voice const* voice_;
    Store* store_;
    Executor* executor_;
    mutable plan::PlanCache cache_;
    std::mutex mutex_;
    std::vector<Piece> missing_;
    std::vector<std::optional<Passage>> passages_;
};

} // namespace

Progress run(Request const& request, Store& store, Executor& executor,
             std::function<void(Progress const&)> const& told) {
    Progress progress;
    auto const keys = static_cast<std::size_t>(request.keys.highest - request.keys.lowest + 1);
    progress.of = request.songs.size() * request.voices.size() * keys;
    for (auto const& voice : request.voices)
        OneVoice(request, voice, store, executor).run(progress, [&] { told(progress); });
    return progress;
}

} // namespace vowelway::survey
