// What a screen's fields say, as what a record is to say. Each refuses what is missing or can't be, in words.
#pragma once

#include "base/result.hpp"
#include "record/entry.hpp"

#include <QVariantMap>

namespace ambit::view {

/// `grounds`: it isn't deferred.
[[nodiscard]] Result<record::Entry> assessmentIn(const QVariantMap& said, bool grounds);
[[nodiscard]] Result<record::Entry> rectificationIn(const QVariantMap& said);
[[nodiscard]] Result<record::Entry> partChangeIn(const QVariantMap& said);
[[nodiscard]] Result<record::Entry> readingIn(const QVariantMap& said);
[[nodiscard]] Result<record::Entry> handOverIn(const QVariantMap& said);
[[nodiscard]] Result<record::Entry> renewalIn(const QVariantMap& said);
/// Where no day is given it holds from `now` on.
[[nodiscard]] Result<record::Entry> trustIn(const QVariantMap& said, LocalInstant now);
[[nodiscard]] Result<record::Entry> revocationIn(const QVariantMap& said, LocalInstant now);

} // namespace ambit::view
