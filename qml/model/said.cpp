#include "model/said.hpp"

#include "base/date.hpp"
#include "base/decimal.hpp"
#include "model/sentence.hpp"

namespace ambit::view {

namespace {

tl::unexpected<Error> noDate(const std::string& words) {
    return fail(ErrorCode::refused, say("“%1” is no date.", words), "",
                say("Write year, month and day: 2026-06-20"));
}

} // namespace

std::string wordsIn(const QVariantMap& said, const char* name) {
    return said.value(QLatin1String(name)).toString().trimmed().toStdString();
}

Result<std::string> needed(const QVariantMap& said, const char* name, Sentence missing, Sentence remedy) {
    std::string words = wordsIn(said, name);
    if (words.empty()) return fail(ErrorCode::refused, std::move(missing), "", std::move(remedy));
    return words;
}

Result<std::vector<round::CounterReading>> countersIn(const QVariantMap& said, const char* name) {
    std::vector<round::CounterReading> counters;
    const QVariantMap given = said.value(QLatin1String(name)).toMap();
    for (auto one = given.cbegin(); one != given.cend(); ++one) {
        const std::string value = typedDecimal(one.value().toString());
        if (value.empty()) continue;
        if (!Decimal::parse(value))
            return fail(ErrorCode::refused, say("“%1” is no reading of a counter.", value), "",
                        say("Write it in digits, with a point before decimals: 1284.6"));
        counters.push_back({one.key().toStdString(), value});
    }
    return counters;
}

Result<std::string> dateIn(const QVariantMap& said, const char* name, bool required) {
    std::string words = wordsIn(said, name);
    if (words.empty() && !required) return words;
    if (!Date::parse(words)) return noDate(words);
    return words;
}

Result<std::optional<Instant>> midnight(const QVariantMap& said, const char* name, int days,
                                        int offsetMinutes) {
    const std::string words = wordsIn(said, name);
    if (words.empty()) return std::nullopt;
    const auto date = Date::parse(words);
    const auto day = date ? date->plusDays(days) : date;
    const auto at = day ? parseInstant(toText(*day) + "T00:00:00.000Z") : tl::unexpected(day.error());
    if (!at) return noDate(words);
    return Instant{at->ms - std::int64_t{60'000} * offsetMinutes};
}

Result<std::string> fingerprintIn(const QVariantMap& said, const char* name) {
    QString written = said.value(QLatin1String(name)).toString().simplified().toLower();
    written.remove(QLatin1Char(' ')).remove(QLatin1Char(':'));
    const bool isHex = std::all_of(written.cbegin(), written.cend(), [](QChar c) {
        return (c >= QLatin1Char('0') && c <= QLatin1Char('9')) ||
               (c >= QLatin1Char('a') && c <= QLatin1Char('f'));
    });
    if (written.isEmpty())
        return fail(ErrorCode::refused, say("No key is named."), "",
                    say("Choose one of those that signed here, or write its fingerprint."));
    if (!isHex || written.size() != 64)
        return fail(ErrorCode::refused,
                    say("This is no key's fingerprint: it has 64 digits, 0 to 9 and a to f."), "",
                    say("Copy it from the page of a record that the key has signed."));
    return written.toStdString();
}

std::vector<std::string> listIn(const QVariantMap& said, const char* name) {
    std::vector<std::string> list;
    for (const QVariant& one : said.value(QLatin1String(name)).toList())
        list.push_back(one.toString().toStdString());
    return list;
}

} // namespace ambit::view
