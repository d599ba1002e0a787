// What moved, in words: by visits to stands, two things at most and the rest counted.
#include "round/moved.hpp"
#include "round/moved_words.hpp"
#include "round/order.hpp"
#include "rounds.hpp"

#include <QFile>
#include <QRegularExpression>
#include <QTest>

using namespace ambit;
using namespace ambit::round;

namespace {

/// "left tread mast": goes to each; a name after a slash is settled there: "left/oil".
std::vector<walk::Step> steps(const char* text) {
    std::vector<walk::Step> list;
    for (const QString& word : QString::fromUtf8(text).split(' ', Qt::SkipEmptyParts)) {
        const QStringList parts = word.split('/');
        if (!parts[0].isEmpty()) list.emplace_back(walk::Go{parts[0].toStdString()});
        for (int i = 1; i < parts.size(); ++i)
            list.emplace_back(walk::Settle{parts[i].toStdString()});
    }
    return list;
}

/// The same words, made of the same.
bool same(const Sentence& one, const Sentence& other) {
    if (one != other || one.kind() != other.kind()) return false;
    const auto *its = one.made(), *others = other.made();
    if (its == nullptr || others == nullptr) return its == others;
    return its->pattern == others->pattern &&
           std::equal(its->parts.begin(), its->parts.end(), others->parts.begin(), others->parts.end(), same);
}

/// With as many of the parts as the pattern names.
Sentence made(const QByteArray& pattern, std::vector<Sentence> parts) {
    parts.resize(static_cast<std::size_t>(pattern.count('%')));
    return Sentence(Sentence::Made{pattern.toStdString(), std::move(parts)});
}

/// All that the log keeps of it.
Sentence kept(const Sentence& said) {
    return {std::string(said)};
}

bool isReadBack(const Sentence& said) {
    return said.made() != nullptr && same(whySaid(kept(said)), said);
}

const Sentence front = quoted("In front"), left = quoted("Left side");

} // namespace

class TestMoved : public QObject {
    Q_OBJECT

private slots:
    void words_data() {
        QTest::addColumn<QByteArray>("known");
        QTest::addColumn<QByteArray>("anew");
        QTest::addColumn<QByteArray>("words");
        const auto row = [](const char* name, const char* known, const char* anew, const char* words) {
            QTest::addRow("%s", name) << QByteArray(known) << QByteArray(anew) << QByteArray(words);
        };
        row("nothing", "front left right", "front left right", "It rains.");
        row("other points, same way", "front/arc-clear/tie-down-off", "front/tie-down-off/arc-clear",
            "It rains.");
        row("one moved", "front right left tread mast", "front left tread mast right",
            "It rains: “Right side” now comes after “At the mast”.");
        row("to the front", "front left right", "right front left",
            "It rains: “Right side” now comes first.");
        row("two that moved together", "front tread mast left right", "front left right tread mast",
            "It rains: “Left tread” and “At the mast” now come after “Right side”.");
        row("one more visit", "front left right", "front left right left",
            "It rains: “Left side” is added after “Right side”.");
        row("one visit less", "front left right left", "front left right",
            "It rains: “Left side” is left out.");
        row("a point is lost", "front/arc-clear left/oil right", "front/arc-clear right",
            "It rains: “Oil level” can't be settled now. “Left side” is left out.");
        row("a point is there again", "front right", "front left/oil right",
            "It rains: “Oil level” can be settled again. “Left side” is added after “In front”.");
        row("the rest is counted", "front/tie-down-off left/oil right", "tread mast front right",
            "It rains: “Tie-down off” and “Oil level” can't be settled now. “Left tread” and “At the mast” "
            "are added "
            "first, and 1 more.");
    }
    void words() {
        QFETCH(QByteArray, known);
        QFETCH(QByteArray, anew);
        QFETCH(QByteArray, words);
        const test::Round round(machine);
        QCOMPARE(
            QByteArray::fromStdString(whatMoved("It rains", steps(known), steps(anew), round.state, machine)),
            words);
        const Sentence real =
            whatMoved(say(moved::lightLow), steps(known), steps(anew), round.state, machine);
        QVERIFY2(isReadBack(real), real.c_str());
    }

