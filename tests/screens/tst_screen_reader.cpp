// The demo helicopter's whole round, from the aircraft's page to the signed record, by what a screen reader
// has: the accessible tree's roles, names and states, its actions, its values, and what it is told of
// changes. No object names, no places on the screen, no view models: those are only asked at the end whether
// it was done.
#include "one_window.hpp"

#include <QAccessible>
#include <QMetaEnum>
#include <QPointer>
#include <QRegularExpression>
#include <QtGui/private/qguiapplication_p.h>
#include <qpa/qplatformaccessibility.h>
#include <qpa/qplatformintegration.h>

using namespace ambit;
using test::OneWindow;

namespace {

using Node = QAccessibleInterface;
using Role = QAccessible::Role;

/// An alert that came up, or says something else now.
struct Told {
    QPointer<QObject> by;
    QString name; ///< "": it came up; it is asked when it is all there
};
std::vector<Told> told; // the handler is a plain function

void listen(QAccessibleEvent* event) {
    // Something that goes is told of while it is being taken apart: nothing of it can be asked then.
    if (event->type() == QAccessible::ObjectShow) told.push_back({event->object(), {}});
    if (event->type() != QAccessible::NameChanged) return;
    const QAccessibleInterface* node = event->accessibleInterface();
    if (node != nullptr && node->isValid() && node->role() == QAccessible::AlertMessage)
        told.push_back({event->object(), node->text(QAccessible::Name)});
}

/// What was said by alerts since the last press.
QStringList heard() {
    QStringList words;
    for (const Told& one : told) {
        if (!one.name.isEmpty() || one.by == nullptr) {
            words << one.name;
            continue;
        }
        const QAccessibleInterface* node = QAccessible::queryAccessibleInterface(one.by);
        if (node != nullptr && node->role() == QAccessible::AlertMessage && !node->state().invisible)
            words << node->text(QAccessible::Name);
    }
    words.removeAll(QString());
    return words;
}

QString nameOf(const Node& node) {
    return node.text(QAccessible::Name);
}

QString roleOf(const Node& node) {
    return QString::fromLatin1(QMetaEnum::fromType<QAccessible::Role>().valueToKey(node.role()));
}

/// What a reader goes to: seen, and not under something else.
bool isThere(const Node& node) {
    return node.isValid() && !node.state().invisible;
}

/// Something that can be done, not only read.
bool isControl(const Node& node) {
    switch (node.role()) {
    case QAccessible::PushButton:
    case QAccessible::RadioButton:
    case QAccessible::CheckBox:
    case QAccessible::EditableText:
    case QAccessible::PageTab:
    case QAccessible::Slider:
    case QAccessible::Link:
        return true;
    default:
        return false;
    }
}

/// The tree in the order in which a reader goes through it.
void gather(Node& node, std::vector<Node*>& all) {
    if (!isThere(node)) return;
    all.push_back(&node);
    for (int i = 0; i < node.childCount(); ++i)
        if (Node* child = node.child(i)) gather(*child, all);
}

class Reader {
public:
    explicit Reader(QQuickWindow& window) : root(QAccessible::queryAccessibleInterface(&window)) {
        if (root == nullptr) qFatal("The window has no accessible tree.");
    }

    [[nodiscard]] std::vector<Node*> all() const {
        std::vector<Node*> nodes;
        gather(*root, nodes);
        return nodes;
    }
    /// The last one: what came up last stands last. nullptr: there is none.
    [[nodiscard]] Node* find(Role role, const QString& name, bool wholeName = true) const {
        Node* found = nullptr;
        for (Node* node : all())
            if (node->role() == role && !node->state().disabled &&
                (wholeName ? nameOf(*node) == name : nameOf(*node).startsWith(name)))
                found = node;
        return found;
    }
    [[nodiscard]] bool has(Role role, const char* name) const {
        return find(role, QString::fromUtf8(name)) != nullptr;
    }

