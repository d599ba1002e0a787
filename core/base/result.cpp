#include "base/result.hpp"

namespace ambit {

namespace {

/// Errors quote what was read, and what was read may hold line ends or a terminal's escape codes.
std::string onOneLine(std::string text) {
    for (std::size_t i = 0; i < text.size(); ++i) {
        const auto byte = static_cast<unsigned char>(text[i]);
        const auto next = static_cast<unsigned char>(i + 1 < text.size() ? text[i + 1] : 0);
        const bool c1 = byte == 0xC2 && next >= 0x80 && next <= 0x9F;
        if (c1) text[i + 1] = ' ';
        if (c1 || byte < 0x20 || byte == 0x7F) text[i] = ' ';
    }
    return text;
}

} // namespace

std::string toText(const Error& error) {
    std::string text = error.what;
    if (!error.where.empty()) {
        if (text.ends_with('.')) text.pop_back();
        text += " (" + error.where + ").";
    }
    if (!error.remedy.empty()) {
        if (!text.ends_with('.')) text += '.';
        text += ' ' + error.remedy;
    }
    return onOneLine(std::move(text));
}

const char* toText(ErrorCode code) {
    switch (code) {
    case ErrorCode::syntax:
        return "syntax";
    case ErrorCode::invalid:
        return "invalid";
    case ErrorCode::refused:
        return "refused";
    case ErrorCode::notFound:
        return "not found";
    case ErrorCode::conflict:
        return "conflict";
    case ErrorCode::signature:
        return "signature";
    case ErrorCode::passphrase:
        return "passphrase";
    case ErrorCode::storage:
        return "storage";
    case ErrorCode::unsupported:
        return "unsupported";
    }
    return "";
}

} // namespace ambit
