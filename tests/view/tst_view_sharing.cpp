// The walker's end of a live watch as the screens use it, over a link without a network: what is posted, what
// is heard, who is let in.
#include "fake_link.hpp"
#include "house.hpp"

#include "archive/import.hpp"
#include "archive/sealing.hpp"
#include "model/qr.hpp"
#include "record/asked.hpp"

#include "base/hash.hpp"

#include <QtTest>

namespace ambit::test {

class TestViewSharing : public QObject {
    Q_OBJECT

    static QString word() { return QStringLiteral("a good passphrase"); }

    /// An app with a network, and Robin's key.
    struct Shared {
        Network network; // before the app, which may hold a link of it
        House house;
        Shared() {
            house.linkToWatchers = network.opener();
            house.restart();
            if (!house.app->signing()->newKey(QStringLiteral("Robin Example"), word())) qFatal("no key");
        }
        [[nodiscard]] view::SharingView& sharing() { return *house.app->sharing(); }
        [[nodiscard]] view::RoundView& round() { return *house.app->round(); }
        [[nodiscard]] bool start() { return sharing().start(word(), {}); }
        [[nodiscard]] QStringList posted() const { return network.callsOf(QStringLiteral("committed")); }
        /// "committed 3", "committed 4", … to the round's last.
        [[nodiscard]] QStringList allSince(std::size_t known) const {
            QStringList list;
            for (std::size_t seq = known + 1; seq <= house.events(); ++seq)
                list << QStringLiteral("committed %1").arg(seq);
            return list;
        }
        [[nodiscard]] QString goOn() { return QStringLiteral("goOn ") + round().roundId(); }
    };
    /// Somebody else, with a key of their own.
    static record::Signer signerOf(const std::string& name) {
        static std::map<std::string, record::Signer> made;
        if (const auto known = made.find(name); known != made.end()) return known->second;
        const auto at = parseLocalInstant("2026-01-01T00:00:00+00:00")->at;
        const auto file = record::newKeyFile(name, "another passphrase", at);
        return made.emplace(name, record::unlock(*file, "another passphrase").value()).first->second;
    }
    static watch::Say remark(const view::RoundView& round, const record::Signer& by, const std::string& words,
                             Instant at) {
        round::Statement statement;
        statement.round = round.roundId().toStdString();
        statement.id = sha256Hex(words).substr(0, 32);
        statement.kind = round::Statement::Kind::remark;
        statement.words = words;
        statement.at = at;
        statement.who = {by.certificate().name, "instructor", ""};
        const auto said = record::said(statement, by).value();
        return {statement.id, said.statement, said.jws};
    }
    static QString line(const QVariant& row, const char* field) {
        return row.toMap().value(QLatin1String(field)).toString();
    }
    static void settle() { QCoreApplication::processEvents(); }

private slots:
    void onlyWhereThereIsANetwork() {
        House house;
        QVERIFY(!house.app->sharing()->possible());
        QVERIFY(house.app->signing()->newKey(QStringLiteral("Robin Example"), word()));
        QVERIFY(!house.app->sharing()->start(word(), {}));
        QVERIFY(house.app->problem().contains(QStringLiteral("network")));
        const Shared shared;
        QVERIFY(shared.house.app->sharing()->possible());
    }

    void theKeyOpensIt() {
        Shared shared;
        QVERIFY(!shared.sharing().start(QStringLiteral("a wrong passphrase"), {}));
        QVERIFY(!shared.house.app->problem().isEmpty());
        QVERIFY(!shared.sharing().isOpen());
        QCOMPARE(shared.network.calls, QStringList());
        QVERIFY(!shared.sharing().start(word(), QStringLiteral("nobody's")));
        auto& signing = *shared.house.app->signing();
        QVERIFY(signing.newKey(QStringLiteral("Mo Sample"), QStringLiteral("another passphrase")));
        QVERIFY(shared.sharing().start(QStringLiteral("another passphrase"),
                                       signing.keyOf(QStringLiteral("Mo Sample"))));
        QVERIFY(shared.sharing().isOpen());
        QCOMPARE(shared.network.openedBy, std::string("Mo Sample"));
        QVERIFY(shared.start()); // it is open already
        QCOMPARE(shared.network.calls, QStringList(QStringLiteral("open")));
    }

