// What comes due. Where a row's figures come from: READ, from the rule's own text; READ-2, from a source that
// quotes or explains it; OURS, Ambit's own choice where no rule was found.
#include "airframe/read.hpp"
#include "judge/due.hpp"

#include <QTest>
#include <random>

using namespace ambit;
using judge::Due;
using judge::DueVerdict;
using judge::Moment;

namespace {

Decimal decimal(const std::string& text) {
    return Decimal::parse(text).value();
}

Date date(const std::string& text) {
    return Date::parse(text).value();
}

const airframe::Airframe& machine() {
    static const airframe::Airframe made = [] {
        airframe::Airframe a;
        a.counters = {{"hours", "Hours", "h"}, {"landings", "Landings", "landings"}};
        return a;
    }();
    return made;
}

airframe::Units hours(const char* count, const char* ahead = "0", const char* allowance = "") {
    airframe::Units units{"hours", "h", decimal(count), decimal(ahead), {}};
    if (*allowance != 0) units.allowance = airframe::Allowance{decimal(allowance), "While en route."};
    return units;
}

airframe::Units landings(const char* count) {
    return {"landings", "landings", decimal(count), {}, {}};
}

airframe::Inspection inspection(std::vector<airframe::Span> every) {
    return {"item", "Item", std::move(every), "Invented."};
}

/// "2026-04-15 1000.0": a day and hours; either may be "-", not known.
Moment moment(const std::string& text) {
    const std::size_t space = text.find(' ');
    const std::string on = text.substr(0, space);
    const std::string reading = space == std::string::npos ? "-" : text.substr(space + 1);
    Moment at;
    if (on != "-") at.on = date(on);
    if (reading != "-") at.counters["hours"] = decimal(reading);
    return at;
}

/// Moments apart by commas.
std::vector<Moment> moments(const QByteArray& text) {
    std::vector<Moment> all;
    for (const QByteArray& one : text.split(','))
        if (!one.trimmed().isEmpty()) all.push_back(moment(one.trimmed().toStdString()));
    return all;
}

Due judgedHours(const char* past, const char* now) {
    return judge::due(machine(), inspection({hours("100", "10", "10")}), moments(past), moment(now));
}

Due dueAs(DueVerdict verdict, std::vector<judge::SpanDue> spans) {
    return {verdict, std::move(spans)};
}

/// What is left of so many hours, or of so many days (counter "").
judge::SpanDue rest(const char* counter, const char* left, const char* length) {
    judge::SpanDue span;
    span.verdict = decimal(left) < Decimal() ? DueVerdict::passed : DueVerdict::fine;
    span.counter = counter;
    span.length = decimal(length);
    span.left = decimal(left);
    return span;
}

} // namespace

