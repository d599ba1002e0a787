#include "cli/drawing.hpp"

#include "paper/pages.hpp"

#include <QGuiApplication>

namespace ambit::cli {

Drawing::Drawing() {
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    application = std::make_unique<QGuiApplication>(count, arguments);
}

Drawing::~Drawing() = default;

record::DrawPages Drawing::pages() const {
    return paper::drawRecord;
}

} // namespace ambit::cli
