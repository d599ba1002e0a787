// A sender and a receiver on one connection: what comes where, and how it ends.
#include "sides.hpp"

#include <QTest>

using namespace ambit;
using namespace ambit::test;

class TestWatchLink : public QObject {
    Q_OBJECT

private slots:
    void followsToTheEnd() {
        for (const int window : {1, 2, 3, 7, 1024}) {
            Scene scene;
            Together both(scene.walker, scene.watcher, window);
            scene.walker.hand.watch({"Ida Example", "Other Example"});
            QVERIFY(both.run());
            QVERIFY(scene.watcher.logs == scene.walker.logs);
            QCOMPARE(only<Welcome>(both.fromWalker).at(0).name, std::string("Robin Example"));
            QCOMPARE(only<Watching>(both.fromWalker).at(0).names.size(), std::size_t(2));
            QCOMPARE(only<watch::Round>(both.fromWalker).at(0).events,
                     std::int64_t(scene.walker.log().size()));
            QVERIFY(both.sender->kept() > 0 || window > 100);
            QVERIFY(both.sender->isIn() && both.receiver->isIn());
        }
    }

    void liveEventByEvent() {
        Walker walker;
        Watcher watcher;
        Together both(walker, watcher, 4);
        QVERIFY(both.run()); // no round yet
        QCOMPARE(both.fromWalker.size(), std::size_t(1));
        for (const round::Event& event : wholeRound()) {
            walker.append(event);
            QVERIFY(both.run());
            QVERIFY(watcher.logs == walker.logs);
        }
        const std::string first = walker.now;
        walker.begin();
        walker.append(round::Note{"Another round."});
        QVERIFY(both.run());
        QVERIFY(walker.now != first);
        QVERIFY(watcher.logs == walker.logs);
        QCOMPARE(only<watch::Round>(both.fromWalker).size(), std::size_t(2));
        QCOMPARE(walker.readsWhileWalking, 0);
    }

    void resumedFromWhatIsStored() {
        for (std::size_t kept = 0; kept <= wholeRound().size(); ++kept) {
            Scene scene;
            auto& log = scene.watcher.logs[scene.walker.now];
            log.assign(scene.walker.log().begin(), scene.walker.log().begin() + std::ptrdiff_t(kept));
            Together both(scene.walker, scene.watcher, 5);
            QVERIFY(both.run());
            QVERIFY(scene.watcher.logs == scene.walker.logs);
            QCOMPARE(only<Logged>(both.fromWalker).size(), scene.walker.log().size() - kept);
        }
    }

    // The walker's device lost its last events and went on with others: noticed, though the numbers fit.
    void logsThatHaveGoneApart() {
        Scene scene;
        auto& theirs = scene.watcher.logs[scene.walker.now];
        theirs = scene.walker.log();
        theirs.resize(5);
        theirs.push_back(bytesOf({6, {1750000005001}, round::Note{"Lost on the walker's device."}}));
        Together both(scene.walker, scene.watcher);
        QVERIFY(!both.run());
        QCOMPARE(theirs.size(), std::size_t(6));
        QVERIFY(only<Bye>(both.fromWalker).at(0).code == ErrorCode::conflict);
    }

    void sayAndHeard() {
        Scene scene;
        Together both(scene.walker, scene.watcher);
        QVERIFY(both.run());
        const std::string statement = "{\"words\":\"Look again.\"}";
        QVERIFY(both.receiver->say({id, statement, "x"}));
        QVERIFY(!both.receiver->say({std::string(32, 'c'), "{}", "x"}));
        QVERIFY(both.run());
        const auto said = only<Say>(both.fromWatcher);
        QCOMPARE(said.size(), std::size_t(1));
        QCOMPARE(said[0].statement, statement);
        both.sender->heard(std::string(32, 'd')); // nobody said it
        QVERIFY(both.run());
        QVERIFY(only<Heard>(both.fromWalker).empty());
        both.sender->heard(id, "The round is concluded.");
        QVERIFY(both.run());
        QCOMPARE(only<Heard>(both.fromWalker).at(0).why, std::string("The round is concluded."));
        QVERIFY(both.receiver->say({id, "{}", "x"}));
        QVERIFY(both.run());
        both.sender->heard(id);
        both.sender->heard(id); // once
        QVERIFY(both.run());
        QCOMPARE(only<Heard>(both.fromWalker).size(), std::size_t(2));
    }

    void photoAndAirframe() {
        Scene scene;
        const std::string large(300000, 'p');
        const std::string photo = scene.walker.keep(large);
        round::Settled settled = finding("oil");
        settled.photos = {{photo, "image/png", 300000}};
        scene.walker.begin();
        scene.walker.append(settled);
        Together both(scene.walker, scene.watcher);
        QVERIFY(both.run());
        QVERIFY(both.receiver->fetch(Fetching::ofSize(photo, 300000)));
        QVERIFY(!both.receiver->fetch(Fetching::ofSize(photo, 300000)));
        QVERIFY(both.run());
        std::string got;
        for (const Part& part : only<Part>(both.fromWalker)) {
            QCOMPARE(part.from, std::int64_t(got.size()));
            got += part.bytes;
            QCOMPARE(part.isWhole, got.size() == large.size());
        }
        QVERIFY(got == large);
        // The description, whose size is not known before.
        const Logged first = only<Logged>(both.fromWalker).at(0);
        const std::string airframe = std::get<round::Opened>(first.event.what).airframeSha256;
        QVERIFY(both.receiver->fetch(Fetching::upTo(airframe, largestAirframe)));
        QVERIFY(both.run());
        QCOMPARE(sha256Hex(only<Part>(both.fromWalker).back().bytes), airframe);
    }