class TestDue : public QObject {
    Q_OBJECT

private slots:
    void hundredHours_data() {
        QTest::addColumn<QByteArray>("past");
        QTest::addColumn<QByteArray>("now");
        QTest::addColumn<QByteArray>("at");
        QTest::addColumn<QByteArray>("left");
        QTest::addColumn<QByteArray>("verdict");
        QTest::addColumn<QByteArray>("late"); ///< "", "4.6 allowed", "10.1"
        const auto row = [](const char* name, const char* past, const char* now, const char* at,
                            const char* left, const char* verdict, const char* late = "") {
            QTest::newRow(name) << QByteArray(past) << QByteArray(now) << QByteArray(at) << QByteArray(left)
                                << QByteArray(verdict) << QByteArray(late);
        };
        // READ: 14 CFR 91.409(b).
        row("READ inspected 1000.0", "- 1000.0", "- 1000.0", "1100.0", "100.0", "fine");
        row("READ at 1100.0 itself", "- 1000.0", "- 1100.0", "1100.0", "0.0", "soon");
        row("READ 1100.1 only en route", "- 1000.0", "- 1100.1", "1100.0", "-0.1", "within allowance");
        row("READ 1110.0 is the limit", "- 1000.0", "- 1110.0", "1100.0", "-10.0", "within allowance");
        row("READ 1110.1 violates", "- 1000.0", "- 1110.1", "1100.0", "-10.1", "passed");
        row("READ done at 1104.6: next at 1200.0, not 1204.6", "- 1000.0, - 1104.6", "- 1104.6", "1200.0",
            "95.4", "fine", "4.6 allowed");
        row("READ early at 1092.0: next at 1192.0", "- 1000.0, - 1092.0", "- 1092.0", "1192.0", "100.0",
            "fine");
        row("READ on time", "- 1000.0, - 1100.0", "- 1100.0", "1200.0", "100.0", "fine");
        row("READ excess after excess", "- 1000.0, - 1104.6, - 1209.9", "- 1250", "1300.0", "50.0", "fine",
            "9.9 allowed");
        row("READ late, then early: counts from that", "- 1000.0, - 1104.6, - 1190", "- 1200", "1290", "90",
            "fine");
        // OURS: the rule speaks of the allowed excess only.
        row("OURS done at 1110.1: says so, still counts from 1100", "- 1000.0, - 1110.1", "- 1110.1",
            "1200.0", "89.9", "fine", "10.1");
        row("OURS late by all but a hair of a span", "- 1000, - 1199.9", "- 1199.9", "1200", "0.1", "soon",
            "99.9");
        row("OURS late by a whole span: counts from when done", "- 1000, - 1200", "- 1200", "1300", "100",
            "fine", "100");
        row("OURS told ahead at 10.0 left", "- 1000", "- 1090.0", "1100", "10.0", "soon");
        row("OURS not yet at 10.1 left", "- 1000", "- 1089.9", "1100", "10.1", "fine");
        row("OURS a reading is missing before the last", "- 1000, -, - 1150", "- 1150", "1250", "100",
            "fine");
    }
    void hundredHours() {
        QFETCH(QByteArray, past);
        QFETCH(QByteArray, now);
        QFETCH(QByteArray, at);
        QFETCH(QByteArray, left);
        QFETCH(QByteArray, verdict);
        QFETCH(QByteArray, late);
        const Due due = judgedHours(past.constData(), now.constData());
        QCOMPARE(due.spans.size(), std::size_t{1});
        const judge::SpanDue& span = due.spans[0];
        QCOMPARE(judge::toText(due.verdict), verdict.constData());
        QVERIFY(span.at && span.left && !span.on && span.why.empty());
        QVERIFY2(*span.at == decimal(at.toStdString()), span.at->text().c_str());
        QVERIFY2(*span.left == decimal(left.toStdString()), span.left->text().c_str());
        const std::string text =
            span.late ? span.late->by.text() + (span.late->allowed ? " allowed" : "") : "";
        QCOMPARE(text.c_str(), late.constData());
    }

    void months_data() {
        QTest::addColumn<QByteArray>("past");
        QTest::addColumn<int>("months");
        QTest::addColumn<QByteArray>("now");
        QTest::addColumn<QByteArray>("on");
        QTest::addColumn<QByteArray>("left");
        QTest::addColumn<QByteArray>("verdict");
        QTest::addColumn<QByteArray>("late");
        const auto row = [](const char* name, const char* past, int months, const char* now, const char* on,
                            const char* left, const char* verdict, const char* late = "") {
            QTest::newRow(name) << QByteArray(past) << months << QByteArray(now) << QByteArray(on)
                                << QByteArray(left) << QByteArray(verdict) << QByteArray(late);
        };
        // READ-2: due on the last day of the month; no definition was found in a rule's text.
        row("READ-2 annual", "2026-04-15", 12, "2026-05-01", "2027-04-30", "364", "fine");
        row("READ-2 two years", "2020-07-22", 24, "2022-07-31", "2022-07-31", "0", "soon");
        row("READ-2 over the new year", "2025-12-01", 12, "2026-12-31", "2026-12-31", "0", "soon");
        row("READ-2 into a leap February", "2023-02-28", 12, "2024-02-01", "2024-02-29", "28", "soon");
        row("READ-2 out of a leap February", "2024-02-29", 12, "2025-02-01", "2025-02-28", "27", "soon");
        row("READ-2 first of the month", "2026-04-01", 1, "2026-04-01", "2026-05-31", "60", "fine");
        row("READ-2 31st to a month of 30 days", "2026-03-31", 1, "2026-04-30", "2026-04-30", "0", "soon");
        row("READ-2 a century without a leap day", "2096-02-29", 48, "2100-01-01", "2100-02-28", "58",
            "fine");
        row("READ-2 the day after", "2026-04-15", 12, "2027-05-01", "2027-04-30", "-1", "passed");
        // READ: 91.409(a), 91.413(a) ask for one within the preceding months, whenever that was.
        row("READ early", "2025-04-15, 2026-03-02", 12, "2026-03-02", "2027-03-31", "394", "fine");
        row("READ late", "2025-04-15, 2026-06-12", 12, "2026-06-12", "2027-06-30", "383", "fine", "43");
        row("READ on the last day", "2025-04-15, 2026-04-30", 12, "2026-05-01", "2027-04-30", "364", "fine");
        row("OURS told ahead at 30 days", "2026-04-15", 12, "2027-03-31", "2027-04-30", "30", "soon");
        row("OURS not yet at 31", "2026-04-15", 12, "2027-03-30", "2027-04-30", "31", "fine");
    }
    void months() {
        QFETCH(QByteArray, past);
        QFETCH(int, months);
        QFETCH(QByteArray, now);
        QFETCH(QByteArray, on);
        QFETCH(QByteArray, left);
        QFETCH(QByteArray, verdict);
        QFETCH(QByteArray, late);
        const Due due = judge::due(machine(), inspection({airframe::Months{months, 30}}), moments(past),
                                   moment(now.toStdString()));
        const judge::SpanDue& span = due.spans.at(0);
        QVERIFY2(span.on && span.left && !span.at, span.why.c_str());
        QCOMPARE(toText(*span.on).c_str(), on.constData());
        QCOMPARE(span.left->text().c_str(), left.constData());
        QCOMPARE(judge::toText(due.verdict), verdict.constData());
        QCOMPARE(span.late ? span.late->by.text().c_str() : "", late.constData());
    }

