// The door: who comes in, who doesn't, what guessing costs, and that nothing grows by it.
#include "watch/door.hpp"

#include "watch/letters.hpp"

#include <QTest>
#include <array>
#include <random>
#include <set>

using namespace ambit;
using namespace ambit::watch;

namespace {

constexpr Tick start{1000000};

Tick after(std::int64_t ms) {
    return {start.ms + ms};
}

std::string certificate(unsigned number) {
    std::string hex = std::to_string(number);
    return std::string(64 - hex.size(), '0') + hex;
}

Knock knock(unsigned number, const std::string& word = {}) {
    return {{certificate(number), "Ida Example"}, word};
}

std::string invite(Door& door, Tick now = start, std::uint8_t seed = 7) {
    const std::array<std::uint8_t, 5> random{seed, 200, 3, 77, 91};
    return door.invite(random, now).value();
}

std::string wrongOf(std::string word) {
    word.back() = word.back() == '0' ? '1' : '0';
    return word;
}

bool isIn(const Answer& answer) {
    return std::holds_alternative<Admitted>(answer);
}

/// Why not, and that it is said in words.
std::string why(const Answer& answer) {
    const auto* refused = std::get_if<Refused>(&answer);
    if (refused == nullptr) return "admitted";
    if (refused->why.code != ErrorCode::refused || !refused->why.what.ends_with('.')) return "no reason";
    return refused->why.what;
}

std::int64_t waits(const Answer& answer, Tick now) {
    const auto* refused = std::get_if<Refused>(&answer);
    return refused == nullptr ? 0 : refused->notBefore.ms - now.ms;
}

} // namespace

class TestWatchDoor : public QObject {
    Q_OBJECT

private slots:
    void theWordLetsOneInOnce() {
        Door door;
        const std::string word = invite(door);
        QCOMPARE(word.size(), std::size_t(8));
        QVERIFY(areLetters(word));
        const Answer answer = door.knock(knock(1, word), after(1000));
        QVERIFY(isIn(answer));
        QVERIFY(std::get<Admitted>(answer).isNew);
        QVERIFY((door.known() == std::vector<Peer>{{certificate(1), "Ida Example"}}));
        // A replay of the word, by another and at once.
        QVERIFY(why(door.knock(knock(2, word), after(1001))).find("used") != std::string::npos);
        QCOMPARE(door.openForMs(after(1001)), 0);
        // It itself needs none from now on.
        const Answer again = door.knock(knock(1), after(9999999));
        QVERIFY(isIn(again));
        QVERIFY(!std::get<Admitted>(again).isNew);
    }

    void theWordIsItsRandomBits() {
        Door door;
        std::mt19937 random(5);
        std::set<std::string> words;
        for (int i = 0; i < 1000; ++i) {
            std::array<std::uint8_t, 6> bytes{};
            for (auto& byte : bytes)
                byte = static_cast<std::uint8_t>(random());
            const std::string word = door.invite(bytes, start).value();
            LetterReader reader(word);
            for (std::size_t b = 0; b < 5; ++b)
                QCOMPARE(reader.take(8), std::uint64_t(bytes[b]));
            QCOMPARE(reader.left(), std::size_t(0));
            words.insert(word);
        }
        QCOMPARE(words.size(), std::size_t(1000));
        const std::array<std::uint8_t, 4> few{};
        QVERIFY(!door.invite(few, start));
    }

    void itLivesFiveMinutes() {
        Door door;
        const std::string word = invite(door);
        QCOMPARE(door.openForMs(after(299999)), 1);
        QVERIFY(why(door.knock(knock(1, wrongOf(word)), after(299998))).find("wrong word 1 of 5") !=
                std::string::npos);
        Door other;
        QVERIFY(isIn((void(invite(other)), other.knock(knock(1, word), after(299999)))));
        QCOMPARE(door.openForMs(after(300000)), 0);
        QVERIFY(why(door.knock(knock(1, word), after(300000))).find("five minutes") != std::string::npos);
        // Not even if the clock goes back then.
        QVERIFY(!isIn(door.knock(knock(1, word), after(10))));
    }

    void aClockThatGoesBackEndsIt() {
        Door door;
        const std::string word = invite(door);
        QCOMPARE(door.openForMs(after(-1)), 0);
        QVERIFY(!isIn(door.knock(knock(1, word), after(-1))));
        QVERIFY(!isIn(door.knock(knock(1, word), after(1))));
    }

    void noWordOpenNobodyIn() {
        Door door;
        const Answer answer = door.knock(knock(1, "00000000"), start);
        QVERIFY(why(answer).find("nobody is invited") != std::string::npos);
        QCOMPARE(waits(answer, start), 0);
        QVERIFY(!isIn(door.knock(knock(1, ""), start)));
        const std::string word = invite(door);
        door.closeInvitation();
        QVERIFY(!isIn(door.knock(knock(1, word), after(1))));
        const std::string first = invite(door, after(2), 8);
        const std::string second = invite(door, after(3), 9);
        QVERIFY(!isIn(door.knock(knock(1, first), after(4)))); // the newer one counts
        QVERIFY(isIn(door.knock(knock(1, second), after(5))));
    }

    void withoutAWordWhileOneIsOpen() {
        Door door;
        const std::string word = invite(door);
        for (int i = 0; i < 100; ++i) {
            const Answer answer = door.knock(knock(1), after(i));
            QVERIFY(why(answer).find("shows no invitation") != std::string::npos);
            QCOMPARE(waits(answer, after(i)), 0);
        }
        QCOMPARE(door.wrongWords(), 0);
        QVERIFY(isIn(door.knock(knock(1, word), after(200))));
    }