    /// Waits a moment for it: what has just come up is laid out with the next frame.
    void press(Role role, const QString& name, bool wholeName = true) {
        Node* node = waitFor(role, name, wholeName);
        QVERIFY2(node != nullptr,
                 qPrintable(QStringLiteral("Nothing to press: ") + name + QLatin1Char('\n') + listing()));
        auto* actions = node->actionInterface();
        QVERIFY2(actions != nullptr &&
                     actions->actionNames().contains(QAccessibleActionInterface::pressAction()),
                 qPrintable(name + QStringLiteral(" can't be pressed.")));
        told.clear();
        actions->doAction(QAccessibleActionInterface::pressAction());
        OneWindow::rest();
    }
    void press(const char* name) { press(QAccessible::PushButton, QString::fromUtf8(name)); }
    void choose(const char* name) {
        press(QAccessible::RadioButton, QString::fromUtf8(name));
        Node* node = find(QAccessible::RadioButton, QString::fromUtf8(name));
        QVERIFY2(node != nullptr && node->state().checked, name);
    }
    void write(const QString& name, const QString& words) {
        Node* node = waitFor(QAccessible::EditableText, name, true);
        QVERIFY2(node != nullptr,
                 qPrintable(QStringLiteral("No field: ") + name + QLatin1Char('\n') + listing()));
        QVERIFY2(!node->state().readOnly && node->state().focusable, qPrintable(name));
        node->setText(QAccessible::Value, words);
        OneWindow::rest();
        if (!node->state().passwordEdit) QCOMPARE(node->text(QAccessible::Value), words);
    }
    void write(const char* name, const char* words) {
        write(QString::fromUtf8(name), QString::fromUtf8(words));
    }

    /// Every control has a name, none is like the one before, a heading says something.
    void check() const {
        const Node* before = nullptr;
        for (Node* node : all()) {
            const bool reads =
                node->role() == QAccessible::StaticText || node->role() == QAccessible::Heading;
            if (!isControl(*node) && !reads) continue;
            QVERIFY2(!nameOf(*node).isEmpty(),
                     qPrintable(roleOf(*node) + QStringLiteral(" without a name in\n") + listing()));
            if (isControl(*node) && before != nullptr)
                QVERIFY2(before->role() != node->role() || nameOf(*before) != nameOf(*node),
                         qPrintable(QStringLiteral("Twice the same: ") + nameOf(*node) + QLatin1Char('\n') +
                                    listing()));
            if (isControl(*node) && node->role() != QAccessible::EditableText)
                QVERIFY2(node->actionInterface() != nullptr &&
                             !node->actionInterface()->actionNames().isEmpty(),
                         qPrintable(nameOf(*node)));
            before = isControl(*node) ? node : before;
        }
    }
    /// One is read before the other.
    void before(const QString& first, const QString& second) const {
        int at = 0, firstAt = -1, secondAt = -1;
        for (const Node* node : all()) {
            if (firstAt < 0 && nameOf(*node).contains(first)) firstAt = at;
            if (nameOf(*node) == second && !node->state().disabled) secondAt = at;
            ++at;
        }
        QVERIFY2(firstAt >= 0 && secondAt > firstAt,
                 qPrintable(QStringLiteral("“%1” isn't before “%2”\n").arg(first, second) + listing()));
    }
    [[nodiscard]] QString listing() const {
        QString text;
        for (const Node* node : all())
            text += roleOf(*node) + QStringLiteral(": ") + nameOf(*node) +
                    (node->text(QAccessible::Description).isEmpty()
                         ? QString()
                         : QStringLiteral(" [") + node->text(QAccessible::Description) + QLatin1Char(']')) +
                    (node->state().disabled ? QStringLiteral(" (off)") : QString()) + QLatin1Char('\n');
        return text;
    }

private:
    [[nodiscard]] Node* waitFor(Role role, const QString& name, bool wholeName) const {
        for (int i = 0; i < 100; ++i) {
            if (Node* node = find(role, name, wholeName)) return node;
            QTest::qWait(10);
        }
        return nullptr;
    }