    /// Whatever the day, the month's last day is within and the next day isn't.
    void everyDayOfFourHundredYears() {
        Date day = date("1999-12-31");
        QDate judgeOf(1999, 12, 31);
        for (int i = 0; i < 146'097; ++i) {
            const int count = 1 + i % 48;
            const auto item = inspection({airframe::Months{count, 0}});
            QDate last = QDate(judgeOf.year(), judgeOf.month(), 1).addMonths(count + 1).addDays(-1);
            const Moment done{day, {}};
            const Moment then{date(last.toString(Qt::ISODate).toStdString()), {}};
            const Moment after{then.on->plusDays(1).value(), {}};
            QVERIFY(judge::due(machine(), item, {done}, then).verdict == DueVerdict::soon);
            QVERIFY(judge::due(machine(), item, {done}, after).verdict == DueVerdict::passed);
            day = day.plusDays(1).value();
            judgeOf = judgeOf.addDays(1);
        }
    }

    void unknown_data() {
        QTest::addColumn<QByteArray>("past");
        QTest::addColumn<QByteArray>("now");
        QTest::addColumn<QByteArray>("words");
        const auto row = [](const char* name, const char* past, const char* now, const char* words) {
            QTest::newRow(name) << QByteArray(past) << QByteArray(now) << QByteArray(words);
        };
        row("never, and not since new", "", "2026-06-20 1000", "when this was last done is not known");
        row("no reading then", "2026-01-01", "2026-06-20 1000", "when this was last done is not known");
        row("no reading the last time", "2025-01-01 900, 2026-01-01", "2026-06-20 1000",
            "when this was last done is not known");
        row("no reading now", "2026-01-01 1000", "2026-06-20", "has no reading now");
        row("runs backwards", "2026-01-01 1000", "2026-06-20 999.9",
            "runs backwards, from 1000 h to 999.9 h");
        row("ran backwards", "2025-01-01 1000, 2026-01-01 900", "2026-06-20 950",
            "runs backwards, from 1000 h to 900 h");
        row("ran backwards over a gap", "2024-01-01 1000, 2025-01-01, 2026-01-01 900", "2026-06-20 950",
            "runs backwards, from 1000 h to 900 h");
        row("too large", "2026-01-01 999999999999999", "2026-06-20 999999999999999", "15 digits");
    }
    void unknown() {
        QFETCH(QByteArray, past);
        QFETCH(QByteArray, now);
        QFETCH(QByteArray, words);
        const Due due = judgedHours(past.constData(), now.constData());
        QCOMPARE(judge::toText(due.verdict), "unknown");
        const judge::SpanDue& span = due.spans.at(0);
        QVERIFY(!span.left && !span.at && !span.late);
        QVERIFY2(span.why.find(words.toStdString()) != std::string::npos && span.why.ends_with('.'),
                 span.why.c_str());
        QVERIFY(!judge::first(due));
    }

