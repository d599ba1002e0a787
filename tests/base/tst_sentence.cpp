// What a sentence is as text, and what it knows of how it was made.
#include "base/result.hpp"

#include <QtTest>

using namespace ambit;

class TestSentence : public QObject {
    Q_OBJECT

private slots:
    void itIsItsEnglish() {
        const Sentence one = say("%2 comes after %1.", quoted("A"), quoted("B"));
        QCOMPARE(std::string(one), std::string("“B” comes after “A”."));
        QCOMPARE(one.made()->pattern, std::string("%2 comes after %1."));
        QCOMPARE(one.made()->parts.size(), std::size_t{2});
        QCOMPARE(std::string(say("%1 %% of 5 %")),
                 std::string(" %% of 5 %")); // a part that isn't given says nothing
    }
    /// A name that looks like a pattern is a name.
    void whatWasReadIsNoPattern() {
        QCOMPARE(std::string(say("%1 is open.", quoted("100%1"))), std::string("“100%1” is open."));
        QVERIFY(Sentence(std::string("%1 is open.")).made() == nullptr);
    }
    void whatWasChangedIsToldAsItIs() {
        Sentence one = say("It is open.");
        QVERIFY(one.made() != nullptr);
        one += " Really.";
        QVERIFY(one.made() == nullptr);
        one = say("It is shut.");
        QVERIFY(one.made() != nullptr);
    }
    void figuresAndDaysKnowWhatTheyAre() {
        const Sentence one = say("due on %1, %2 left", onDay("2026-06-20"), figure("12.4"));
        QCOMPARE(std::string(one), std::string("due on 2026-06-20, 12.4 left"));
        QVERIFY(one.made()->parts[0].kind() == Sentence::Kind::day);
        QVERIFY(one.made()->parts[1].kind() == Sentence::Kind::figure);
    }
    void endsAndJoints() {
        QCOMPARE(std::string(ended("So")), std::string("So."));
        QCOMPARE(std::string(ended(say("So."))), std::string("So."));
        QCOMPARE(std::string(joined("One.", "Two.")), std::string("One. Two."));
        QCOMPARE(std::string(joined({}, say("Two."))), std::string("Two."));
        QCOMPARE(joined(say("One."), {}).made()->pattern, std::string("One."));
    }
    void anErrorCarriesBoth() {
        const Result<void> refused =
            fail(ErrorCode::refused, say("%1 isn't open.", quoted("Cowl")), "cowl", say("Open it."));
        QCOMPARE(toText(refused.error()), std::string("“Cowl” isn't open (cowl). Open it."));
        QCOMPARE(refused.error().what.made()->parts[0].made()->parts[0], Sentence("Cowl"));
        QVERIFY(refused.error().remedy.made() != nullptr);
    }
};

QTEST_APPLESS_MAIN(TestSentence)
#include "tst_sentence.moc"
