// The watcher's side against walkers that break a rule: the end, with a reason, and nothing taken in.
#include "sides.hpp"

#include <QTest>

using namespace ambit;
using namespace ambit::test;

class TestWatchReceiver : public QObject {
    Q_OBJECT

private slots:
    void nothingBeforeWelcome() {
        Scene scene;
        for (const Frame& frame :
             {Frame(watch::Round{scene.walker.now, 1}), Frame(Watching{{}}), Frame(Heard{id, {}}),
              Frame(Logged{scene.walker.now, scene.walker.log()[0], {}}),
              Frame(Want{std::string(64, 'a'), 0})}) {
            auto receiver = scene.watcher.receiver();
            (void)receiver->next();
            QVERIFY(!receiver->take(textOf(frame)));
            QVERIFY(tells(last(*receiver), "welcome"));
        }
        auto receiver = scene.watcher.receiver();
        QVERIFY(!receiver->take(textOf(Welcome{"Mallory Example"}))); // it hasn't greeted
        QVERIFY(tells(Misled().sends(textOf(Welcome{"Mallory Example"})), "once"));
    }

    void watchersFramesFromAWalker() {
        const std::string hash(64, 'a');
        for (const Frame& frame :
             {Frame(Hello{"Mallory Example", {}}), Frame(Have{std::string(32, 'a'), 0, 1, {}}),
              Frame(Say{id, "{}", "x"}), Frame(Offer{id, hash, {{FileKind::json, hash, 1}}})})
            QVERIFY2(tells(Misled().sends(textOf(frame)), "Only the watcher"), kindOf(frame));
    }

    void brokenBytes() {
        const std::string good = textOf(Misled().event(1));
        QVERIFY(Misled().sends(good).empty());
        for (const std::string& bad :
             {std::string(), good.substr(0, good.size() - 1), good + ' ', good + good,
              std::string(largestFrame + 1, ' '), std::string(100000, '['), "{\"event\": " + good.substr(9)})
            QVERIFY(!Misled().sends(bad).empty());
    }

    void gapsAndRepetitions() {
        for (const std::size_t wrong : {1, 2, 3, 5}) {
            Misled its;
            its.gets(1);
            its.gets(2);
            its.gets(3);
            QVERIFY(tells(its.sends(textOf(its.event(wrong))), "event 4 is the next"));
        }
        Misled its;
        QVERIFY(tells(its.sends(textOf(its.event(2))), "event 1 is the next"));
    }

    void creditOverrun() {
        Misled its(3);
        for (std::size_t seq = 1; seq <= 3; ++seq)
            its.gets(seq);
        QVERIFY(tells(its.sends(textOf(its.event(4))), "More events came")); // its next `have` isn't out
        Misled good(3);
        for (std::size_t seq = 1; seq <= 3; ++seq)
            good.gets(seq);
        QVERIFY(good.receiver->next());
        good.gets(4);
        // None was asked for at all.
        Scene scene;
        auto receiver = scene.watcher.receiver();
        (void)receiver->next();
        QVERIFY(receiver->take(textOf(Welcome{"Mallory Example"})));
        QVERIFY(receiver->take(textOf(watch::Round{scene.walker.now, 9})));
        QVERIFY(!receiver->take(textOf(Logged{scene.walker.now, scene.walker.log()[0], {}})));
        QVERIFY(tells(last(*receiver), "More events came"));
    }

    void whatIsStoredIsConfirmedOnce() {
        Misled its;
        its.gets(1);
        its.gets(2);
        QVERIFY(!its.receiver->next()); // there is room for six more
        its.receiver->confirm();
        const auto said = its.receiver->next();
        QVERIFY(said);
        const auto frame = watch::frameFrom(*said, Side::watcher);
        QVERIFY(frame);
        QCOMPARE(std::get<Have>(*frame).upTo, 2);
        QCOMPARE(std::get<Have>(*frame).room, 8);
        its.receiver->confirm(); // nothing new
        QVERIFY(!its.receiver->next());
        for (std::size_t seq = 3; seq <= 6; ++seq)
            its.gets(seq);
        QVERIFY(its.receiver->next()); // half the room is used, counted from the last one
    }

