// The walker's side against watchers that break a rule: the end, with a reason, and the round unharmed.
#include "sides.hpp"

#include <QTest>

using namespace ambit;
using namespace ambit::test;

class TestWatchSender : public QObject {
    Q_OBJECT

private slots:
    // A watcher that doesn't read: nothing is read for it, and the walk goes on.
    void neverReads() {
        Wronged its;
        QVERIFY(its.sender->take(textOf(its.have(0, 1024))));
        const int before = its.scene.walker.reads;
        for (int i = 0; i < 10000; ++i)
            its.scene.walker.append(round::Note{"On and on."});
        QCOMPARE(its.scene.walker.reads, before);
        QCOMPARE(its.scene.walker.readsWhileWalking, 0);
    }

    // Nor can it pile up answers: the next may be asked for when the last has gone out.
    void answersDontPileUp() {
        Wronged its;
        QVERIFY(its.sender->take(textOf(Say{id, "{}", "x"})));
        its.sender->heard(id, "No.");
        its.sender->heard(id, "No.");
        QVERIFY(tells(its.sends(textOf(Say{std::string(32, 'c'), "{}", "x"})), "before the last one"));
    }

    void roomIsKeptTo() {
        Wronged its;
        QVERIFY(its.sender->take(textOf(its.have(0, 3))));
        int events = 0;
        while (its.sender->next())
            ++events;
        QCOMPARE(events, 3);
        QVERIFY(its.sender->take(textOf(Have{its.round(), 3, 1, {}})));
        QVERIFY(its.sender->next());
        QVERIFY(!its.sender->next());
        QCOMPARE(its.sender->kept(), 3);
        // More room without having more.
        QVERIFY(its.sender->take(textOf(Have{its.round(), 3, 5, {}})));
        for (events = 0; its.sender->next();)
            ++events;
        QCOMPARE(events, 4);
    }

    void nothingBeforeHelloOrWelcome() {
        for (const Frame& frame : {Frame(Have{std::string(32, 'a'), 0, 1, {}}), Frame(Say{id, "{}", "x"}),
                                   Frame(Want{std::string(64, 'a'), 0}), Frame(Gone{std::string(64, 'a')})}) {
            Scene scene;
            auto sender = scene.walker.sender();
            QVERIFY(!sender->take(textOf(frame)));
            QVERIFY(tells(last(*sender), "hello"));
            auto atTheDoor = scene.walker.sender();
            QVERIFY(atTheDoor->take(textOf(Hello{"Mallory Example", {}})));
            QVERIFY(!atTheDoor->next());
            QVERIFY(!atTheDoor->take(textOf(frame)));
            QVERIFY(tells(last(*atTheDoor), "welcome"));
            atTheDoor->admit(); // too late
            QVERIFY(!atTheDoor->isIn() && !atTheDoor->next());
            QCOMPARE(scene.walker.reads, 0);
        }
        QVERIFY(tells(Wronged().sends(textOf(Hello{"Mallory Example", {}})), "once"));
    }

    void refusedAtTheDoor() {
        Scene scene;
        auto sender = scene.walker.sender();
        QVERIFY(sender->take(textOf(Hello{"Mallory Example", "00000000"})));
        sender->refuse({ErrorCode::refused, "Not you.", {}, "Ask."});
        QCOMPARE(last(*sender), std::string("Not you. Ask."));
        QCOMPARE(scene.walker.reads, 0);
        // Nobody comes in without having said who they are.
        auto silent = scene.walker.sender();
        silent->admit();
        QVERIFY(!silent->isIn() && !silent->next());
    }

    void walkersFramesFromAWatcher() {
        const std::string hash(64, 'a');
        const Scene other;
        for (const Frame& frame :
             {Frame(Welcome{"Mallory Example"}), Frame(watch::Round{std::string(32, 'a'), 1}),
              Frame(Logged{other.walker.now, other.walker.log()[0], {}}),
              Frame(Watching{{"Mallory Example"}}), Frame(Heard{id, {}}),
              Frame(Sealed{other.walker.now, hash, {{FileKind::json, hash, 1}}})})
            QVERIFY2(tells(Wronged().sends(textOf(frame)), "Only the walker"), kindOf(frame));
    }

