// What a person wrote on a screen, as values: by its field's name, or refused in words that say what is wrong
// with it.
#pragma once

#include "base/result.hpp"
#include "base/time.hpp"
#include "round/event.hpp"

#include <QVariantMap>
#include <optional>

namespace ambit::view {

/// Without the spaces around it; "" if it isn't there.
[[nodiscard]] std::string wordsIn(const QVariantMap& said, const char* name);

/// Refused with these words where it is empty.
[[nodiscard]] Result<std::string> needed(const QVariantMap& said, const char* name, Sentence missing,
                                         Sentence remedy);

/// id → what was written; empty ones are left out.
[[nodiscard]] Result<std::vector<round::CounterReading>> countersIn(const QVariantMap& said,
                                                                    const char* name);

/// yyyy-mm-dd. `required`: it can't be left empty.
[[nodiscard]] Result<std::string> dateIn(const QVariantMap& said, const char* name, bool required);

/// Midnight where the device is (`offsetMinutes`), so many days after the date; none if it is empty.
[[nodiscard]] Result<std::optional<Instant>> midnight(const QVariantMap& said, const char* name, int days,
                                                      int offsetMinutes);

/// A key's fingerprint as people copy it: with spaces or colons, in large or small letters. Gives 64 digits.
[[nodiscard]] Result<std::string> fingerprintIn(const QVariantMap& said, const char* name);

[[nodiscard]] std::vector<std::string> listIn(const QVariantMap& said, const char* name);

} // namespace ambit::view
