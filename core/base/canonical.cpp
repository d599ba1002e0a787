#include "base/canonical.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace ambit {

namespace {

/// UTF-8 bytes sort like UTF-16 units but for one thing: U+E000 to U+FFFF (lead bytes EE, EF) come after the
/// surrogates, that is after what UTF-8 leads with F0 to F4.
bool lessInUtf16(const std::string& a, const std::string& b) {
    const auto rank = [](char c) {
        const auto byte = static_cast<unsigned char>(c);
        return byte == 0xEE || byte == 0xEF ? byte + 0x10 : static_cast<int>(byte);
    };
    return std::lexicographical_compare(a.begin(), a.end(), b.begin(), b.end(),
                                        [&](char x, char y) { return rank(x) < rank(y); });
}

void writeString(std::string& out, const std::string& text) {
    static constexpr std::string_view hex = "0123456789abcdef";
    out += '"';
    for (const char c : text) {
        const auto byte = static_cast<unsigned char>(c);
        switch (c) {
        case '"':
            out += "\\\"";
            break;
        case '\\':
            out += "\\\\";
            break;
        case '\b':
            out += "\\b";
            break;
        case '\t':
            out += "\\t";
            break;
        case '\n':
            out += "\\n";
            break;
        case '\f':
            out += "\\f";
            break;
        case '\r':
            out += "\\r";
            break;
        default:
            if (byte < 0x20)
                (out += "\\u00") += {hex[byte >> 4U], hex[byte & 0xFU]};
            else
                out += c;
        }
    }
    out += '"';
}

void write(std::string& out, const Json& value);

void writeObject(std::string& out, const Json& object) {
    std::vector<const Json::object_t::value_type*> members;
    for (const auto& member : object.get_ref<const Json::object_t&>())
        members.push_back(&member);
    std::sort(members.begin(), members.end(),
              [](auto* a, auto* b) { return lessInUtf16(a->first, b->first); });
    out += '{';
    for (const auto* member : members) {
        if (member != members.front()) out += ',';
        writeString(out, member->first);
        out += ':';
        write(out, member->second);
    }
    out += '}';
}

void writeArray(std::string& out, const Json& array) {
    out += '[';
    for (std::size_t i = 0; i < array.size(); ++i) {
        if (i > 0) out += ',';
        write(out, array[i]);
    }
    out += ']';
}

void write(std::string& out, const Json& value) {
    switch (value.type()) {
    case Json::value_t::object:
        return writeObject(out, value);
    case Json::value_t::array:
        return writeArray(out, value);
    case Json::value_t::string:
        return writeString(out, value.get_ref<const std::string&>());
    case Json::value_t::boolean:
        out += value.get<bool>() ? "true" : "false";
        return;
    case Json::value_t::number_integer:
    case Json::value_t::number_unsigned:
    case Json::value_t::number_float:
        out += canonicalNumber(value.get<double>());
        return;
    default:
        out += "null";
    }
}

} // namespace

std::string canonicalJson(const Json& value) {
    std::string out;
    write(out, value);
    return out;
}

std::string canonicalNumber(double value) {
    if (value == 0) return "0";
    std::array<char, 32> buffer{};
    const auto end = std::to_chars(buffer.data(), buffer.data() + buffer.size(), std::fabs(value),
                                   std::chars_format::scientific)
                         .ptr;
    const std::string_view written(buffer.data(),
                                   static_cast<std::size_t>(end - buffer.data())); // d[.ddd]e±xx
    const std::size_t e = written.find('e');
    std::string digits(written.substr(0, e));
    if (digits.size() > 1) digits.erase(1, 1);
    int exponent = 0;
    const std::size_t power = e + (written[e + 1] == '+' ? 2 : 1);
    std::from_chars(written.data() + power, written.data() + written.size(), exponent);

    // ECMA-262, Number::toString, with its names: value = digits × 10^(n-k), k digits.
    const int k = static_cast<int>(digits.size());
    const int n = exponent + 1;
    const auto zeros = [](int count) { return std::string(static_cast<std::size_t>(count), '0'); };
    std::string text;
    if (k <= n && n <= 21) {
        text = digits + zeros(n - k);
    } else if (0 < n && n <= 21) {
        text = digits.insert(static_cast<std::size_t>(n), 1, '.');
    } else if (-6 < n && n <= 0) {
        text = "0." + zeros(-n) + digits;
    } else {
        if (k > 1) digits.insert(1, 1, '.');
        text = digits + (n > 0 ? "e+" : "e-") + std::to_string(n > 0 ? n - 1 : 1 - n);
    }
    return value < 0 ? '-' + text : text;
}

} // namespace ambit