    void theRoundComesFirst() {
        Shared shared;
        QVERIFY(shared.house.begin());
        for (int i = 0; i < 5; ++i)
            QVERIFY(shared.house.touchCard());
        const std::size_t before = shared.house.events();
        QVERIFY(shared.start());
        QCOMPARE(shared.network.calls, QStringList({QStringLiteral("open"), shared.goOn()}));
        for (int i = 0; i < 5; ++i)
            QVERIFY(shared.house.touchCard());
        QVERIFY(shared.house.events() > before + 4);
        QCOMPARE(shared.posted(), shared.allSince(before));
        QCOMPARE(shared.network.callsOf(QStringLiteral("goOn")).size(), 1);
    }

    void theLinkComesFirst() {
        Shared shared;
        QVERIFY(shared.start());
        QVERIFY(shared.house.begin());
        const std::size_t begun = shared.house.events();
        QVERIFY(shared.house.touchCard());
        // Told when the touch returns, without the event loop; looking at the card tells of nothing.
        QCOMPARE(shared.posted(), shared.allSince(begun));
        QVERIFY(shared.round().choosePoint({}));
        QCOMPARE(shared.posted(), shared.allSince(begun));
        // Two events by one touch, refused ones, many at once.
        QVERIFY(shared.round().blockStand(shared.round().targetStandId().isEmpty()
                                              ? shared.round().standId()
                                              : shared.round().targetStandId(),
                                          QStringLiteral("Ice.")));
        QVERIFY(!shared.round().conclude(true, {}));
        QVERIFY(shared.round().restNotInspected(QStringLiteral("Dark."), QStringLiteral("None.")));
        QVERIFY(shared.house.events() > begun + 20);
        QCOMPARE(shared.posted(), shared.allSince(begun));
        QCOMPARE(shared.network.callsOf(QStringLiteral("goOn")), QStringList(shared.goOn()));
    }

    void takenUpAgain() {
        Shared shared;
        QVERIFY(shared.house.begin());
        QVERIFY(shared.house.touchCard());
        const QString id = shared.round().roundId();
        shared.house.restart();
        QVERIFY(shared.start());
        QCOMPARE(shared.network.callsOf(QStringLiteral("goOn")), QStringList());
        QVERIFY(shared.house.app->resume(id));
        QCOMPARE(shared.network.callsOf(QStringLiteral("goOn")), QStringList(shared.goOn()));
        const std::size_t known = shared.house.events();
        QVERIFY(shared.house.touchCard());
        QCOMPARE(shared.posted(), shared.allSince(known));
        shared.house.app->leaveRound();
        QVERIFY(shared.house.app->resume(id));
        QCOMPARE(shared.network.callsOf(QStringLiteral("goOn")).size(), 2);
        settle();
    }

    void somebodyFollows() {
        Shared shared;
        auto& sharing = shared.sharing();
        QVERIFY(shared.house.begin());
        QVERIFY(shared.start());
        QSignalSpy words(&sharing, &view::SharingView::watchingTextChanged);
        shared.network.link->comes("Kim Example", 1);
        QCOMPARE(sharing.watchingText(), QString()); // from another thread: not at once
        settle();
        QCOMPARE(sharing.watchingText(), QStringLiteral("Kim Example follows"));
        QCOMPARE(words.size(), 1);
        const std::size_t events = shared.house.events();
        QCOMPARE(sharing.watching().size(), 1);
        QCOMPARE(line(sharing.watching()[0], "behind").toInt(), static_cast<int>(events) - 1);
        QCOMPARE(line(sharing.watching()[0], "id").toStdString(), sha256Hex("Kim Example"));
        QVERIFY(shared.house.touchCard());
        QCOMPARE(line(sharing.watching()[0], "behind").toInt(), static_cast<int>(shared.house.events()) - 1);
        shared.network.link->keeps("Kim Example", static_cast<std::int64_t>(shared.house.events()));
        settle();
        QCOMPARE(line(sharing.watching()[0], "behind"), QStringLiteral("0"));
        shared.network.link->comes("Ines Example");
        settle();
        QCOMPARE(sharing.watchingText(), QStringLiteral("Kim Example and Ines Example follow"));
        shared.network.link->comes("Sam Sample");
        settle();
        QCOMPARE(sharing.watchingText(), QStringLiteral("3 follow"));
        // After a cut, the old connection beside the new one: one device.
        shared.network.link->comes("Sam Sample", 2);
        settle();
        QCOMPARE(sharing.watchingText(), QStringLiteral("3 follow"));
        QCOMPARE(line(sharing.watching()[2], "connection"), QStringLiteral("4"));
        shared.network.link->leaves("Sam Sample");
        shared.network.link->leaves("Kim Example");
        settle();
        QCOMPARE(sharing.watchingText(), QStringLiteral("Ines Example follows"));
        QCOMPARE(sharing.known().size(), 3);
        QVERIFY(!sharing.known()[0].toMap().value(QStringLiteral("here")).toBool());
        QVERIFY(sharing.known()[1].toMap().value(QStringLiteral("here")).toBool());
    }

