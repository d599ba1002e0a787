// Archives to test with: an aircraft, a round on the test machine.
#pragma once

#include "../round/rounds.hpp"
#include "archive/open_round.hpp"
#include "base/files.hpp"
#include "base/hash.hpp"

#include <QTemporaryDir>

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

/// A finished and sealed round with made-up signatures: the archive doesn't look into a record. Gives its
/// hash.
inline std::string sealed(archive::OpenRound& round, const std::vector<std::string>& previous, char mark) {
    while (step(round)) {
    }
    std::string hash(64, mark);
    const Instant at = round.state().lastAt;
    if (!round.act(round::Concluded{true, ""}, at)) qFatal("not concluded");
    const Json record{{"content", {{"previous", previous}}}, {"signatures", Json::array()}};
    const archive::RecordInfo info{hash, "OX-ABC", "round", "fit", at, "Robin Example", 0};
    auto done = round.seal({hash, std::string(64, 'c'), "Robin Example"}, at, info, record.dump(), "%PDF-");
    if (!done) qFatal("%s", toText(done.error()).c_str());
    return hash;
}

inline archive::PhotoBytes photo(const std::string& bytes) {
    return {{sha256Hex(bytes), "image/jpeg", static_cast<std::int64_t>(bytes.size())}, bytes};
}

} // namespace ambit::test
