// How the pages word what core gives as codes and values.
#pragma once

#include "paper/record_view.hpp"

#include <QString>

namespace ambit::paper {

/// Local times, as they were on the spot. A time on another day than the first says its day.
class Clock {
public:
    explicit Clock(const RecordView& view)
        : first(view.state.openedAt), offset(view.opened().offsetMinutes) {}

    Clock(Instant begins, int offsetMinutes) : first(begins), offset(offsetMinutes) {}

    [[nodiscard]] QString time(Instant at) const;    ///< 07:30, or 21 Jun 07:30
    [[nodiscard]] QString seconds(Instant at) const; ///< 07:30:12
    [[nodiscard]] QString date(Instant at) const;    ///< 20 June 2026
    [[nodiscard]] QString zone() const;              ///< UTC+02:00
    [[nodiscard]] QString both(Instant at) const;    ///< day and time on the spot, and below it in UTC

private:
    Instant first;
    int offset;
};

[[nodiscard]] QString utcTime(Instant at);       ///< 05:30
[[nodiscard]] QString utcDate(Instant at);       ///< 20 June 2026
[[nodiscard]] QString lasted(std::int64_t ms);   ///< as duration; under two minutes in seconds
[[nodiscard]] QString duration(std::int64_t ms); ///< 35 min, 2 h 5 min, 3 days 4 h

/// 9f86 d081 … four digits a group.
[[nodiscard]] QString groups(const std::string& hex);
[[nodiscard]] QString shortHash(const std::string& hex); ///< its first three groups

[[nodiscard]] QString howWords(const airframe::Point& point);
[[nodiscard]] QString outcomeWord(round::Outcome outcome);
/// Why a point was to be settled again, or wasn't: “re-opened: …”, “asked by … to be looked at again: …”.
[[nodiscard]] QString againWords(const Entry& entry);
[[nodiscard]] QString severityWords(airframe::Severity severity);
[[nodiscard]] QString standName(const RecordView& view, const std::string& id);
[[nodiscard]] QString valueWords(const airframe::Point& point,
                                 const round::Settled& settled); ///< 5.2 qt, or empty
/// 1–4, 7: runs of numbers joined.
[[nodiscard]] QString ranges(const std::vector<int>& numbers);
[[nodiscard]] QString counted(int n, const QString& one, const QString& many); ///< “1 point”, “3 points”

} // namespace ambit::paper
