// Where the values of one measured point are going, by what records say: words, and a chart.
#pragma once

#include "archive/series.hpp"
#include "model/background.hpp"
#include "model/services.hpp"

#include <QColor>
#include <QQuickPaintedItem>

namespace ambit::view {

class TrendView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("App makes it")
    /// Something was measured there twice at least.
    Q_PROPERTY(bool there READ there NOTIFY changed)
    /// One sentence each, the limit first.
    Q_PROPERTY(QStringList texts READ texts NOTIFY changed)
    /// {id, name}: what the values can be followed over; `over`: the id of the one that is.
    Q_PROPERTY(QVariantList ways READ ways NOTIFY changed)
    Q_PROPERTY(QString over READ over NOTIFY changed)
    /// The values in words, for who doesn't see the chart.
    Q_PROPERTY(QString spoken READ spoken NOTIFY changed)
public:
    TrendView(const Services& services, Background& background, Report report, QObject* parent);

    void show(const QString& registration, const QString& pointId); ///< "": none
    Q_INVOKABLE void follow(const QString& over);
    void sayAnew(); ///< another language is spoken

    [[nodiscard]] bool there() const { return course.has_value(); }
    [[nodiscard]] QStringList texts() const;
    [[nodiscard]] QVariantList ways() const;
    [[nodiscard]] QString over() const;
    [[nodiscard]] QString spoken() const;

    /// For what draws it; only while `there`.
    [[nodiscard]] const round::Course& drawn() const { return *course; }
    [[nodiscard]] QString across() const; ///< "Airframe time, h"
    [[nodiscard]] QString up() const;     ///< "Lining, mm"

signals:
    void changed();

private:
    void compute();
    [[nodiscard]] QString spokenText(const round::TrendValue& one) const;

    const Services* services;
    Background* background;
    Report report;
    QString registration;
    std::string pointId;
    int question = 0;
    std::shared_ptr<const airframe::Airframe> airframe; ///< in the language of the screens
    std::vector<round::Past> past;
    std::string overWhat;
    std::optional<round::Course> course;
};

class TrendChart : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(ambit::view::TrendView* view READ view WRITE setView NOTIFY viewChanged)
    Q_PROPERTY(QColor ground MEMBER ground NOTIFY lookChanged)
    Q_PROPERTY(QColor ink MEMBER ink NOTIFY lookChanged)
    Q_PROPERTY(QColor quiet MEMBER quiet NOTIFY lookChanged)
    Q_PROPERTY(QColor band MEMBER band NOTIFY lookChanged)
    Q_PROPERTY(QColor limit MEMBER limit NOTIFY lookChanged)
    Q_PROPERTY(QString family MEMBER family NOTIFY lookChanged)
    Q_PROPERTY(int textSize MEMBER textSize NOTIFY lookChanged) ///< pixels
public:
    explicit TrendChart(QQuickItem* parent = nullptr);
    [[nodiscard]] TrendView* view() const { return shown; }
    void setView(TrendView* view);
    void paint(QPainter* painter) override;

signals:
    void viewChanged();
    void lookChanged();

private:
    TrendView* shown = nullptr;
    QColor ground, ink, quiet, band, limit;
    QString family;
    int textSize = 14;
};

} // namespace ambit::view
