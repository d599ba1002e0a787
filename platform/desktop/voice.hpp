// Reads aloud, with whatever engine the system has.
#pragma once

#include <QString>
#include <memory>

class QTextToSpeech;

namespace ambit::desktop {

class Voice {
public:
    Voice();
    ~Voice();
    Voice(const Voice&) = delete;
    Voice& operator=(const Voice&) = delete;

    /// In place of what is being said; "" only stops. False: there is no engine, or it doesn't work.
    bool speak(const QString& words);

private:
    std::unique_ptr<QTextToSpeech> engine; ///< made when it is first needed: that takes a while
    bool isTried = false;
};

} // namespace ambit::desktop