    void takenBack() {
        Shared shared;
        shared.network.known = {FakeLink::peer("Kim Example"), FakeLink::peer("Ines Example")};
        QVERIFY(shared.start());
        QCOMPARE(shared.sharing().known().size(), 2); // as they were known at first
        shared.network.link->comes("Kim Example");
        settle();
        shared.sharing().takeBack(QString::fromStdString(sha256Hex("Kim Example")));
        settle();
        QCOMPARE(shared.network.callsOf(QStringLiteral("takeBack")),
                 QStringList(QStringLiteral("takeBack ") + QString::fromStdString(sha256Hex("Kim Example"))));
        QCOMPARE(shared.sharing().watchingText(), QString());
        QCOMPARE(shared.sharing().known().size(), 1);
        QCOMPARE(line(shared.sharing().known()[0], "name"), QStringLiteral("Ines Example"));
    }

    void anInvitation() {
        Shared shared;
        auto& sharing = shared.sharing();
        QVERIFY(!sharing.invite()); // not open
        QVERIFY(shared.start());
        QCOMPARE(sharing.codePicture(), QString());
        QVERIFY(sharing.invite());
        const auto shownIs = [&](const watch::Invitation& invitation) {
            const QByteArray url = sharing.codePicture().toLatin1();
            const auto png = QByteArray::fromBase64(url.mid(url.indexOf(',') + 1));
            const QImage picture = QImage::fromData(png, "PNG");
            return view::readQr(picture.scaled(picture.size() * 4)).toStdString() ==
                   *watch::qrText(invitation);
        };
        QVERIFY(shownIs(shared.network.invitation));
        QCOMPARE(sharing.codeText().toStdString(), *watch::typedCode(shared.network.invitation));
        QCOMPARE(sharing.codeSeconds(), 300);
        QTRY_COMPARE(sharing.codeSeconds(), 298);
        // Another one in its place begins anew.
        const QString before = sharing.codePicture();
        QVERIFY(sharing.invite());
        QVERIFY(sharing.codePicture() != before);
        QVERIFY(shownIs(shared.network.invitation));
        QCOMPARE(sharing.codeSeconds(), 300);
        // Used, it goes by itself.
        shared.network.link->comes("Kim Example");
        settle();
        QCOMPARE(sharing.codePicture(), QString());
        QCOMPARE(sharing.codeText(), QString());
        QCOMPARE(sharing.codeSeconds(), 0);
        QCOMPARE(shared.network.callsOf(QStringLiteral("closeInvitation")).size(), 0);
        // Put away, it lets nobody in.
        QVERIFY(sharing.invite());
        sharing.putCodeAway();
        QCOMPARE(sharing.codePicture(), QString());
        QCOMPARE(shared.network.callsOf(QStringLiteral("closeInvitation")).size(), 1);
        // Nor does one that can't be shown.
        shared.network.isOnline = false;
        QVERIFY(!sharing.invite());
        QVERIFY(shared.house.app->problem().contains(QStringLiteral("no network")));
        QCOMPARE(shared.network.callsOf(QStringLiteral("closeInvitation")).size(), 2);
    }

    void somebodyIsNotLetIn() {
        Shared shared;
        QVERIFY(shared.start());
        QVERIFY(shared.sharing().invite());
        emit shared.network.link->refused(
            QStringLiteral("192.168.43.9:40112 Mo Sample"),
            {ErrorCode::refused, "This isn't the invitation's word.", "", "Ask."});
        settle();
        QCOMPARE(
            shared.sharing().lastRefusal(),
            QStringLiteral("07:30\u00a0· 192.168.43.9:40112 Mo Sample: This isn't the invitation's word."));
        QVERIFY(!shared.sharing().codePicture().isEmpty());
        QVERIFY(shared.house.app->problem().isEmpty()); // nothing of the walk's
        QVERIFY(shared.sharing().invite());
        QCOMPARE(shared.sharing().lastRefusal(), QString());
    }

