// The walker's end with sockets behind it: another device reads the code from the picture, follows, says
// something, countersigns; both hold the same in the end.
#include "house.hpp"

#include "archive/import.hpp"
#include "archive/sealing.hpp"
#include "base/canonical.hpp"
#include "base/hash.hpp"
#include "link/walker_link.hpp"
#include "link/watcher_link.hpp"
#include "model/qr.hpp"
#include "record/asked.hpp"

#include <QDateTime>
#include <QSignalSpy>
#include <QtTest>
#include <nlohmann/json.hpp>

namespace ambit::test {

class TestViewFollowed : public QObject {
    Q_OBJECT

    static QString word() { return QStringLiteral("a good passphrase"); }
    static std::vector<std::string> logOf(const archive::Archive& of, const std::string& round) {
        std::vector<std::string> log;
        if (const auto events = of.events(round))
            for (const auto& event : *events)
                log.push_back(canonicalJson(toJson(event)));
        return log;
    }

private slots:
    void fromTheCodeToTheSecondSignature() {
        House house;
        house.clock.at = Instant{QDateTime::currentMSecsSinceEpoch()};
        const auto path = [&](const char* name) {
            return std::filesystem::path(house.folder.filePath(QString::fromLatin1(name)).toStdString());
        };
        house.linkToWatchers =
            [&](const record::Signer& me) -> Result<std::unique_ptr<view::LinkToWatchers>> {
            link::WalkerSettings settings;
            settings.archive = path("archive.sqlite");
            settings.watchers = path("watchers.json");
            settings.address = QHostAddress(QHostAddress::LocalHost);
            settings.port = 0;
            settings.shown = {watch::Address::v4({127, 0, 0, 1})};
            auto link = link::WalkerLink::open(settings, me, house.clock.at);
            if (!link) return tl::unexpected(link.error());
            return std::move(*link);
        };
        house.restart();
        auto& sharing = *house.app->sharing();
        QVERIFY(house.app->signing()->newKey(QStringLiteral("Robin Example"), word()));
        QVERIFY(house.begin());
        QVERIFY(house.touchCard());
        QVERIFY2(sharing.start(word(), {}), qPrintable(house.app->problem()));
        QVERIFY2(sharing.invite(), qPrintable(house.app->problem()));

        // The other device.
        const auto ines =
            record::unlock(record::newKeyFile("Ines Example", "another passphrase", house.clock.at).value(),
                           "another passphrase")
                .value();
        const auto watcher = std::move(
            link::WatcherLink::open({path("watched.sqlite"), path("walkers.json")}, ines, house.clock.at)
                .value());
        QSignalSpy heard(watcher.get(), &view::LinkToWalkers::heard);
        std::optional<watch::RecordHere> here;
        connect(watcher.get(), &view::LinkToWalkers::recordHere, this,
                [&](std::uint64_t, const watch::RecordHere& record) { here = record; });
        const QByteArray url = sharing.codePicture().toLatin1();
        const QImage code = QImage::fromData(QByteArray::fromBase64(url.mid(url.indexOf(',') + 1)), "PNG");
        const auto invitation =
            watch::readInvitation(view::readQr(code.scaled(code.size() * 5)).toStdString());
        QVERIFY(invitation.has_value());
        const auto walker = watcher->join(*invitation);
        QTRY_COMPARE_WITH_TIMEOUT(sharing.watchingText(), QStringLiteral("Ines Example follows"), 20000);
        QTRY_VERIFY(sharing.codePicture().isEmpty()); // used
        QCOMPARE(sharing.known().size(), 1);

        const auto watched = archive::Archive::open(path("watched.sqlite")).value();
        const std::string round = house.app->round()->roundId().toStdString();
        const auto same = [&] { return logOf(watched, round) == logOf(*house.archive, round); };
        QTRY_VERIFY_WITH_TIMEOUT(same(), 20000);
        QVERIFY(house.touchCard());
        QTRY_VERIFY_WITH_TIMEOUT(same(), 20000);

        round::Statement statement;
        statement.round = round;
        statement.id = sha256Hex("said").substr(0, 32);
        statement.kind = round::Statement::Kind::remark;
        statement.words = "Take your time.";
        statement.at = house.clock.at;
        statement.who = {"Ines Example", "instructor", ""};
        const auto said = record::said(statement, ines).value();
        watcher->say(walker, {statement.id, said.statement, said.jws});
        QTRY_COMPARE_WITH_TIMEOUT(heard.size(), 1, 20000);
        QCOMPARE(heard[0][2].value<std::string>(), std::string()); // in the log
        QCOMPARE(house.app->round()->asks().size(), 1);
        QTRY_VERIFY_WITH_TIMEOUT(same(), 20000);

        QVERIFY(house.walkTo({}));
        QVERIFY2(house.app->round()->conclude(true, {}), qPrintable(house.app->problem()));
        QVERIFY2(house.app->signing()->sign(word()), qPrintable(house.app->problem()));
        const std::string id = house.app->signing()->recordId().toStdString();
        QTRY_VERIFY_WITH_TIMEOUT(here && here->sha256 == id, 20000);
        QCOMPARE(here->json, *house.archive->recordJson(id));
        QTemporaryDir elsewhere;
        auto signs =
            archive::Archive::open(elsewhere.filePath(QStringLiteral("signs.sqlite")).toStdString()).value();
        QVERIFY(archive::takeRecord(signs, id, {here->json, here->pdf}).has_value());
        QVERIFY(
            archive::countersign(signs, id, ines, {"Ines Example", "instructor", "DEMO-FI-1"}, house.clock.at)
                .has_value());
        const watch::RecordHere both{id, *signs.recordJson(id), *signs.recordPdf(id)};
        watcher->offer(walker, std::string(32, 'c'), both);
        QTRY_COMPARE_WITH_TIMEOUT(heard.size(), 2, 20000);
        QCOMPARE(heard[1][2].value<std::string>(), std::string()); // kept
        QCOMPARE(*house.archive->recordJson(id), both.json);
        QCOMPARE(*house.archive->recordPdf(id), both.pdf);
        QTRY_VERIFY_WITH_TIMEOUT(here->json == both.json && here->pdf == both.pdf, 20000); // told of it anew

        QSignalSpy states(watcher.get(), &view::LinkToWalkers::stateChanged);
        sharing.takeBack(sharing.known()[0].toMap().value(QStringLiteral("id")).toString());
        QTRY_VERIFY(sharing.watchingText().isEmpty());
        QTRY_VERIFY(!states.isEmpty() &&
                    states.last()[1].value<watch::LinkState>() == watch::LinkState::over);
        QVERIFY(sharing.known().isEmpty());
    }
};

} // namespace ambit::test

QTEST_MAIN(ambit::test::TestViewFollowed)
#include "tst_view_followed.moc"