    Node* root;
};

#define TOLD(words)                                                                                          \
    QVERIFY2(heard().join(QLatin1Char('\n')).contains(words),                                                \
             qPrintable(QString(words) + QStringLiteral(" wasn't told, but:\n") +                            \
                        heard().join(QLatin1Char('\n'))))

} // namespace

class TestScreenReader : public QObject {
    Q_OBJECT

private slots:
    void initTestCase() {
        // As a screen reader's coming does: without it nothing is told. Only Qt's own headers can.
        QPlatformAccessibility* platform = QGuiApplicationPrivate::platformIntegration()->accessibility();
        QVERIFY(platform != nullptr);
        platform->setActive(true);
        QVERIFY(QAccessible::isActive());
        QAccessible::installUpdateHandler(listen);
    }
    void cleanupTestCase() { QAccessible::installUpdateHandler(nullptr); }

    void wholeRound_data() {
        QTest::addColumn<QSize>("size");
        QTest::newRow("phone") << QSize(390, 844);
        QTest::newRow("tablet") << QSize(1180, 820);
    }
    void wholeRound() {
        QFETCH(QSize, size);
        QTest::failOnWarning(QRegularExpression(QStringLiteral("^qrc:")));
        OneWindow device(size);
        Reader reader(*device.window);
        const auto until = [&](auto step) {
            step();
            return !QTest::currentTestFailed();
        };
        if (!until([&] { begin(reader, device); })) return;
        for (int steps = 0; steps < 300 && !reader.has(QAccessible::PushButton, "Review"); ++steps)
            if (!until([&] { next(reader, device); })) return;
        if (!until([&] { conclude(reader, device); })) return;
        QVERIFY(settled > 90);
        QVERIFY(portions >= 2);
        QCOMPARE(device.app->round()->phase(), QStringLiteral("sealed"));
        QVERIFY(!device.app->signing()->recordId().isEmpty());
        QCOMPARE(device.app->round()->findingCount(), 1);
        reader.check();
    }

private:
    void begin(Reader& reader, OneWindow&) {
        settled = portions = 0;
        found = missed = refused = false;
        reader.check();
        reader.press(QAccessible::PushButton, QStringLiteral("OX-DEMO"), false);
        reader.check();
        reader.choose("Before the first flight");
        reader.write("Name", "Robin Example");
        reader.choose("Pilot");
        reader.press("Begin");
    }
    /// What the card says, as a person would who hears it.
    void next(Reader& reader, OneWindow& device) {
        device.clock.at.ms += 8'000;
        if (settled % 12 == 0) reader.check();
        // Where no hand is free the portion is told, and asked for after it.
        if (reader.has(QAccessible::PushButton, "Up I go")) {
            reader.press("Up I go");
            reader.check();
            reader.press("I am down again");
            ++portions;
            return;
        }
        if (reader.has(QAccessible::PushButton, "Touch instead")) {
            reader.check();
            reader.press("Touch instead");
            return;
        }
        if (reader.has(QAccessible::PushButton, "I am at the foot of it")) {
            reader.press("I am at the foot of it");
            return;
        }
        if (reader.has(QAccessible::PushButton, "I am there")) {
            reader.press("I am there");
            TOLD(QStringLiteral("settled."));
            return;
        }
        if (reader.has(QAccessible::PushButton, "Done")) {
            reader.press("Done");
            TOLD(QStringLiteral("settled."));
            return;
        }
        // A point: what it is comes before its keys.
        const QString title = heading(reader);
        reader.before(title, QStringLiteral("Sound"));
        if (QTest::currentTestFailed()) return;
        if (Node* field = valueField(reader)) {
            if (!refused) return refuse(reader, field);
            reader.write(nameOf(*field), within(field->text(QAccessible::Description)));
        } else if (!found && settled > 10) {
            find(reader);
            if (found || QTest::currentTestFailed()) return;
        } else if (!missed && settled > 20) {
            missed = true;
            return miss(reader);
        }
        reader.press("Sound");
        ++settled;
        TOLD(QStringLiteral("%1 of 93 settled.").arg(settled));
    }
    /// Without its value it is refused, and that is said.
    void refuse(Reader& reader, Node* field) {
        refused = true;
        const QString quantity = nameOf(*field);
        reader.press("Sound");
        const QStringList words = heard();
        QVERIFY2(std::any_of(words.begin(), words.end(),
                             [](const QString& one) { return !one.contains(QStringLiteral("settled.")); }),
                 qPrintable(words.join(QLatin1Char('\n'))));
        reader.press("Close");
        QVERIFY(!quantity.isEmpty());
    }
    void find(Reader& reader) {
        reader.press("Finding");
        reader.check();
        reader.write("What you see, where, how large", "Black powder at two rivets.");
        if (!reader.has(QAccessible::RadioButton, "For assessment")) {
            reader.press("Back"); // here every finding grounds
            return;
        }
        found = true;
        reader.choose("For assessment");
        reader.press("Keep the finding");
        ++settled;
        TOLD(QStringLiteral("%1 of 93 settled.").arg(settled));
    }
    void miss(Reader& reader) {
        reader.press("Not inspected");
        reader.check();
        reader.choose("Can't be reached today.");
        reader.write("Basis: handbook section, deferral, permission", "Day flight only.");
        reader.press("Settle as not inspected");
        ++settled;
        TOLD(QStringLiteral("%1 of 93 settled.").arg(settled));
    }
    void conclude(Reader& reader, OneWindow& device) {
        reader.press("Review");
        reader.check();
        while (reader.has(QAccessible::PushButton, "Is closed"))
            reader.press("Is closed");
        reader.press("Conclude");
        reader.check();
        reader.choose("Fit");
        reader.before(QStringLiteral("fit for this flight"), QStringLiteral("Conclude: fit"));
        reader.write("Reasons", "Mechanic told; firm under the thumb.");
        reader.press("Conclude: fit");
        reader.check();
        reader.write("Your name", "Robin Example");
        reader.write("Passphrase", "round and round");
        reader.write("The same passphrase again", "round and round");
        reader.press("Make the key");
        reader.write("Passphrase", "round and round");
        reader.press("Sign and seal");
        QVERIFY2(device.app->problem().isEmpty(), qPrintable(device.app->problem()));
    }