    void wrongRounds() {
        Misled its;
        Logged other = its.event(1);
        other.round = std::string(32, 'a');
        QVERIFY(tells(its.sends(textOf(other)), "another round"));
        // The right id, another first event.
        round::Event first{1, {1}, opening(theMachine())};
        Misled forged;
        QVERIFY(tells(forged.sends(textOf(Logged{forged.round(), bytesOf(first), {}})), "the round's id"));
        // A first one that opens nothing; a later one that opens.
        Misled paused;
        const std::string pause = bytesOf({1, {1}, round::Paused{}});
        QVERIFY(tells(paused.sends(textOf(Logged{paused.round(), pause, {}})), "opens it"));
        Misled twice;
        twice.gets(1);
        first.seq = 2;
        QVERIFY(tells(twice.sends(textOf(Logged{twice.round(), bytesOf(first), {}})), "opens it"));
        // No round told of.
        Scene scene;
        auto receiver = scene.watcher.receiver();
        (void)receiver->next();
        QVERIFY(receiver->take(textOf(Welcome{"Mallory Example"})));
        QVERIFY(!receiver->take(textOf(Logged{scene.walker.now, scene.walker.log()[0], {}})));
        QVERIFY(tells(last(*receiver), "another round"));
    }

    void roundsWithoutEnd() {
        Misled same;
        QVERIFY(tells(same.sends(textOf(watch::Round{same.round(), 9})), "already"));
        Misled its;
        QVERIFY(its.receiver->take(textOf(watch::Round{std::string(32, 'a'), 1})));
        QVERIFY(tells(its.sends(textOf(watch::Round{std::string(32, 'b'), 1})),
                      "before the last one was answered"));
        Misled answered;
        QVERIFY(answered.receiver->take(textOf(watch::Round{std::string(32, 'a'), 1})));
        QVERIFY(answered.receiver->next());
        QVERIFY(answered.receiver->take(textOf(watch::Round{std::string(32, 'b'), 1})));
    }

    void wrongEvents() {
        const auto why = [](auto change) {
            Misled its;
            its.gets(1);
            Json json = Json::parse(its.scene.walker.log()[1]);
            change(json);
            return its.sends(textOf(Logged{its.round(), canonicalJson(json), {}}));
        };
        QVERIFY(why([](Json&) {}).empty());
        QVERIFY(tells(why([](Json& json) { json["kind"] = "flown"; }), "/event/kind"));
        QVERIFY(tells(why([](Json& json) { json["more"] = 1; }), "/event/more"));
        QVERIFY(tells(why([](Json& json) { json.erase("at"); }), "/event/at"));
        QVERIFY(!why([](Json& json) { json = Json::array(); }).empty());
        QVERIFY(!why([](Json& json) { json = nullptr; }).empty());
    }

    void aRoundTooLong() {
        const Scene scene;
        const std::string& round = scene.walker.now;
        const auto takes = [&](std::int64_t upTo, std::int64_t bytes) {
            Receiver receiver({"Ida Example", {}}, {[=](const std::string&) {
                                                        return Held{upTo, bytes, std::string(64, 'a'), {}};
                                                    },
                                                    {}});
            (void)receiver.next();
            (void)receiver.take(textOf(Welcome{"Mallory Example"}));
            (void)receiver.take(textOf(watch::Round{round, mostEvents}));
            (void)receiver.next();
            return receiver.take(textOf(Logged{round, bytesOf({upTo + 1, {1}, round::Paused{}}), {}}))
                .has_value();
        };
        QVERIFY(takes(mostEvents - 1, 5));
        QVERIFY(!takes(mostEvents, 5));
        const auto one = std::int64_t(bytesOf({5, {1}, round::Paused{}}).size());
        QVERIFY(takes(4, mostLogBytes - one));
        QVERIFY(!takes(4, mostLogBytes - one + 1));
    }

    void answersToNothing() {
        QVERIFY(tells(Misled().sends(textOf(Heard{id, {}})), "nobody had said"));
        Misled early;
        QVERIFY(early.receiver->say({id, "{}", "x"}));
        QVERIFY(tells(early.sends(textOf(Heard{id, {}})), "nobody had said")); // it isn't out yet
        Misled other;
        QVERIFY(other.receiver->say({id, "{}", "x"}));
        (void)other.receiver->next();
        QVERIFY(tells(other.sends(textOf(Heard{std::string(32, 'c'), {}})), "nobody had said"));
    }

    void wrongSealed() {
        const std::string hash(64, 'e');
        Misled whole(100);
        const Sealed sealed{whole.round(), hash, {{FileKind::json, hash, 1}}};
        Misled early;
        QVERIFY(tells(early.sends(textOf(sealed)), "isn't the record")); // nothing is signed yet
        for (std::size_t seq = 1; seq <= whole.scene.walker.log().size(); ++seq)
            whole.gets(seq);
        QVERIFY(whole.receiver->take(textOf(sealed)));
        Sealed other = sealed;
        other.recordSha256 = std::string(64, 'a');
        QVERIFY(tells(whole.sends(textOf(other)), "isn't the record"));
        other = sealed;
        other.round = std::string(32, 'a');
        Misled its;
        QVERIFY(tells(its.sends(textOf(other)), "another round"));
    }

