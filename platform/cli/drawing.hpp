// Pages drawn without a display.
#pragma once

#include "record/pdf.hpp"

#include <memory>

class QGuiApplication;

namespace ambit::cli {

/// Qt's application, which drawing needs, while pages are drawn. One at a time.
class Drawing {
public:
    Drawing();
    ~Drawing();
    Drawing(const Drawing&) = delete;
    Drawing& operator=(const Drawing&) = delete;

    /// paper::drawRecord.
    [[nodiscard]] record::DrawPages pages() const;

private:
    int count = 1;
    char name[6] = "ambit";
    char* arguments[2] = {name, nullptr};
    std::unique_ptr<QGuiApplication> application;
};

} // namespace ambit::cli
