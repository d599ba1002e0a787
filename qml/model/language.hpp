// The language of the screens: English as written, or a catalogue of languages/.
#pragma once

#include "airframe/airframe.hpp"
#include "record/pdf.hpp"

#include <QString>
#include <QStringList>
#include <memory>
#include <vector>

class QTranslator;

namespace ambit::view {

class Language {
public:
    explicit Language(const QString& code); ///< speaks it
    ~Language();                            ///< English again, unless another one speaks since

    /// The codes of ISO 639 that there are texts for: "en", then one for each catalogue that the build holds.
    static const QStringList& all();
    /// The first of these locales ("de_AT", "en-GB") that there are texts for; else "en".
    [[nodiscard]] static QString firstOf(const QStringList& locales);
    /// In its own words: "Deutsch".
    [[nodiscard]] static QString nameOf(const QString& code);

    /// From now on, for texts asked for anew. A code that there is no catalogue for: English.
    void speak(const QString& code);

    /// The code of what is spoken now, "en" where nobody speaks; for whoever looks words up elsewhere than in
    /// a catalogue. On any thread.
    [[nodiscard]] static QString spoken();

    /// How an airframe's names are said: core's sentences have them as written. Until something
    /// else is spoken; on any thread.
    static void learn(const airframe::Airframe& written, const airframe::Airframe& shown);

private:
    std::vector<std::unique_ptr<QTranslator>> catalogues; ///< empty: English
};

/// Draws in English, whatever the screens speak: a page is in one language, and the words for core's values
/// are shared with the screens.
record::DrawPages inEnglish(record::DrawPages draw);

} // namespace ambit::view
