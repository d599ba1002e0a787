// A record of a full round with four photos, to JSON and PDF, beyond decoding the photos.
#include "airframe/read.hpp"
#include "archive/sealing.hpp"
#include "base/files.hpp"
#include "bench.hpp"
#include "paper/pages.hpp"
#include "script/player.hpp"

#include <QBuffer>
#include <QImageReader>

namespace ambit::bench {

namespace {

/// Time to decode every photo of the round once.
double decoding(const archive::OpenRound& round) {
    QElapsedTimer timer;
    double spent = 0;
    for (const round::Event& event : round.events()) {
        const auto* settled = std::get_if<round::Settled>(&event.what);
        if (settled == nullptr) continue;
        for (const round::Photo& photo : settled->photos) {
            const auto bytes = round.store().photo(photo.sha256);
            if (!bytes) continue;
            QByteArray data(bytes->data(), static_cast<qsizetype>(bytes->size()));
            QBuffer buffer(&data);
            timer.start();
            (void)QImageReader(&buffer).read();
            spent += milliseconds(timer);
        }
    }
    return spent;
}

} // namespace

bool record(const QString& workFolder) {
    const std::string folder = (demoFolder() + QStringLiteral("/helicopter")).toStdString();
    auto text = readFile(folder + "/airframe.json");
    auto airframe = airframe::readFrom(folder + "/airframe.json");
    auto script = script::readScriptFrom(folder + "/round.jsonl");
    if (!text || !airframe || !script) return false;
    auto key = ambit::record::newKeyFile(script->open.who.name, "bench passphrase", script->open.at.at);
    auto signer = ambit::record::unlock(*key, "bench passphrase");
    if (!signer) return false;

    std::vector<double> whole, decode;
    std::size_t points = 0;
    for (int run = 0; run < 7; ++run) {
        auto archive =
            archive::Archive::open((workFolder + QStringLiteral("/record-%1.sqlite").arg(run)).toStdString());
        if (!archive) return false;
        auto round = script::walkScript(*archive, *airframe, *text, *script, {});
        if (!round) {
            std::fprintf(stderr, "ambit-bench: %s\n", toText(round.error()).c_str());
            return false;
        }
        points = round->state().points.size();
        decode.push_back(decoding(*round));
        QElapsedTimer timer;
        timer.start();
        auto sealed = archive::sealRound(*round, *signer, paper::drawRecord, round->state().lastAt);
        whole.push_back(milliseconds(timer));
        if (!sealed) {
            std::fprintf(stderr, "ambit-bench: %s\n", toText(sealed.error()).c_str());
            return false;
        }
    }
    char detail[160];
    std::snprintf(detail, sizeof detail,
                  "%zu points: whole %.0f ms (worst %.0f) less %.0f ms to decode the photos", points,
                  median(whole), quantile(whole, 1), median(decode));
    return report("record to JSON and PDF", median(whole) - median(decode), "ms", 300, detail);
}

} // namespace ambit::bench
