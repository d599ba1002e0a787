#include "base/canonical.hpp"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <nlohmann/json.hpp>

namespace ambit {

namespace {

void writeEscaped(std::string& out, char c) {
    static constexpr std::string_view hex = "0123456789abcdef";
    static constexpr std::string_view plain = "\"\\\b\t\n\f\r";
    static constexpr std::string_view letters = "\"\\btnfr";
    const auto byte = static_cast<unsigned char>(c);
    if (const std::size_t known = plain.find(c); known != std::string_view::npos)
        (out += '\\') += letters[known];
    else
        (out += "\\u00") += {hex[byte >> 4U], hex[byte & 0xFU]};
}

void writeString(std::string& out, const std::string& text) {
    out += '"';
    std::size_t written = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const auto byte = static_cast<unsigned char>(text[i]);
        if (byte >= 0x20 && byte != '"' && byte != '\\') continue;
        out.append(text, written, i - written);
        writeEscaped(out, text[i]);
        written = i + 1;
    }
    out.append(text, written);
    out += '"';
}

void write(std::string& out, const Json& value);

template<class Members> void writeMembers(std::string& out, const Members& members) {
    out += '{';
    bool first = true;
    for (const auto& member : members) {
        const auto& [name, value] = *member;
        if (!first) out += ',';
        first = false;
        writeString(out, name);
        out += ':';
        write(out, value);
    }
    out += '}';
}

/// The bytes' order, in which an object keeps its names, is another only where one has such a lead byte.
bool mayDiffer(const std::string& name) {
    return std::any_of(name.begin(), name.end(),
                       [](char c) { return static_cast<unsigned char>(c) >= 0xEE; });
}

void writeObject(std::string& out, const Json& object) {
    const auto& its = object.get_ref<const Json::object_t&>();
    std::vector<const Json::object_t::value_type*> members;
    members.reserve(its.size());
    bool sorted = true;
    for (const auto& member : its) {
        members.push_back(&member);
        sorted = sorted && !mayDiffer(member.first);
    }
    if (!sorted)
        std::sort(members.begin(), members.end(),
                  [](auto* a, auto* b) { return lessInUtf16(a->first, b->first); });
    writeMembers(out, members);
}

void writeArray(std::string& out, const Json& array) {
    out += '[';
    for (std::size_t i = 0; i < array.size(); ++i) {
        if (i > 0) out += ',';
        write(out, array[i]);
    }
    out += ']';
}

/// Up to 2^53 a double has every integer's digits; beyond, those of the double count.
void writeInteger(std::string& out, const Json& value) {
    constexpr std::int64_t exact = std::int64_t{1} << 53;
    const auto integer = value.get<std::int64_t>();
    const bool fits = value.is_number_unsigned() ? value.get<std::uint64_t>() <= std::uint64_t{exact}
                                                 : integer >= -exact && integer <= exact;
    out += fits ? std::to_string(integer) : canonicalNumber(value.get<double>());
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
        return writeInteger(out, value);
    case Json::value_t::number_float:
        out += canonicalNumber(value.get<double>());
        return;
    default:
        out += "null";
    }
}

} // namespace

bool lessInUtf16(std::string_view a, std::string_view b) {
    // UTF-8 bytes sort like UTF-16 units but for one thing: U+E000 to U+FFFF (lead bytes EE, EF) come after
    // the surrogates, that is after what UTF-8 leads with F0 to F4.
    const auto rank = [](char c) {
        const auto byte = static_cast<unsigned char>(c);
        return byte == 0xEE || byte == 0xEF ? byte + 0x10 : static_cast<int>(byte);
    };
    const std::size_t shorter = std::min(a.size(), b.size());
    std::size_t at = 0;
    while (at < shorter && a[at] == b[at])
        ++at;
    return at == shorter ? a.size() < b.size() : rank(a[at]) < rank(b[at]);
}

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