    void brokenBytes() {
        const std::string good = textOf(Wronged().have(0, 1));
        QVERIFY(Wronged().sends(good).empty());
        for (const std::string& bad :
             {std::string(), good.substr(0, good.size() - 1), good + ' ', good + good,
              std::string(largestFrame + 1, ' '), std::string(100000, '['), std::string("\0\xff", 2)})
            QVERIFY(!Wronged().sends(bad).empty());
    }

    void firstHave() {
        const auto why = [](auto change) {
            Wronged its;
            Have have = its.have(3, 4);
            change(have, its);
            return its.sends(textOf(have));
        };
        QVERIFY(why([](Have&, Wronged&) {}).empty());
        QVERIFY(
            tells(why([](Have& have, Wronged&) { have.round = std::string(32, 'a'); }), "isn't walked here"));
        QVERIFY(tells(why([](Have& have, Wronged&) { have.last.clear(); }), "last event's hash"));
        QVERIFY(tells(why([](Have& have, Wronged&) { have.last = std::string(64, 'a'); }),
                      "is another on the two devices"));
        QVERIFY(tells(why([](Have& have, Wronged&) { have.upTo = 4; }), "is another on the two devices"));
        QVERIFY(
            tells(why([](Have& have, Wronged&) { have.upTo = 100000; }), "The watcher has 100000 events"));
        QVERIFY(tells(why([](Have&, Wronged& its) { its.scene.walker.isBroken = true; }), "can't be read"));
    }

    void laterHaves() {
        const auto why = [](std::int64_t upTo, int room, const std::string& hash = {}) {
            Wronged its;
            if (!its.sender->take(textOf(its.have(2, 4)))) return std::string("the first one");
            for (int i = 0; i < 4; ++i)
                if (!its.sender->next()) return std::string("no event");
            return its.sends(textOf(Have{its.round(), upTo, room, hash}));
        };
        QVERIFY(why(3, 4).empty());
        QVERIFY(why(6, 1).empty());
        QVERIFY(why(2, 5).empty());
        QVERIFY(why(3, 3).empty());
        QVERIFY(tells(why(7, 4), "are possible"));
        QVERIFY(tells(why(1, 1024), "are possible"));
        QVERIFY(tells(why(3, 2), "room back"));
        QVERIFY(tells(why(2, 4), "nothing new"));
        QVERIFY(tells(why(3, 4, std::string(64, 'a')), "Only the first"));
    }

    void haveThatCrossesAnotherRound() {
        Wronged its;
        const std::string first = its.round();
        QVERIFY(its.sender->take(textOf(its.have(0, 2))));
        QVERIFY(its.sender->next());
        its.scene.walker.begin();
        const std::string second = its.round();
        QCOMPARE(field(its.sender->next(), "round"), second);
        QVERIFY(!its.sender->next());
        QVERIFY(its.sender->take(textOf(Have{first, 1, 2, {}}))); // crossed it
        QVERIFY(!its.sender->next());
        its.scene.walker.begin(); // a third: told of when the second is answered
        QVERIFY(!its.sender->next());
        QVERIFY(its.sender->take(textOf(Have{second, 0, 9, {}})));
        QCOMPARE(field(its.sender->next(), "round"), its.round());
        QVERIFY(its.sender->take(textOf(its.have(0, 9))));
        QCOMPARE(field(its.sender->next(), "kind"), std::string("event"));
        QVERIFY(tells(its.sends(textOf(Have{first, 2, 9, {}})), "isn't walked here")); // answered long ago
    }

