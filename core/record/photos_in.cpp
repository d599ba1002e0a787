#include "base/hash.hpp"
#include "record/pdf.hpp"
#include "record/qpdf.hpp"

#include <nlohmann/json.hpp>
#include <set>

namespace ambit::record {

Result<std::map<std::string, std::string>> photosIn(std::string_view bytes, const Json& content) {
    std::set<std::string> wanted;
    for (const Json& photo : content.value("photos", Json::array()))
        wanted.insert(photo["sha256"].get<std::string>());
    std::map<std::string, std::string> photos;
    if (wanted.empty()) return photos;
    try {
        QPDF pdf;
        pdf.setSuppressWarnings(true);
        pdf.setAttemptRecovery(false);
        pdf.processMemoryFile("record.pdf", bytes.data(), bytes.size());
        for (QPDFObjectHandle object : pdf.getAllObjects()) {
            if (!object.isStream() || !object.getDict().getKey("/Subtype").isNameAndEquals("/Image"))
                continue;
            const auto raw = object.getRawStreamData();
            std::string image(reinterpret_cast<const char*>(raw->getBuffer()), raw->getSize());
            std::string hash = sha256Hex(image);
            if (wanted.contains(hash)) photos.insert_or_assign(std::move(hash), std::move(image));
        }
    } catch (const std::exception& problem) {
        return fail(ErrorCode::signature, say("The file is not a sound PDF: %1", problem.what()),
                    "record.pdf");
    }
    return photos;
}

} // namespace ambit::record
