// SHA-256 (FIPS 180-4), from OpenSSL.
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <string_view>

namespace ambit {

using Digest = std::array<std::uint8_t, 32>;

[[nodiscard]] Digest sha256(std::string_view bytes);
/// Of what comes piece by piece.
class Sha256 {
public:
    Sha256();
    Sha256(const Sha256&) = delete;
    Sha256& operator=(const Sha256&) = delete;
    ~Sha256();
    void add(std::string_view bytes);
    [[nodiscard]] Digest end(); ///< once

private:
    void* context;
};

[[nodiscard]] std::string sha256Hex(std::string_view bytes); ///< 64 lower-case hex digits

} // namespace ambit