    // What has come of a file outlives the connection, or is read back from where it was put.
    void aFileOverManyConnections() {
        Scene scene;
        const std::string large(400000, 'p');
        scene.walker.reseal(scene.walker.now, {large});
        const std::string hash = sha256Hex(large);
        std::string got;
        std::optional<Fetching> fetching = Fetching::ofSize(hash, 400000);
        for (int connection = 0; fetching; ++connection) {
            Together both(scene.walker, scene.watcher);
            QVERIFY(both.run());
            QVERIFY(both.receiver->fetch(std::move(*fetching)));
            QVERIFY(both.atWalker(both.receiver->next().value())); // the question
            QVERIFY(both.atWatcher(both.sender->next().value()));  // a piece of it
            got += only<Part>(both.fromWalker).back().bytes;
            (void)both.receiver->next(); // asked, and cut before the answer
            fetching = both.receiver->letGo();
            if (connection % 2 == 0 && fetching) {
                fetching = Fetching::ofSize(hash, 400000);
                fetching->resume(got);
            }
        }
        QVERIFY(got == large);
    }

    void onlyNamedFilesAreServed() {
        Scene scene;
        const std::string secret = scene.walker.keep("another round's photo");
        Together both(scene.walker, scene.watcher);
        QVERIFY(both.run());
        const int before = scene.walker.reads;
        QVERIFY(both.receiver->fetch(Fetching::ofSize(secret, 21)));
        QVERIFY(both.run());
        QCOMPARE(only<Gone>(both.fromWalker).size(), std::size_t(1));
        QCOMPARE(scene.walker.reads, before); // not even looked for
        QVERIFY(only<Part>(both.fromWalker).empty());
        // Nor what was named in the round before.
        scene.walker.begin();
        QVERIFY(both.run());
        QVERIFY(
            both.receiver->fetch(Fetching::ofSize(sha256Hex(photoBytes), std::int64_t(photoBytes.size()))));
        QVERIFY(both.run());
        QCOMPARE(only<Gone>(both.fromWalker).size(), std::size_t(2));
    }

    void recordThereAndBack() {
        Scene scene;
        const std::string json(200000, 'j');
        const std::string pdf(500000, 'p');
        scene.walker.reseal(scene.walker.now, {json, pdf});
        Together both(scene.walker, scene.watcher, 4);
        QVERIFY(both.run());
        const auto sealed = only<Sealed>(both.fromWalker);
        QCOMPARE(sealed.size(), std::size_t(1));
        // After the last event: the record's log is there.
        QVERIFY(std::holds_alternative<Sealed>(both.fromWalker.back()));
        QVERIFY(both.receiver->fetch(Fetching::ofSize(sealed[0].files[1].sha256, sealed[0].files[1].size)));
        QVERIFY(both.run());
        QVERIFY(only<Part>(both.fromWalker).back().isWhole);

        const std::string more = json + "with another signature";
        const auto size = std::int64_t(more.size());
        scene.watcher.files[sha256Hex(more)] = more;
        QVERIFY(both.receiver->offer({id, std::string(64, 'e'), {{FileKind::json, sha256Hex(more), size}}}));
        QVERIFY(both.run());
        QCOMPARE(only<Offer>(both.fromWatcher).size(), std::size_t(1));
        QVERIFY(both.sender->fetch(Fetching::ofSize(sha256Hex(more), size)));
        QVERIFY(both.run());
        QVERIFY(only<Part>(both.fromWatcher).back().isWhole);
        scene.walker.reseal(scene.walker.now, {more, pdf});
        both.sender->heard(id);
        QVERIFY(both.run());
        QVERIFY(only<Heard>(both.fromWalker).back().why.empty());
        QCOMPARE(only<Sealed>(both.fromWalker).back().files[0].sha256, sha256Hex(more));
        // Answered: the walker can't read it any more.
        QVERIFY(both.sender->fetch(Fetching::ofSize(sha256Hex(more), size)));
        QVERIFY(both.run());
        QCOMPARE(only<Gone>(both.fromWatcher).size(), std::size_t(1));
    }

    void byeEndsItSilently() {
        Wronged its;
        const auto news = its.sender->take(textOf(Bye{"Going home.", {}}));
        QCOMPARE(std::get<Bye>(*news).why, std::string("Going home."));
        QVERIFY(its.sender->isOver() && !its.sender->next() && !its.sender->isIn());
        Misled other;
        QVERIFY(std::holds_alternative<Bye>(*other.receiver->take(textOf(Bye{"Going home.", {}}))));
        QVERIFY(other.receiver->isOver() && !other.receiver->next());
    }

    void anEndOfOnesOwnHasNoCode() {
        Scene scene;
        Together both(scene.walker, scene.watcher);
        QVERIFY(both.run());
        both.sender->end("The round is put away.");
        QVERIFY(!both.sender->isOver()); // it is to be said yet
        QVERIFY(both.run());
        const auto bye = only<Bye>(both.fromWalker);
        QCOMPARE(bye.size(), std::size_t(1));
        QVERIFY(!bye[0].code);
        QVERIFY(both.sender->isOver() && both.receiver->isOver());
    }

    void anEventTooLargeEndsIt() {
        Scene scene;
        round::Planned planned{"why", {}};
        for (int i = 0; i < 40; ++i)
            planned.plan.emplace_back(walk::Go{std::string(8000, 'x')});
        Together both(scene.walker, scene.watcher);
        QVERIFY(both.run());
        scene.walker.append(planned);
        QVERIFY(both.run());
        QVERIFY(tells(only<Bye>(both.fromWalker).at(0).why, "too large"));
        QCOMPARE(scene.watcher.logs[scene.walker.now].size() + 1, scene.walker.log().size());
    }
};

QTEST_APPLESS_MAIN(TestWatchLink)
#include "tst_watch_link.moc"