    void onlyOfferedFilesAreServed() {
        Misled its;
        its.scene.watcher.files[sha256Hex("mine")] = "mine";
        QVERIFY(its.receiver->take(textOf(Want{sha256Hex("mine"), 0})));
        QCOMPARE(field(its.receiver->next(), "kind"), std::string("gone"));
        QCOMPARE(its.scene.watcher.reads, 0);
        // Once it is offered.
        QVERIFY(its.receiver->offer({id, std::string(64, 'e'), {{FileKind::json, sha256Hex("mine"), 4}}}));
        QCOMPARE(field(its.receiver->next(), "kind"), std::string("offer"));
        QVERIFY(its.receiver->take(textOf(Want{sha256Hex("mine"), 0})));
        QCOMPARE(field(its.receiver->next(), "bytes"), std::string("bWluZQ"));
        QVERIFY(its.receiver->take(textOf(Heard{id, {}})));
        QVERIFY(its.receiver->take(textOf(Want{sha256Hex("mine"), 0})));
        QCOMPARE(field(its.receiver->next(), "kind"), std::string("gone"));
    }

    void unaskedPieces() {
        const std::string hash = sha256Hex("x");
        QVERIFY(tells(Misled().sends(textOf(Piece{hash, 0, 1, "x"})), "nobody had asked"));
        QVERIFY(tells(Misled().sends(textOf(Gone{hash})), "nobody had asked"));
        // Wished for, but the question isn't out.
        Misled early;
        QVERIFY(early.receiver->fetch(Fetching::ofSize(hash, 1)));
        QVERIFY(tells(early.sends(textOf(Piece{hash, 0, 1, "x"})), "nobody had asked"));
        Misled other;
        QVERIFY(other.receiver->fetch(Fetching::ofSize(hash, 1)));
        (void)other.receiver->next();
        QVERIFY(tells(other.sends(textOf(Gone{std::string(64, 'a')})), "nobody had asked"));
    }

    void wrongPieces() {
        const std::string hash = sha256Hex("abc");
        const auto why = [&](const Piece& piece, bool second = false) {
            Misled its;
            (void)its.receiver->fetch(Fetching::ofSize(hash, 3));
            (void)its.receiver->next();
            if (second) {
                if (!its.receiver->take(textOf(Piece{hash, 0, 3, "a"}))) return std::string("the first one");
                (void)its.receiver->next();
            }
            return its.sends(textOf(piece));
        };
        QVERIFY(why({hash, 0, 3, "abc"}).empty());
        QVERIFY(why({hash, 1, 3, "bc"}, true).empty());
        QVERIFY(tells(why({sha256Hex("x"), 0, 3, "abc"}), "another file"));
        QVERIFY(tells(why({hash, 1, 3, "bc"}), "byte 0 was asked for"));
        QVERIFY(tells(why({hash, 0, 3, "abc"}, true), "byte 1 was asked for"));
        QVERIFY(tells(why({hash, 0, 4, "abc"}), "3 were expected"));
        QVERIFY(tells(why({hash, 1, 4, "bc"}, true), "3 were expected"));
        QVERIFY(tells(why({hash, 0, 3, "abd"}), "not the file"));
        QVERIFY(tells(why({hash, 1, 3, "bd"}, true), "not the file"));
    }

    // A file without end: a bound holds where no size is known, and the first size holds from then on.
    void endlessPieces() {
        const std::string hash(64, 'a');
        Misled large;
        QVERIFY(large.receiver->fetch(Fetching::upTo(hash, 10)));
        (void)large.receiver->next();
        QVERIFY(tells(large.sends(textOf(Piece{hash, 0, 11, "a"})), "10 at most"));
        Misled growing;
        QVERIFY(growing.receiver->fetch(Fetching::upTo(hash, 10)));
        (void)growing.receiver->next();
        QVERIFY(growing.receiver->take(textOf(Piece{hash, 0, 5, "a"})));
        (void)growing.receiver->next();
        QVERIFY(tells(growing.sends(textOf(Piece{hash, 1, 6, "a"})), "5 were expected"));
        // Byte by byte to the end, and it isn't the file: no more than was said has come.
        Misled slow;
        QVERIFY(slow.receiver->fetch(Fetching::upTo(hash, 10)));
        for (std::int64_t at = 0; at < 9; ++at) {
            QVERIFY(slow.receiver->next());
            QVERIFY(slow.receiver->take(textOf(Piece{hash, at, 10, "a"})));
        }
        QVERIFY(slow.receiver->next());
        QVERIFY(tells(slow.sends(textOf(Piece{hash, 9, 10, "a"})), "not the file"));
    }
};

QTEST_APPLESS_MAIN(TestWatchReceiver)
#include "tst_watch_receiver.moc"