    void unknownDays() {
        const auto why = [](const char* past, const char* now) {
            const Due due =
                judge::due(machine(), inspection({airframe::Months{12, 0}}), moments(past), moment(now));
            return due.verdict == DueVerdict::unknown ? due.spans.at(0).why : "known";
        };
        QVERIFY(why("- 1000", "2026-06-20").starts_with("The day when this was last done is not known."));
        QVERIFY(why("2026-01-01", "- 1000").starts_with("Today's date is not known."));
        QVERIFY(why("2026-06-21", "2026-06-20").starts_with("The calendar runs backwards, from 2026-06-21"));
        QVERIFY(why("2026-06-21, 2026-01-01", "2026-06-30").starts_with("The calendar runs backwards"));
        QVERIFY(why("9999-01-01", "9999-01-01").starts_with("This day lies outside"));
        QCOMPARE(why("-, 2026-01-01", "2026-01-01"), std::string("known"));
    }

    /// The reader refuses them; a caller's own are not judged.
    void emptySpans() {
        for (const airframe::Span& span :
             {airframe::Span(hours("0")), airframe::Span(hours("-1")), airframe::Span(airframe::Months{})}) {
            const Due due =
                judge::due(machine(), inspection({span}), {moment("2026-01-01 0")}, moment("2026-01-02 0"));
            QVERIFY(due.verdict == DueVerdict::unknown);
            QVERIFY(due.spans[0].why.starts_with("This span is empty."));
        }
    }

    /// Of several spans each is told; the most urgent gives the verdict.
    void whicheverComesFirst() {
        const auto item = inspection({hours("50", "5"), airframe::Months{4, 14}});
        const auto dueNow = [&](const char* now) {
            return judge::due(machine(), item, {moment("2026-01-10 600")}, moment(now));
        };
        QCOMPARE(judge::toText(dueNow("2026-02-01 610").verdict), "fine");
        QCOMPARE(judge::toText(dueNow("2026-02-01 646").verdict), "soon");
        QCOMPARE(judge::toText(dueNow("2026-05-20 610").verdict), "soon");
        QCOMPARE(judge::toText(dueNow("2026-06-01 610").verdict), "passed");
        QCOMPARE(judge::toText(dueNow("2026-02-01 651").verdict), "passed");
        QCOMPARE(judge::toText(dueNow("2026-02-01").verdict), "unknown");  // can't be called fine
        QCOMPARE(judge::toText(dueNow("2026-06-01").verdict), "passed");   // whatever the counter reads
        QCOMPARE(*judge::first(dueNow("2026-06-01 651")), std::size_t{0}); // 1 of 50 h against 1 of 141 days
        QCOMPARE(*judge::first(dueNow("2026-02-01 640")), std::size_t{0}); // a fifth of it is left
        QCOMPARE(*judge::first(dueNow("2026-02-01 601")), std::size_t{1});
        QCOMPARE(*judge::first(dueNow("2026-02-01")), std::size_t{1});
        // 10 h at 0.1 h a day last 100 days, longer than until 31 May.
        QCOMPARE(*judge::first(dueNow("2026-03-01 640"), {{"hours", decimal("0.1")}}), std::size_t{1});
        QCOMPARE(*judge::first(dueNow("2026-03-01 640"), {{"hours", decimal("0.2")}}), std::size_t{0});
    }

    void sinceNew() {
        const auto item = inspection({hours("100"), airframe::Months{12, 0}, landings("500")});
        Moment now = moment("2026-06-20 99.9");
        now.counters["landings"] = decimal("501");
        const Due due = judge::due(machine(), item, {judge::sinceNew(machine(), date("2026-01-15"))}, now);
        QCOMPARE(due.spans[0].left->text(), std::string("0.1"));
        QCOMPARE(toText(*due.spans[1].on), std::string("2027-01-31"));
        QCOMPARE(judge::toText(due.spans[2].verdict), "passed");
        QCOMPARE(due.spans[2].unit, std::string("landings"));
        QCOMPARE(due.spans[1].unit, std::string("days"));
        const Due noDay = judge::due(machine(), item, {judge::sinceNew(machine(), {})}, now);
        QVERIFY(noDay.spans[0].left && noDay.spans[1].verdict == DueVerdict::unknown);
    }

