#include "model/language.hpp"

#include <QCoreApplication>
#include <QDir>
#include <QLocale>
#include <QRegularExpression>
#include <QScopedValueRollback>
#include <QTranslator>
#include <atomic>

namespace ambit::view {

namespace {

/// Where the build has put the catalogues that qml/CMakeLists.txt lists.
const QString folder = QStringLiteral(":/languages/");
const QString nameOfFile = QStringLiteral("ambit_%1.qm");

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

} // namespace

Language::Language(const QString& code) {
    speak(code);
}

Language::~Language() { // a translator takes itself off
    const Language* self = this;
    if (speaker.compare_exchange_strong(self, nullptr)) spokenNow = 0;
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
    catalogue.reset();
    speaker = this;
    spokenNow = 0;
    auto found = std::make_unique<Catalogue>();
    if (!found->load(folder + nameOfFile.arg(code))) return;
    catalogue = std::move(found);
    QCoreApplication::installTranslator(catalogue.get());
    spokenNow = all().indexOf(code);
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
