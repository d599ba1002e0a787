#include "desktop/voice.hpp"

#include <QTextToSpeech>

namespace ambit::desktop {

Voice::Voice() = default;
Voice::~Voice() = default;

bool Voice::speak(const QString& words) {
    if (!std::exchange(isTried, true) && !QTextToSpeech::availableEngines().isEmpty())
        engine = std::make_unique<QTextToSpeech>();
    if (!engine || engine->state() == QTextToSpeech::Error || engine->availableVoices().isEmpty())
        return false;
    engine->stop();
    if (!words.isEmpty()) engine->say(words);
    return true;
}

} // namespace ambit::desktop