    void sayTwiceUnanswered() {
        const Offer offer{id, std::string(64, 'e'), {{FileKind::json, std::string(64, 'a'), 1}}};
        for (const Frame& next : {Frame(Say{std::string(32, 'c'), "{}", "x"}), Frame(offer)}) {
            Wronged its;
            QVERIFY(its.sender->take(textOf(Say{id, "{}", "x"})));
            QVERIFY(tells(its.sends(textOf(next)), "before the last one was answered"));
        }
        Wronged its;
        its.scene.walker.reseal(its.scene.walker.now, {"record"});
        QVERIFY(its.sender->take(textOf(offer)));
        Offer second = offer;
        second.id = std::string(32, 'c');
        QVERIFY(tells(its.sends(textOf(second)), "before the last one was answered"));
    }

    void anotherRecordIsAnsweredNotFetched() {
        Wronged its;
        its.scene.walker.reseal(its.scene.walker.now, {"record"});
        const Offer offer{id, std::string(64, 'a'), {{FileKind::json, std::string(64, 'a'), 1}}};
        QCOMPARE(its.sender->take(textOf(offer))->index(), std::size_t(0));
        const auto answer = its.sender->next();
        QCOMPARE(field(answer, "kind"), std::string("heard"));
        QVERIFY(tells(field(answer, "why"), "isn't the record"));
    }

    void beyondTheEnd() {
        Wronged its;
        const auto size = std::int64_t(photoBytes.size());
        QVERIFY(its.sender->take(textOf(Want{sha256Hex(photoBytes), size - 1})));
        QCOMPARE(field(its.sender->next(), "kind"), std::string("piece"));
        QVERIFY(its.sender->take(textOf(Want{sha256Hex(photoBytes), size})));
        QCOMPARE(field(its.sender->next(), "kind"), std::string("gone"));
    }

    void askedAgainBeforeTheAnswer() {
        Wronged its;
        const Want want{sha256Hex(photoBytes), 0};
        QVERIFY(its.sender->take(textOf(want)));
        QVERIFY(tells(its.sends(textOf(want)), "before the last question"));
    }

    void eventsGoBeforeFiles() {
        Wronged its;
        QVERIFY(its.sender->take(textOf(Want{sha256Hex(photoBytes), 0})));
        QVERIFY(its.sender->take(textOf(its.have(0, 2))));
        std::vector<std::string> kinds;
        while (const auto said = its.sender->next())
            kinds.push_back(field(said, "kind"));
        QVERIFY((kinds == std::vector<std::string>{"event", "event", "piece"}));
    }

    void unaskedPieces() {
        const std::string hash = sha256Hex("x");
        QVERIFY(tells(Wronged().sends(textOf(Piece{hash, 0, 1, "x"})), "nobody had asked"));
        QVERIFY(tells(Wronged().sends(textOf(Gone{hash})), "nobody had asked"));
    }

    void aBrokenOfferIsntTakenIn() {
        Wronged its;
        its.scene.walker.reseal(its.scene.walker.now, {"record"});
        QVERIFY(its.sender->take(
            textOf(Offer{id, std::string(64, 'e'), {{FileKind::json, sha256Hex("abc"), 3}}})));
        QVERIFY(its.sender->fetch(Fetching::ofSize(sha256Hex("abc"), 3)));
        while (field(its.sender->next(), "kind") != "want") {
        }
        QVERIFY(tells(its.sends(textOf(Piece{sha256Hex("abc"), 0, 3, "abd"})), "not the file"));
        QVERIFY(!its.sender->letGo());
    }

    void theLogCantBeRead() {
        Wronged its;
        QVERIFY(its.sender->take(textOf(its.have(0, 9))));
        its.scene.walker.isBroken = true;
        QCOMPARE(field(its.sender->next(), "code"), std::string("storage"));
        QVERIFY(its.sender->isOver());
    }
};

QTEST_APPLESS_MAIN(TestWatchSender)
#include "tst_watch_sender.moc"