    void whatIsSaidIsHeard() {
        Shared shared;
        const auto ines = signerOf("Ines Example");
        QVERIFY(shared.house.begin());
        QVERIFY(shared.start());
        const std::size_t before = shared.house.events();
        const auto say = remark(shared.round(), ines, "Take your time.", shared.house.clock.at);
        emit shared.network.link->said(7, say, ines.certificate());
        QCOMPARE(shared.house.events(), before);
        settle();
        QCOMPARE(shared.house.events(), before + 1);
        // In the log first, then heard.
        QCOMPARE(shared.network.calls.mid(2),
                 QStringList({QStringLiteral("committed %1").arg(before + 1),
                              QStringLiteral("heard 7 ") + QString::fromStdString(say.id)}));
        QCOMPARE(shared.house.spoken,
                 QStringList(QStringLiteral("From Ines Example. A remark. Take your time.")));
        // The same again is there already; another's is refused, in words; so is one without a round.
        emit shared.network.link->said(8, say, ines.certificate());
        const auto forged = remark(shared.round(), ines, "Hurry up.", shared.house.clock.at);
        emit shared.network.link->said(9, forged, signerOf("Mo Sample").certificate());
        settle();
        QCOMPARE(shared.house.events(), before + 1);
        QCOMPARE(shared.network.callsOf(QStringLiteral("heard 8")),
                 QStringList(QStringLiteral("heard 8 ") + QString::fromStdString(say.id)));
        const auto answered =
            shared.network.callsOf(QStringLiteral("heard 9 ") + QString::fromStdString(forged.id));
        QCOMPARE(answered.size(), 1);
        QVERIFY(answered[0].size() > 60); // why
        QVERIFY(shared.house.app->problem().isEmpty());
        QCOMPARE(shared.house.spoken.size(), 1);
        shared.sharing().setReadAloud(false);
        const auto quiet = remark(shared.round(), ines, "Wind from the left.", shared.house.clock.at);
        emit shared.network.link->said(11, quiet, ines.certificate());
        settle();
        QCOMPARE(shared.house.events(), before + 2); // it is shown, and not read aloud
        QCOMPARE(shared.house.spoken.size(), 1);
        shared.house.app->leaveRound();
        emit shared.network.link->said(10, forged, ines.certificate());
        settle();
        QVERIFY(shared.network.calls.last().startsWith(QStringLiteral("heard 10 ")));
        QVERIFY(shared.network.calls.last().contains(QStringLiteral("not in hand")));
    }

    void theRecordComesBackSigned() {
        Shared shared;
        QVERIFY(shared.start());
        QVERIFY2(shared.house.wholeRound(), qPrintable(shared.house.app->problem()));
        const std::string id = shared.house.app->signing()->recordId().toStdString();
        QCOMPARE(shared.posted().size() + 1, static_cast<int>(shared.house.events())); // all but the first
        QCOMPARE(shared.network.callsOf(QStringLiteral("sealed")), QStringList()); // by the event `signed`
        QVERIFY(shared.house.app->file()->open(QString::fromStdString(id)));

        // On the other device.
        QTemporaryDir elsewhere;
        auto there =
            archive::Archive::open(elsewhere.filePath(QStringLiteral("watched.sqlite")).toStdString())
                .value();
        const std::vector<std::string> files{*shared.house.archive->recordJson(id),
                                             *shared.house.archive->recordPdf(id)};
        QVERIFY(archive::takeRecord(there, id, files).has_value());
        const auto ines = signerOf("Ines Example");
        QVERIFY(archive::countersign(there, id, ines, {"Ines Example", "instructor", "DEMO-FI-1"},
                                     shared.house.clock.at)
                    .has_value());
        const std::vector<std::string> both{*there.recordJson(id), *there.recordPdf(id)};

        const QSignalSpy told(&shared.sharing(), &view::SharingView::countersigned);
        const std::string ask(32, 'a'), wrong(32, 'b');
        // Damaged, nothing is kept.
        std::vector<std::string> damaged = both;
        damaged[0][damaged[0].size() / 2] ^= 1;
        emit shared.network.link->offered(3, wrong, id, damaged);
        settle();
        QVERIFY(shared.network.calls.last().startsWith(QStringLiteral("heard 3 ") +
                                                       QString::fromStdString(wrong) + u' '));
        QCOMPARE(*shared.house.archive->recordJson(id), files[0]);
        QCOMPARE(told.size(), 0);
        emit shared.network.link->offered(3, ask, id, both);
        settle();
        QCOMPARE(shared.network.calls.mid(shared.network.calls.size() - 2),
                 QStringList({QStringLiteral("heard 3 ") + QString::fromStdString(ask),
                              QStringLiteral("sealed ") + QString::fromStdString(id)}));
        QCOMPARE(*shared.house.archive->recordJson(id), both[0]); // both devices hold the same
        QCOMPARE(*shared.house.archive->recordPdf(id), both[1]);
        QCOMPARE(told.size(), 1);
        // The opened record shows it.
        const auto signatures = shared.house.app->file()->record()->property("signatures").toList();
        QCOMPARE(signatures.size(), 2);
        QVERIFY(line(signatures[1], "who").contains(QStringLiteral("Ines Example")));
    }