    void wrongWordsWaitEverLonger() {
        Door door;
        const std::string word = invite(door);
        // All at once, over many connections: each answer begins to wait when the one before has gone out.
        std::vector<std::int64_t> waited;
        for (unsigned i = 0; i < 5; ++i)
            waited.push_back(waits(door.knock(knock(i, wrongOf(word)), start), start));
        QVERIFY((waited == std::vector<std::int64_t>{1000, 3000, 7000, 15000, 31000}));
        QCOMPARE(door.wrongWords(), 5);
        QVERIFY(why(door.knock(knock(9, word), start)).find("too many wrong words") != std::string::npos);
        // A new word counts anew, but the answers still out hold its guesses up too.
        const std::string next = invite(door, after(1000), 9);
        QCOMPARE(waits(door.knock(knock(1, wrongOf(next)), after(1000)), after(1000)), 31000);
        QVERIFY(isIn(door.knock(knock(1, next), after(1001))));
    }

    void fourWrongOnesDontKillIt() {
        Door door;
        const std::string word = invite(door);
        for (unsigned i = 0; i < 4; ++i)
            QVERIFY(!isIn(door.knock(knock(i, wrongOf(word)), start)));
        QVERIFY(isIn(door.knock(knock(1, word), after(1))));
    }

    void allWordsThatAreAlmostRight() {
        const std::array<std::uint8_t, 5> bytes{7, 200, 3, 77, 91};
        Door model;
        const std::string word = model.invite(bytes, start).value();
        std::vector<std::string> wrong{word.substr(1), word + "0", word.substr(0, 7), "00000000",
                                       word + word};
        for (std::size_t i = 0; i < word.size(); ++i)
            for (unsigned value = 0; value < 32; ++value)
                if (letterOf(value) != word[i]) {
                    wrong.push_back(word);
                    wrong.back()[i] = letterOf(value);
                }
        QCOMPARE(wrong.size(), std::size_t(5 + 8 * 31));
        for (const std::string& one : wrong) {
            Door door;
            (void)door.invite(bytes, start);
            QVERIFY(!isIn(door.knock(knock(1, one), after(1))));
        }
    }

    void tenThousandGuesses() {
        Door door({{certificate(77), "Known Example"}});
        std::mt19937 random(11);
        std::int64_t now = 0;
        int counted = 0;
        std::string word;
        for (int i = 0; i < 10000; ++i) {
            if (i % 100 == 0) word = invite(door, after(now), static_cast<std::uint8_t>(i / 100));
            std::string guess;
            for (int letter = 0; letter < 8; ++letter)
                guess += letterOf(static_cast<unsigned>(random()));
            if (guess == word) continue;
            const Answer answer = door.knock(knock(100 + unsigned(i), guess), after(now));
            QVERIFY(!isIn(answer));
            QVERIFY(why(answer) != "no reason");
            counted += why(answer).find("wrong word") != std::string::npos &&
                       why(answer).find("void") == std::string::npos;
            now += static_cast<std::int64_t>(random() % 3);
        }
        QCOMPARE(counted, 500); // five of each hundred met an open word; the rest a dead one
        QCOMPARE(door.known().size(), std::size_t(1));
        QVERIFY(isIn(door.knock(knock(77), after(now)))); // who is known isn't held up
    }

    void takenBack() {
        Door door;
        QVERIFY(isIn(door.knock(knock(1, invite(door)), after(1))));
        QVERIFY(door.knows(certificate(1)));
        QVERIFY(door.takeBack(certificate(1)));
        QVERIFY(!door.takeBack(certificate(1)));
        QVERIFY(!isIn(door.knock(knock(1), after(2))));
        QVERIFY(isIn(door.knock(knock(1, invite(door, after(3), 9)), after(4))));
    }

    void aKnownOneUsesTheWordUpButDoesntGuess() {
        Door door({{certificate(1), "Ida Example"}});
        const std::string word = invite(door);
        QVERIFY(isIn(door.knock(knock(1, wrongOf(word)), after(1))));
        QCOMPARE(door.wrongWords(), 0);
        QVERIFY(isIn(door.knock(knock(1, word), after(2))));
        QVERIFY(!isIn(door.knock(knock(2, word), after(3))));
        QCOMPARE(door.known().size(), std::size_t(1));
    }

    void withoutACertificate() {
        Door door;
        const std::string word = invite(door);
        for (const std::string& none :
             {std::string(), std::string(63, 'a'), std::string(64, 'A'), std::string(65, 'a')})
            QVERIFY(!isIn(door.knock({{none, "Nobody"}, word}, after(1))));
        QVERIFY(isIn(door.knock(knock(1, word), after(2)))); // the word is unharmed
    }

    void thereIsRoomForSoMany() {
        std::vector<Peer> many;
        for (unsigned i = 0; i < Door::mostPeers; ++i)
            many.push_back({certificate(i), "Example"});
        Door door(many);
        const std::array<std::uint8_t, 5> bytes{};
        const auto word = door.invite(bytes, start);
        QVERIFY(!word);
        QVERIFY(!word.error().remedy.empty());
        QVERIFY(door.takeBack(certificate(3)));
        QVERIFY(door.invite(bytes, start));
    }
};

QTEST_APPLESS_MAIN(TestWatchDoor)
#include "tst_watch_door.moc"
