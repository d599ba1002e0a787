#include "model/shown_airframe.hpp"

#include "airframe/read.hpp"
#include "model/language.hpp"

namespace ambit::view {

Result<airframe::Airframe> airframeShown(const archive::Archive& archive, const std::string& sha256) {
    const auto description = archive.airframeText(sha256);
    if (!description) return tl::unexpected(description.error());
    auto airframe = airframe::readIn(*description, Language::spoken().toStdString());
    if (!airframe) return tl::unexpected(airframe.error().front());
    if (Language::spoken() != Language::all().constFirst())
        if (const auto written = airframe::read(*description)) Language::learn(*written, *airframe);
    return std::move(*airframe);
}

airframe::Airframe airframeShown(const archive::Archive& archive, const airframe::Airframe& written) {
    return airframeShown(archive, written.sha256).value_or(written);
}

} // namespace ambit::view
