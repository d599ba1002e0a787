#include "photographed.hpp"

#include "../record/fixture.hpp"
#include "base/hash.hpp"

#include <QtGlobal>
#include <nlohmann/json.hpp>

namespace ambit::test {

namespace {

template<class Value> Value sure(Result<Value> result) {
    if (!result) qFatal("%s", toText(result.error()).c_str());
    return std::move(*result);
}

} // namespace

std::string picture(int number) {
    return number == 0 ? photoBytes() : "\xFF\xD8\xFF picture " + std::to_string(number);
}

std::string photographed(int number, const std::vector<std::string>& previous) {
    Json content = contentWith(picture(number));
    content["previous"] = previous;
    return sure(record::signRecord(content, signer()));
}

std::string photographedPdf(const std::string& recordJson) {
    return sure(record::signPdf(pages(true), recordJson, {{sha256Hex(picture(0)), picture(0)}}, signer()));
}

std::string photographedAircraft() {
    return contentOf()["aircraft"]["registration"].get<std::string>();
}

} // namespace ambit::test
