#include "desktop/shots.hpp"

#include <QImage>
#include <QQuickWindow>

namespace ambit::desktop {

Result<void> Shots::take(const QString& name) {
    if (taken.contains(name)) return {};
    taken << name;
    const QSize size = window->size();
    const bool night = app->night();
    Hand(*window).rest(200); // what slides in has come to rest then
    Result<void> done;
    for (const auto& [sizeName, pixels] : {std::pair("phone", phone), std::pair("tablet", tablet)})
        for (const bool dark : {false, true}) {
            if (!done) break;
            window->resize(pixels);
            app->setNight(dark);
            done = grab(QStringLiteral("%1-%2-%3-%4.png")
                            .arg(taken.size(), 2, 10, QLatin1Char('0'))
                            .arg(name, QLatin1String(sizeName),
                                 dark ? QStringLiteral("night") : QStringLiteral("day")));
        }
    window->resize(size);
    app->setNight(night);
    Hand(*window).rest(20);
    return done;
}

Result<void> Shots::grab(const QString& file) const {
    Hand(*window).rest(30); // the new size's layout
    const QImage image = window->grabWindow();
    const auto path = folder / file.toStdString();
    if (image.isNull() || !image.save(QString::fromStdString(path.string())))
        return fail(ErrorCode::storage, "A picture of the screen can't be written.", path.string());
    return {};
}

} // namespace ambit::desktop
