#include "model/language.hpp"

#include "model/sentence.hpp"

#include <QCoreApplication>
#include <QDir>
#include <QLocale>
#include <QRegularExpression>
#include <QScopedValueRollback>
#include <QTranslator>
#include <atomic>
#include <map>
#include <mutex>

namespace ambit::view {

namespace {

/// Where the build has put the catalogues that qml/CMakeLists.txt lists.
const QString folder = QStringLiteral(":/languages/");
const QString nameOfFile = QStringLiteral("ambit_%1.qm");
const QString nameOfCore = QStringLiteral("core_%1.qm");

/// Drawing happens within a call: what other threads say meanwhile is not concerned.
thread_local bool drawing = false;

/// The last to speak, while it does; and what, of Language::all().
std::atomic<const Language*> speaker = nullptr;
std::atomic<qsizetype> spokenNow = 0;

class Catalogue : public QTranslator {
public:
    using QTranslator::QTranslator;
    QString translate(const char* context, const char* source, const char* comment, int n) const override {
        return drawing ? QString() : QTranslator::translate(context, source, comment, n);
    }
};

/// What airframes call things, in what is spoken now.
class Names : public QTranslator {
public:
    bool isEmpty() const override { return false; }
    QString translate(const char* context, const char* source, const char* /*comment*/,
                      int /*n*/) const override {
        if (drawing || context == nullptr || std::string_view(context) != airframeContext) return {};
        const std::scoped_lock lock(guard);
        const auto found = names.find(source);
        return found == names.end() ? QString() : found->second;
    }
    void learn(const std::string& written, const std::string& shown) {
        const std::scoped_lock lock(guard);
        names.insert_or_assign(written, QString::fromStdString(shown));
    }
    void forget() {
        const std::scoped_lock lock(guard);
        names.clear();
    }

private:
    mutable std::mutex guard;
    std::map<std::string, QString, std::less<>> names;
};

Names& names() {
    static Names known;
    return known;
}

/// Both are one airframe: what stands at one place in the first stands there in the second.
template<class Things, class Learn>
void inPairs(const Things& written, const Things& shown, const Learn& learn) {
    for (std::size_t i = 0; i < std::min(written.size(), shown.size()); ++i)
        learn(written[i], shown[i]);
}

} // namespace

Language::Language(const QString& code) {
    speak(code);
}

Language::~Language() { // a translator takes itself off
    const Language* self = this;
    if (!speaker.compare_exchange_strong(self, nullptr)) return;
    spokenNow = 0;
    names().forget();
}

const QStringList& Language::all() {
    static const QStringList codes = [] {
        QStringList found{QStringLiteral("en")};
        for (const QString& file :
             QDir(folder).entryList({nameOfFile.arg(QLatin1Char('*'))}, QDir::Files, QDir::Name))
            found << file.section(QRegularExpression(QStringLiteral("[_.]")), 1, 1);
        return found;
    }();
    return codes;
}

QString Language::firstOf(const QStringList& locales) {
    for (const QString& locale : locales)
        if (QString code = locale.section(QRegularExpression(QStringLiteral("[-_]")), 0, 0);
            all().contains(code))
            return code;
    return all().constFirst();
}

QString Language::nameOf(const QString& code) {
    if (code == QStringLiteral("en")) return QStringLiteral("English"); // Qt's is of one country
    const QString name = QLocale(code).nativeLanguageName();
    return name.left(1).toUpper() + name.mid(1); // it stands alone: French writes it small within a sentence
}

void Language::speak(const QString& code) {
    catalogues.clear();
    names().forget();
    speaker = this;
    spokenNow = 0;
    if (!all().contains(code)) return;
    for (const QString& name : {nameOfFile, nameOfCore}) {
        auto found = std::make_unique<Catalogue>();
        if (!found->load(folder + name.arg(code))) continue;
        QCoreApplication::installTranslator(found.get());
        catalogues.push_back(std::move(found));
    }
    QCoreApplication::removeTranslator(&names()); // it may be on already, and would be twice
    QCoreApplication::installTranslator(&names());
    spokenNow = all().indexOf(code);
}

void Language::learn(const airframe::Airframe& written, const airframe::Airframe& shown) {
    const auto byName = [](const auto& one, const auto& other) { names().learn(one.name, other.name); };
    const auto spans = [](const airframe::Span& one, const airframe::Span& other) {
        const auto* its = std::get_if<airframe::Units>(&one);
        const auto* said = std::get_if<airframe::Units>(&other);
        if (its != nullptr && said != nullptr && its->allowance && said->allowance)
            names().learn(its->allowance->only, said->allowance->only);
    };
    inPairs(written.zones, shown.zones, byName);
    inPairs(written.stands, shown.stands, byName);
    inPairs(written.counters, shown.counters, byName);
    inPairs(written.settings, shown.settings, [&](const auto& one, const auto& other) {
        byName(one, other);
        inPairs(one.states, other.states, byName);
    });
    inPairs(written.openings, shown.openings, [&](const auto& one, const auto& other) {
        byName(one, other);
        names().learn(one.owed, other.owed);
    });
    inPairs(written.points, shown.points, [&](const auto& one, const auto& other) {
        byName(one, other);
        if (one.limit && other.limit) names().learn(one.limit->quantity, other.limit->quantity);
    });
    inPairs(written.inspections, shown.inspections, [&](const auto& one, const auto& other) {
        byName(one, other);
        inPairs(one.every, other.every, spans);
    });
    inPairs(written.lifeLimits, shown.lifeLimits, [&](const auto& one, const auto& other) {
        byName(one, other);
        inPairs(one.life, other.life, spans);
    });
}

QString Language::spoken() {
    return all().value(spokenNow, all().constFirst());
}

record::DrawPages inEnglish(record::DrawPages draw) {
    if (!draw) return draw;
    return [draw = std::move(draw)](const auto&... given) {
        const QScopedValueRollback english(drawing, true);
        return draw(given...);
    };
}

} // namespace ambit::view
