// What may become of bytes on their way, or be made of them by somebody: for tests of whatever reads what
// others wrote. The same seed does the same damage.
#pragma once

#include <nlohmann/json.hpp>
#include <random>
#include <string>
#include <string_view>
#include <vector>

namespace ambit::test {

/// Memory that ends where the bytes do: the address sanitizer sees who reads beyond.
using Bytes = std::vector<char>;

inline Bytes bytesOf(std::string_view text) {
    return {text.begin(), text.end()};
}
inline std::string_view viewOf(const Bytes& bytes) {
    return {bytes.data(), bytes.size()};
}

/// Some place below `end`; 0 if there is none.
inline std::size_t below(std::size_t end, std::mt19937& random) {
    return end == 0 ? 0 : random() % end;
}

/// One to three changes that begin among the first `upTo` bytes: a byte changed to any, to a telling one or
/// by a bit; some taken out, doubled or put elsewhere; now and then the end cut off.
inline Bytes damaged(std::string_view whole, std::size_t upTo, std::mt19937& random) {
    using namespace std::string_view_literals;
    static constexpr auto telling = "\0\1\x7F\x80\xFE\xFF\xD8\xD9\xDA{}[]\",:0-9e."sv;
    std::string text(whole);
    for (auto changes = 1 + random() % 3; changes > 0 && !text.empty(); --changes) {
        const std::size_t at = below(std::min(upTo, text.size()), random);
        switch (random() % 8) {
        case 0:
        case 1:
            text[at] = static_cast<char>(random());
            break;
        case 2:
        case 3:
            text[at] = telling[random() % telling.size()];
            break;
        case 4:
            text[at] = static_cast<char>(text[at] ^ (1 << random() % 8));
            break;
        case 5:
            text.erase(at, 1 + random() % 8);
            break;
        case 6:
            text.insert(at, text.substr(below(text.size(), random), random() % 16));
            break;
        default:
            if (random() % 4 == 0) text.resize(at);
        }
    }
    return bytesOf(text);
}

/// Every value in it, the whole first.
inline void collect(nlohmann::json& json, std::vector<nlohmann::json*>& all) {
    all.push_back(&json);
    if (json.is_structured())
        for (nlohmann::json& one : json)
            collect(one, all);
}

/// Still JSON, but one to three of its values are others: of another kind, at the edge of what fits, a
/// copy of another one in it, doubled, swapped or gone. Reaches what damaged bytes don't: rules behind the
/// form.
inline nlohmann::json damagedTree(nlohmann::json json, std::mt19937& random) {
    using Json = nlohmann::json;
    static const std::vector<Json> others{nullptr,
                                          true,
                                          false,
                                          0,
                                          1,
                                          -1,
                                          7,
                                          1000,
                                          INT64_MAX,
                                          INT64_MIN,
                                          UINT64_MAX,
                                          0.5,
                                          "",
                                          "0",
                                          "-1",
                                          "1e9",
                                          "99999999999999999999.999",
                                          std::string(64, 'a'),
                                          "2026-06-20T05:30:00.000Z",
                                          "0000-01-01T00:00:00.000Z",
                                          "9999-12-31T23:59:59.999Z",
                                          "a\x01",
                                          Json::array(),
                                          Json::object()};
    for (auto changes = 1 + random() % 3; changes > 0; --changes) {
        std::vector<Json*> all;
        collect(json, all);
        Json& one = *all[random() % all.size()];
        const Json other = *all[random() % all.size()];
        const bool isFilled = one.is_structured() && !one.empty();
        auto at = one.begin();
        if (isFilled) std::advance(at, random() % one.size());
        switch (random() % 6) {
        case 0:
            one = others[random() % others.size()];
            break;
        case 1:
            one = other;
            break;
        case 2:
            if (isFilled) one.erase(at);
            break;
        case 3:
            if (one.is_array()) one.push_back(isFilled ? *at : other);
            break;
        case 4:
            if (one.is_array() && isFilled) std::swap(*at, one[random() % one.size()]);
            break;
        default:
            if (one.is_string() && !one.get_ref<std::string&>().empty()) {
                std::string& text = one.get_ref<std::string&>();
                text[random() % text.size()] = "0129aZ-.: "[random() % 10];
            } else if (one.is_number_integer())
                one = one.get<std::int64_t>() / 2 + static_cast<int>(random() % 3) - 1;
        }
    }
    return json;
}

} // namespace ambit::test
