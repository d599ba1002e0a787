#include "model/habits.hpp"

#include "model/words.hpp"

#include <QSettings>
#include <algorithm>
#include <array>

namespace ambit::view {

namespace {

using From = round::BackRule::From;

constexpr auto keysName = "habits/keys";
constexpr auto portionsName = "habits/portions";
constexpr auto sizeName = "habits/portionSize";
constexpr auto aloudName = "habits/aloud";
constexpr auto asTakenName = "habits/photosAsTaken";
constexpr auto fromName = "habits/backFrom";
constexpr auto pointsName = "habits/backPoints";

int within(int value) {
    return std::clamp(value, Habits::fewest, Habits::most);
}

std::optional<From> fromOf(const QString& word) {
    for (const From from : {From::points, From::stand, From::start})
        if (word == QLatin1String(round::toText(from))) return from;
    return std::nullopt;
}

} // namespace

Habits::Habits(QSettings* kept, QObject* parent) : QObject(parent), settings(kept) {
    if (settings == nullptr) return;
    const auto number = [&](const char* name, int otherwise) {
        bool isNumber = false;
        const int value = settings->value(QLatin1String(name)).toInt(&isNumber);
        return isNumber && within(value) == value ? value : otherwise;
    };
    const auto flag = [&](const char* name, bool otherwise) {
        return settings->value(QLatin1String(name), otherwise).toBool();
    };
    byKeys = flag(keysName, byKeys);
    inPortions = flag(portionsName, inPortions);
    size = number(sizeName, size);
    isAloud = flag(aloudName, isAloud);
    asTaken = flag(asTakenName, asTaken);
    back.from = fromOf(settings->value(QLatin1String(fromName)).toString()).value_or(back.from);
    back.points = number(pointsName, back.points);
}

QString Habits::backFrom() const {
    return QLatin1String(round::toText(back.from));
}

QString Habits::backText() const {
    return backRuleText(back);
}

template<class T> void Habits::set(T& its, T value, const char* name) {
    if (its == value) return;
    its = value;
    if (settings != nullptr) settings->setValue(QLatin1String(name), value);
    emit changed();
}

void Habits::touchOnly() {
    byKeys = inPortions = false;
    emit changed();
}

void Habits::setKeys(bool on) {
    set(byKeys, on, keysName);
}

void Habits::setPortions(bool on) {
    set(inPortions, on, portionsName);
}

void Habits::setPortionSize(int points) {
    set(size, within(points), sizeName);
}

void Habits::setAloud(bool on) {
    set(isAloud, on, aloudName);
}

void Habits::setPhotosAsTaken(bool on) {
    set(asTaken, on, asTakenName);
}

void Habits::setBackFrom(const QString& word) {
    const auto from = fromOf(word);
    if (!from || *from == back.from) return;
    back.from = *from;
    if (settings != nullptr) settings->setValue(QLatin1String(fromName), backFrom());
    emit changed();
}

void Habits::setBackPoints(int points) {
    set(back.points, within(points), pointsName);
}

} // namespace ambit::view