    /// OURS: a life is the part's own, whatever the aircraft had before.
    void lives() {
        const airframe::LifeLimit blades{
            "blades", "Blades", {hours("2200", "100"), airframe::Months{144, 90}}, "Invented."};
        const auto fitted = judge::fittedNew(machine(), moment("2020-05-05 1000"));
        const auto dueNow = [&](const judge::Fitted& part, const char* now) {
            return judge::due(machine(), blades, part, moment(now));
        };
        const Due young = dueNow(fitted, "2026-06-20 1284.6");
        QCOMPARE(judge::toText(young.verdict), "fine");
        QCOMPARE(young.spans[0].at->text(), std::string("3200"));
        QCOMPARE(young.spans[0].left->text(), std::string("1915.4"));
        QCOMPARE(toText(*young.spans[1].on), std::string("2032-05-31"));
        QCOMPARE(judge::toText(dueNow(fitted, "2026-06-20 3200.0").verdict), "soon");
        QCOMPARE(judge::toText(dueNow(fitted, "2026-06-20 3200.1").verdict), "passed");

        judge::Fitted used = fitted; // more than the aircraft itself has run
        used.had["hours"] = decimal("2000.5");
        used.newOn = date("2008-02-29");
        const Due old = dueNow(used, "2020-05-05 1000");
        QCOMPARE(old.spans[0].at->text(), std::string("1199.5"));
        QCOMPARE(judge::toText(old.spans[1].verdict), "passed");
        QCOMPARE(toText(*old.spans[1].on), std::string("2020-02-29"));

        const auto why = [&](const judge::Fitted& part, const char* now, std::size_t span) {
            return dueNow(part, now).spans.at(span).why;
        };
        judge::Fitted bare;
        QVERIFY(why(bare, "2026-06-20 1", 0).find("when this part was fitted is not known") !=
                std::string::npos);
        QVERIFY(why(bare, "2026-06-20 1", 1).find("life began is not known") != std::string::npos);
        bare.at = fitted.at;
        QVERIFY(why(bare, "2026-06-20 1000", 0).find("had run by “Hours”") != std::string::npos);
        bare.had["hours"] = decimal("-1");
        QVERIFY(why(bare, "2026-06-20 1000", 0).find("had run by “Hours”") != std::string::npos);
        // Back to before it was fitted, though not to before its life began.
        QVERIFY(why(used, "2020-05-05 999", 0).find("from 1000 h to 999 h") != std::string::npos);
        QVERIFY(why(used, "2019-01-01 1000", 1).find("from 2020-05-05 to 2019-01-01") != std::string::npos);
        used.newOn = date("2021-01-01");
        QVERIFY(why(used, "2026-01-01 1000", 1).find("runs backwards") != std::string::npos);
    }

    void order() {
        const auto unknownSpan = [] {
            judge::SpanDue span;
            span.verdict = DueVerdict::unknown;
            span.counter = "hours";
            return span;
        };
        const std::vector<Due> items{
            dueAs(DueVerdict::fine, {rest("hours", "30", "100")}),                        // 0: 30 %
            dueAs(DueVerdict::fine, {rest("", "60", "365")}),                             // 1: 16 %
            dueAs(DueVerdict::passed, {rest("hours", "-1", "100")}),                      // 2
            dueAs(DueVerdict::unknown, {unknownSpan(), rest("", "9", "365")}),            // 3
            dueAs(DueVerdict::passed, {rest("", "-10", "365"), unknownSpan()}),           // 4: -3 %
            dueAs(DueVerdict::unknown, {unknownSpan()}),                                  // 5
            dueAs(DueVerdict::fine, {rest("hours", "50", "50"), rest("", "360", "365")}), // 6: 99 %
            dueAs(DueVerdict::fine, {rest("", "3", "10")}),                               // 7: 30 % too
        };
        using Order = std::vector<std::size_t>;
        QCOMPARE(judge::inOrder(items), (Order{4, 2, 5, 3, 1, 0, 7, 6}));
        // 30 h last 15 days at 2 h a day, and 50 h 25.
        const judge::Rates rates{{"hours", decimal("2")}};
        QCOMPARE(judge::inOrder(items, rates), (Order{4, 2, 5, 3, 7, 0, 6, 1}));
        // A rate that tells nothing, or not of every counter, is no rate.
        QCOMPARE(judge::inOrder(items, {{"hours", Decimal()}}), judge::inOrder(items));
        std::vector<Due> more = items;
        more.push_back(dueAs(DueVerdict::fine, {rest("landings", "1", "5000")}));
        QCOMPARE(judge::inOrder(more, rates), (Order{4, 2, 5, 3, 8, 1, 0, 7, 6}));
        QVERIFY(judge::inOrder({}).empty());
    }