    /// Signed once more on this very device, it goes to those who follow, too; another round's doesn't.
    void signedOnceMoreHere() {
        Shared shared;
        QVERIFY2(shared.house.wholeRound(), qPrintable(shared.house.app->problem()));
        const QString earlier = shared.house.app->signing()->recordId();
        shared.house.app->leaveRound();
        shared.house.passMinutes(60);
        QVERIFY(shared.start());
        QVERIFY2(shared.house.wholeRound(), qPrintable(shared.house.app->problem()));
        const QString id = shared.house.app->signing()->recordId();
        auto& signing = *shared.house.app->signing();
        QVERIFY(signing.newKey(QStringLiteral("Kim Example"), word()));
        const QVariantMap signature{{QStringLiteral("role"), QStringLiteral("instructor")},
                                    {QStringLiteral("certificate"), QStringLiteral("DEMO-FI-1")},
                                    {QStringLiteral("passphrase"), word()},
                                    {QStringLiteral("key"), signing.keyOf(QStringLiteral("Kim Example"))}};
        QVERIFY2(signing.countersign(earlier, signature), qPrintable(shared.house.app->problem()));
        QCOMPARE(shared.network.callsOf(QStringLiteral("sealed")), QStringList());
        shared.house.app->leaveRound(); // it is still what followers have in hand
        QVERIFY2(signing.countersign(id, signature), qPrintable(shared.house.app->problem()));
        QCOMPARE(shared.network.callsOf(QStringLiteral("sealed")),
                 QStringList(QStringLiteral("sealed ") + id));
    }

    void stoppedWhileTheRoundGoesOn() {
        Shared shared;
        QVERIFY(shared.house.begin());
        QVERIFY(shared.start());
        QVERIFY(shared.sharing().invite());
        shared.network.link->comes("Kim Example");
        settle();
        QVERIFY(shared.sharing().invite());
        const auto ines = signerOf("Ines Example");
        const std::size_t before = shared.house.events();
        // Said by the link's thread before it ended, and not heard yet.
        emit shared.network.link->said(7, remark(shared.round(), ines, "Wait.", shared.house.clock.at),
                                       ines.certificate());
        shared.network.link->comes("Sam Sample");
        shared.sharing().stop();
        settle();
        QVERIFY(!shared.sharing().isOpen());
        QCOMPARE(shared.network.calls.last(), QStringLiteral("closed"));
        QCOMPARE(shared.sharing().watchingText(), QString());
        QCOMPARE(shared.sharing().watching(), QVariantList());
        QCOMPARE(shared.sharing().known(), QVariantList());
        QCOMPARE(shared.sharing().codePicture(), QString());
        QCOMPARE(shared.house.events(), before);
        QVERIFY(shared.house.touchCard());
        QCOMPARE(shared.network.calls.last(), QStringLiteral("closed"));
        // Started again, it goes on from where the round is.
        QVERIFY(shared.start());
        QCOMPARE(shared.network.calls.last(), shared.goOn());
        const std::size_t known = shared.house.events();
        QVERIFY(shared.house.touchCard());
        QCOMPARE(shared.network.calls.last(), QStringLiteral("committed %1").arg(known + 1));
        QCOMPARE(shared.sharing().known().size(), 2);
    }
};

} // namespace ambit::test

QTEST_MAIN(ambit::test::TestViewSharing)
#include "tst_view_sharing.moc"