    /// A pattern more in moved_words.hpp, and nobody reads it back: fails.
    void everyPatternIsReadBack_data() {
        QTest::addColumn<QByteArray>("pattern");
        QFile header(QStringLiteral(AMBIT_ROOT "/core/round/moved_words.hpp"));
        QVERIFY(header.open(QIODevice::ReadOnly));
        static const QRegularExpression pattern(QStringLiteral("pattern\\(\"([^\"]*)\"\\)"));
        for (auto all = pattern.globalMatch(QString::fromUtf8(header.readAll())); all.hasNext();) {
            const QByteArray its = all.next().captured(1).toUtf8();
            QTest::newRow(its) << its;
        }
    }
    void everyPatternIsReadBack() {
        QFETCH(QByteArray, pattern);
        const Sentence low = say(moved::lightLow), first = say(moved::isLeftOut, front);
        const auto moves = [&](const Sentence& what) { return ended(say(moved::causeAndFirst, low, what)); };
        if (pattern == moved::causeAndFirst) {
            QVERIFY(isReadBack(moves(first)));
        } else if (pattern == moved::andThen) {
            QVERIFY(isReadBack(ended(say(moved::andThen, say(moved::causeAndFirst, low, first), first))));
        } else if (pattern == moved::andMore) {
            QVERIFY(isReadBack(say(moved::andMore, say(moved::causeAndFirst, low, first), figure(12))));
        } else if (pattern == moved::two || pattern == moved::twoAndMore) {
            QVERIFY(
                isReadBack(moves(say(moved::areAddedAfter, made(pattern, {front, left, figure(3)}), left))));
        } else if (pattern == moved::askedBy) {
            QVERIFY(isReadBack(ended(made(pattern, {"Kim Invented: FI", front}))));
        } else {
            const Sentence said = made(pattern, {front, left});
            QVERIFY2(isReadBack(ended(said)) || isReadBack(moves(said)), said.c_str());
        }
    }
    void namesCanBeAnything() {
        QVERIFY(isReadBack(ended(say(moved::cannotBeUsed, quoted("Stand “A” and “B”: 1. is sound")))));
        const Sentence odd = ended(say(moved::cannotBeUsed, quoted("5” gap"))); // no pair of marks
        QVERIFY(whySaid(kept(odd)).made() == nullptr);
        QCOMPARE(whySaid(kept(odd)), odd);
    }
    /// Of another version, or a stranger's.
    void anythingElseIsToldAsItIs() {
        for (const char* words : {"", ".", "The light is low", "The light is blue.", "The light is low: .",
                                  "“In front” can't be used: It rains.", "“” is sound, and x more."}) {
            QCOMPARE(whySaid(words), Sentence(words));
            QVERIFY2(whySaid(words).made() == nullptr, words);
        }
        std::string hostile = "“";
        while (hostile.size() < mostRead)
            hostile += "a: “b” and “c”, “d” and 3 more. ";
        hostile.resize(mostRead);
        QCOMPARE(whySaid(hostile), Sentence(hostile));
        QVERIFY(
            whySaid(ended(say(moved::isSound, ambit::quoted(std::string(mostRead, 'a')))).substr()).made() ==
            nullptr);
    }

    void whatTheCauseNamesIsNotToldAgain() {
        const test::Round round(machine);
        QCOMPARE(whatMoved("“Right side” was reached out of turn", steps("front left right"),
                           steps("right front left"), round.state, machine),
                 std::string("“Right side” was reached out of turn."));
    }

    void aBlockedStandsPointsAreToldWithTheirNewStand() {
        test::Round round(machine);
        QVERIFY(round.act(StandBlocked{"front", "Ice."}));
        QCOMPARE(whatMoved("“In front” can't be used", steps("front/arc-clear left/oil right"),
                           steps("left/arc-clear/oil right"), round.state, machine),
                 std::string("“In front” can't be used: “Rotor arc clear” is now settled from “Left side”."));
    }

    void initTestCase() { machine = test::machine(); }

private:
    airframe::Airframe machine;
};

QTEST_APPLESS_MAIN(TestMoved)
#include "tst_moved.moc"
