#include "paper/fonts.hpp"

#include <QFile>
#include <QFontDatabase>
#include <QRawFont>
#include <QtEndian>

#include <array>
#include <optional>

// Outside any namespace, an unnamed one too: Q_INIT_RESOURCE needs it so.
static void initResource() {
    Q_INIT_RESOURCE(paper_fonts);
}

namespace ambit::paper {

namespace {

constexpr char32_t box = 0x25A1;

struct Loaded {
    QStringList regular, bold, mono; // families, the first with a glyph draws it
    QRawFont letters, moreLetters;   // for asking which characters there are
};

Loaded& loaded() {
    static Loaded fonts;
    return fonts;
}

/// Bounds-checked big-endian reads; a damaged file gives zeros, and then no font.
quint32 numberAt(const QByteArray& bytes, qsizetype offset, int size) {
    if (offset < 0 || offset + size > bytes.size()) return 0;
    return size == 2 ? qFromBigEndian<quint16>(bytes.constData() + offset)
                     : qFromBigEndian<quint32>(bytes.constData() + offset);
}

qsizetype nameTable(const QByteArray& font) {
    const auto tables = static_cast<int>(numberAt(font, 4, 2));
    for (int i = 0; i < tables; ++i) {
        const qsizetype entry = 12 + qsizetype{16} * i;
        if (font.mid(entry, 4) == "name") return static_cast<qsizetype>(numberAt(font, entry + 8, 4));
    }
    return 0;
}

/// Writes `tag` over the first letters of the font's family names, and of nothing else: the PostScript name,
/// which a PDF tells, stays.
QByteArray underOwnName(QByteArray font, const char* tag) {
    const qsizetype table = nameTable(font);
    const auto count = static_cast<int>(numberAt(font, table + 2, 2));
    const qsizetype texts = table + static_cast<qsizetype>(numberAt(font, table + 4, 2));
    for (int i = 0; table > 0 && i < count; ++i) {
        const qsizetype entry = table + 6 + qsizetype{12} * i;
        const quint32 id = numberAt(font, entry + 6, 2);
        if (id != 1 && id != 16 && id != 21) continue;   // family, typographic family, WWS family
        const bool wide = numberAt(font, entry, 2) != 1; // all but Macintosh are UTF-16
        const qsizetype at = texts + static_cast<qsizetype>(numberAt(font, entry + 10, 2));
        for (qsizetype k = 0; k < qsizetype(qstrlen(tag)); ++k) {
            const qsizetype target = wide ? at + 2 * k + 1 : at + k;
            if (target < font.size()) font[target] = tag[k];
        }
    }
    return font;
}

std::optional<QString> family(const char* file, const char* tag) {
    QFile resource(QStringLiteral(":/ambit/paper/") + QLatin1String(file));
    if (!resource.open(QIODevice::ReadOnly)) return std::nullopt;
    const int id = QFontDatabase::addApplicationFontFromData(underOwnName(resource.readAll(), tag));
    const QStringList families = QFontDatabase::applicationFontFamilies(id);
    if (families.isEmpty()) return std::nullopt;
    return families.front();
}

const Result<void>& loadOnce() {
    static const Result<void> done = []() -> Result<void> {
        initResource();
        const auto regular = family("regular", "AmbR");
        const auto bold = family("bold", "AmbB");
        const auto mono = family("mono", "AmbM");
        const auto more = family("more", "AmbS");
        const auto moreBold = family("more-bold", "AmbT");
        if (!regular || !bold || !mono || !more || !moreBold)
            return fail(ErrorCode::storage, "The typefaces of the record's pages can't be read.", "B612",
                        "Pages can only be drawn by a program with a font system: Qt's platform plugin "
                        "“offscreen” has one, “minimal” has none.");
        loaded() = {{*regular, *more}, {*bold, *moreBold}, {*mono, *more}, {}, {}};
        loaded().letters = QRawFont::fromFont(fontOf(Face::regular, 10));
        QFont other = fontOf(Face::regular, 10);
        other.setFamilies({*more});
        loaded().moreLetters = QRawFont::fromFont(other);
        return {};
    }();
    return done;
}

} // namespace

Result<void> loadFonts() {
    return loadOnce();
}

QFont fontOf(Face face, double size) {
    QFont font;
    font.setFamilies(face == Face::bold   ? loaded().bold
                     : face == Face::mono ? loaded().mono
                                          : loaded().regular);
    font.setWeight(face == Face::bold ? QFont::Bold : QFont::Normal);
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setPixelSize(qRound(size * stepsPerPoint));
    return font;
}

bool canShow(char32_t character) {
    switch (QChar::category(character)) {
    case QChar::Other_Control:
    case QChar::Other_Format:
    case QChar::Other_PrivateUse:
    case QChar::Other_NotAssigned:
    case QChar::Separator_Line:
    case QChar::Separator_Paragraph:
        return false;
    default:
        break;
    }
    return loaded().letters.supportsCharacter(character) || loaded().moreLetters.supportsCharacter(character);
}

QString shown(std::string_view utf8) {
    const QString text = QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()))
                             .normalized(QString::NormalizationForm_C);
    QString out;
    out.reserve(text.size());
    for (const char32_t character : text.toUcs4()) {
        if (character == U'\n')
            out += QChar(QChar::LineSeparator);
        else
            out += QString::fromUcs4(canShow(character) ? &character : &box, 1);
    }
    return out;
}

bool isShownWhole(std::string_view utf8) {
    const QString text = QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()))
                             .normalized(QString::NormalizationForm_C);
    const auto characters = text.toUcs4();
    return std::all_of(characters.begin(), characters.end(),
                       [](char32_t character) { return character == U'\n' || canShow(character); });
}

} // namespace ambit::paper
