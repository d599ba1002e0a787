// A short round of the test machine, its record, drawn pages and keys, for the tests of core/record.
#pragma once

#include "record/pdf.hpp"

#include <map>
#include <string>

namespace ambit::test {

inline constexpr const char* passphrase = "correct horse battery";
inline const std::string signerName = "Róbín “R” Example 例";

[[nodiscard]] const airframe::Airframe& recordedMachine();

/// Six points: a re-opened measurement, two findings (one with a photo), one not inspected. `fit`: all sound
/// but the one not inspected.
[[nodiscard]] std::vector<round::Event> roundOf(bool fit);
[[nodiscard]] Json contentOf(bool fit = false, const std::vector<std::string>& previous = {});
/// The same, with the given photo in place of an invented one.
[[nodiscard]] Json contentWith(const std::string& photoBytes);

[[nodiscard]] const std::string& keyFile();
/// The key of keyFile(). Gives the same signature each time it is asked to sign the same digest.
[[nodiscard]] const record::Signer& signer();
/// Another person's key of the same name.
[[nodiscard]] const record::Signer& stranger();
/// Who countersigns, and with which key (it remembers as signer() does).
[[nodiscard]] const round::Person& mechanic();
[[nodiscard]] const record::Signer& mechanicsKey();
inline constexpr Instant countersignedAt{1'781'940'630'500}; ///< 2026-06-20T07:30:30.500Z
[[nodiscard]] record::Signer newSigner(const std::string& name);

/// The other S of a signature R‖S: n - S holds as well as S.
[[nodiscard]] std::string twin(std::string signature);

[[nodiscard]] const std::string& photoBytes(); ///< a JPEG

/// One page of text with, where wanted, a placeholder for photoBytes().
[[nodiscard]] record::DrawnPages pages(bool withPhoto);
[[nodiscard]] std::map<std::string, std::string> photos();

} // namespace ambit::test
