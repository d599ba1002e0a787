// Core's codes and values in words for people, in one place.
#pragma once

#include "airframe/airframe.hpp"
#include "model/sentence.hpp"
#include "round/state.hpp"

#include <QString>

namespace ambit::view {

[[nodiscard]] inline QString text(const std::string& utf8) {
    return QString::fromStdString(utf8);
}

[[nodiscard]] QString howText(const std::vector<airframe::How>& how); ///< "Look · Feel"
[[nodiscard]] QString standText(const airframe::Stand& stand);        ///< "Raised · one hand free"
[[nodiscard]] QString settingsText(const airframe::Airframe& airframe,
                                   const airframe::Settings& when); ///< "Blade A aft"
/// "2.1 mm", as entered; of a photo "2.1 mm ± 0.2"; "" if nothing was measured.
[[nodiscard]] QString valueText(const round::Settled& settled, const airframe::Point& point);
/// "30 psi ± 0.3": a standard uncertainty, "" if not stated.
[[nodiscard]] QString estimateText(const std::string& value, const std::string& unit,
                                   const std::string& uncertainty);
/// "29.4 to 30.6 psi in 95 of 100 cases".
[[nodiscard]] QString intervalText(const std::string& low, const std::string& high, const std::string& unit);
/// Of a value within its limit whose own 95 % interval isn't; else "".
[[nodiscard]] QString reachesBeyondText(const airframe::Limit& limit, const Decimal& value,
                                        const std::string& unit, const std::string& uncertainty);
[[nodiscard]] QString limitText(const airframe::Limit& limit); ///< "4 to 6 qt"
/// "h", "mm" as they are; what is counted by its own word, in words: "landings".
[[nodiscard]] QString unitText(const std::string& unit);
/// Of a counter or a quantity, both in words: its name says what it counts: "Landings".
[[nodiscard]] bool saysItsUnit(const QString& name, const QString& unit);
/// Beside its name: "1300.0 h"; "4107" of one whose name says what it counts.
[[nodiscard]] QString counterText(const airframe::Counter& counter, const std::string& value);
/// "Airframe hours, h"; "Landings".
[[nodiscard]] QString withUnit(const QString& name, const QString& unit);
[[nodiscard]] QString roleText(const std::string& role);
[[nodiscard]] QString outcomeText(round::Outcome outcome); ///< "sound"
[[nodiscard]] QString conclusionText(bool fit);
[[nodiscard]] QString agoText(Instant then, Instant now);        ///< "3 days ago", "just now"
[[nodiscard]] QString clockText(Instant at, int offsetMinutes);  ///< "07:42"
[[nodiscard]] QString secondText(Instant at, int offsetMinutes); ///< "07:42:05"
[[nodiscard]] QString dayText(Instant at, int offsetMinutes);    ///< "20 Jun 2026, 07:42"
[[nodiscard]] QString zonedText(Instant at, int offsetMinutes);  ///< "20 Jun 2026, 07:42 UTC+2"
[[nodiscard]] QString saidOf(const QString& of,
                             const QString& what);                ///< "finding: oil"; nothing said: "finding"
[[nodiscard]] QString fingerprintText(const std::string& sha256); ///< groups of four digits
/// The word QML knows it by: "lookAgain" "question" "remark".
[[nodiscard]] QString askKindName(round::Statement::Kind kind);
/// "Look again at “Pitch link”", "A question"; `point`: its name, "" of none.
[[nodiscard]] QString askTitle(round::Statement::Kind kind, const QString& point);
/// "4 points in 3 s", "3 points in 0.8 s"
[[nodiscard]] QString quickText(int points, std::int64_t ms);
/// "40 s", "7 min", "2 h 5 min", "3 days"
[[nodiscard]] QString lastedText(std::int64_t seconds);
/// "Paused for 7 min", "The screen was locked for 40 s"
[[nodiscard]] QString causeText(round::Interrupted::Cause cause, std::int64_t seconds);
/// "back 3 points", "the stand again", "from the start"
[[nodiscard]] QString backRuleText(const round::BackRule& rule);
/// Both, and how many points that asks for again.
[[nodiscard]] QString interruptedText(const round::Interrupted& what);
[[nodiscard]] QString quoted(const QString& name);
[[nodiscard]] QString photoSource(const std::string& sha256); ///< what an Image takes

} // namespace ambit::view