    /// Any order of the items gives the same order of what is due, where no two are equal.
    void orderIsOne() {
        std::mt19937 random(20260620); // NOLINT: the same numbers every time
        std::vector<Due> items;
        for (int i = 1; i <= 40; ++i) {
            const std::string left = std::to_string(i * 7 - 80) + ".5";
            items.push_back(dueAs(i * 7 < 80 ? DueVerdict::passed : DueVerdict::fine,
                                  {rest(i % 2 == 0 ? "hours" : "", left.c_str(), "97")}));
        }
        for (int round = 0; round < 200; ++round) {
            std::shuffle(items.begin(), items.end(), random);
            const auto order = judge::inOrder(items);
            for (std::size_t i = 1; i < order.size(); ++i)
                QVERIFY(*items[order[i - 1]].spans[0].left < *items[order[i]].spans[0].left);
        }
    }

    void words() {
        const airframe::Span hundred = hours("100", "10", "10");
        const auto text = [&](const char* past, const char* now) {
            return judge::toText(hundred, judgedHours(past, now).spans.at(0));
        };
        QCOMPARE(text("- 1000.0", "- 1087.6"), std::string("due at 1100.0 h, 12.4 h left"));
        QCOMPARE(text("- 1000.0, - 1104.6", "- 1110"),
                 std::string("due at 1200.0 h, 90.0 h left; last done 4.6 h late, within its allowance"));
        QCOMPARE(text("- 1000.0", "- 1104.6"),
                 std::string("was due at 1100.0 h, passed by 4.6 h; allowed by at most 10 h, and only: While "
                             "en route."));
        QCOMPARE(text("- 1000.0, - 1120", "- 1250"),
                 std::string("was due at 1200.0 h, passed by 50.0 h; last done 20.0 h late"));
        QCOMPARE(text("- 1000.0", "-"),
                 std::string("unknown: The counter “Hours” has no reading now. Read it."));
        const airframe::Span annual = airframe::Months{12, 30};
        const Due due =
            judge::due(machine(), inspection({annual}), {moment("2026-04-15")}, moment("2027-04-06"));
        QCOMPARE(judge::toText(annual, due.spans.at(0)), std::string("due on 2027-04-30, 24 days left"));
        const auto last = [&](const char* now) {
            return judge::toText(
                annual,
                judge::due(machine(), inspection({annual}), {moment("2026-04-15")}, moment(now)).spans.at(0));
        };
        QCOMPARE(last("2027-04-29"), std::string("due on 2027-04-30, 1 day left"));
        QCOMPARE(last("2027-05-01"), std::string("was due on 2027-04-30, passed by 1 day"));
    }

    /// The demo aircraft's own items, 20 of everything after they were done.
    void demoAircraft() {
        for (const char* name : {"helicopter", "aeroplane"}) {
            const auto read =
                airframe::readFrom(std::string(AMBIT_ROOT "/demo-aircraft/") + name + "/airframe.json");
            QVERIFY(read);
            Moment then = judge::sinceNew(*read, date("2026-04-15"));
            Moment now = judge::sinceNew(*read, date("2026-06-20"));
            for (auto& [id, reading] : now.counters)
                reading = decimal("20");
            for (const auto& item : read->inspections)
                QCOMPARE(judge::toText(judge::due(*read, item, {then}, now).verdict), "fine");
            for (const auto& part : read->lifeLimits) {
                const auto fitted = judge::fittedNew(*read, then);
                QCOMPARE(judge::toText(judge::due(*read, part, fitted, now).verdict), "fine");
            }
        }
    }
};

QTEST_APPLESS_MAIN(TestDue)
#include "tst_due.moc"