    /// The last one: the card's.
    static QString heading(const Reader& reader) {
        QString last;
        for (const Node* node : reader.all())
            if (node->role() == QAccessible::Heading) last = nameOf(*node);
        return last;
    }
    static Node* valueField(const Reader& reader) {
        for (Node* node : reader.all())
            if (node->role() == QAccessible::EditableText && !node->state().disabled) return node;
        return nullptr;
    }
    /// A value well within the limit, as it is read out: "4 to 6 qt", "at least 3.0 mm", "at most 6.0 mm".
    static QString within(const QString& limit) {
        static const QRegularExpression number(QStringLiteral("[0-9]+(\\.[0-9]+)?"));
        auto found = number.globalMatch(limit);
        const double first = found.next().captured().toDouble();
        const double last = found.hasNext()                              ? found.next().captured().toDouble()
                            : limit.contains(QStringLiteral("at least")) ? 3 * first
                                                                         : 0;
        return QString::number((first + last) / 2, 'f', 1);
    }

    int settled = 0;
    int portions = 0;
    bool found = false, missed = false, refused = false;
};

// QTEST_MAIN in full: the fonts come before the application object.
int main(int argc, char** argv) {
    const ambit::desktop::OwnFonts fonts(true);
    QGuiApplication application(argc, argv);
    ambit::view::prepareApplication();
    TestScreenReader tests;
    QTEST_SET_MAIN_SOURCE_PATH
    return QTest::qExec(&tests, argc, argv);
}
#include "tst_screen_reader.moc"
