// What every certificate made here needs. Inside core/record only.
#pragma once

#include "record/openssl.hpp"

namespace ambit::record {

/// A random serial number of 16 bytes.
[[nodiscard]] bool setNumber(X509* certificate);
/// `kind`: OpenSSL's number; `value` as its configuration files write it.
[[nodiscard]] bool addExtension(X509* certificate, int kind, const char* value);
/// What was written into memory.
[[nodiscard]] std::string textOf(BIO* memory);

} // namespace ambit::record
