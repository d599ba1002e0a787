// Archives to test with: an aircraft, a round on the test machine.
#pragma once

#include "../round/rounds.hpp"
#include "archive/open_round.hpp"
#include "base/canonical.hpp"
#include "base/files.hpp"
#include "base/hash.hpp"

#include <QTemporaryDir>
#include <nlohmann/json.hpp>

namespace ambit::test {

inline std::string machineText() {
    return readFile(AMBIT_ROOT "/tests/airframe/good.json").value();
}

/// An archive in a folder of its own.
class House {
public:
    House() : machine(test::machine()) {}

    [[nodiscard]] std::string file() const { return folder.filePath("archive.sqlite").toStdString(); }
    [[nodiscard]] archive::Archive open() const {
        auto opened = archive::Archive::open(file());
        if (!opened) qFatal("%s", toText(opened.error()).c_str());
        return std::move(*opened);
    }
    [[nodiscard]] Result<void> addAircraft(archive::Archive& archive) const {
        return archive.addAircraft({"OX-ABC", "0042", machine.sha256, machine.name}, machineText());
    }
    [[nodiscard]] Result<archive::OpenRound> begin(archive::Archive& archive,
                                                   std::int64_t at = 1750000000000) const {
        return archive::OpenRound::begin(archive, machine, opening(machine), {at});
    }

    airframe::Airframe machine;

private:
    QTemporaryDir folder;
};

/// Does the next step of the plan; nullopt at its end.
inline std::optional<Result<void>> step(archive::OpenRound& round) {
    const auto next = round::nextStep(round.state(), round.airframe());
    if (!next) return std::nullopt;
    const Instant at{round.state().lastAt.ms + 1000};
    if (const auto* go = std::get_if<walk::Go>(&*next)) return round.act(round::StandReached{go->stand}, at);
    if (const auto* set = std::get_if<walk::Set>(&*next))
        return round.act(round::SettingChanged{set->setting, set->to}, at);
    return round.act(sound(std::get<walk::Settle>(*next).point), at);
}

/// What a made-up round's record tells: an archive doesn't judge a content or its signatures.
inline file::Told madeUp(const Json& content, Instant at) {
    file::Told told;
    told.sha256 = sha256Hex(canonicalJson(content));
    told.registration = "OX-ABC";
    told.at = at;
    told.signer = {"Robin Example", "pilot", ""};
    told.previous = content["previous"].get<std::vector<std::string>>();
    file::RoundTold round;
    round.fit = true;
    told.what = round;
    return told;
}
inline std::string madeUpJson(const Json& content) {
    return canonicalJson({{"content", content}, {"signatures", Json::array()}});
}

/// A finished round, sealed by a made-up record that bears the mark. Gives its hash.
inline std::string sealed(archive::OpenRound& round, const std::vector<std::string>& previous, char mark) {
    while (step(round)) {
    }
    const Instant at = round.state().lastAt;
    if (!round.act(round::Concluded{true, ""}, at)) qFatal("not concluded");
    const Json content{{"previous", previous}, {"mark", std::string(1, mark)}};
    const file::Told told = madeUp(content, at);
    auto done = round.seal({told.sha256, std::string(64, 'c'), "Robin Example"}, at, told,
                           madeUpJson(content), "%PDF-");
    if (!done) qFatal("%s", toText(done.error()).c_str());
    return told.sha256;
}

inline archive::PhotoBytes photo(const std::string& bytes) {
    return {{sha256Hex(bytes), "image/jpeg", static_cast<std::int64_t>(bytes.size())}, bytes};
}

} // namespace ambit::test
