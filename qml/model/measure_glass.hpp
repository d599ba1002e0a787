// Draws the photo in hand with the card and the marks: whole, or closely about what is held, with a cross in
// the middle under which the photo is drawn, so that no finger covers what it points at.
#pragma once

#include "model/measure_view.hpp"

#include <QQuickPaintedItem>

namespace ambit::view {

class MeasureGlass : public QQuickPaintedItem {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(ambit::view::MeasureView* view READ view WRITE setView NOTIFY viewChanged)
    /// The last photo in place of the new one; at the new one's scale if both have a card.
    Q_PROPERTY(bool last MEMBER showsLast NOTIFY lookChanged)
    Q_PROPERTY(QColor ground MEMBER ground NOTIFY lookChanged)
    /// Lines and marks, and what they are set off by.
    Q_PROPERTY(QColor ink MEMBER ink NOTIFY lookChanged)
    Q_PROPERTY(QColor rim MEMBER rim NOTIFY lookChanged)
    /// At night the photo is drawn darker.
    Q_PROPERTY(qreal shine MEMBER shine NOTIFY lookChanged)
    /// Of a line; a mark is some times that. Pixels of the screen.
    Q_PROPERTY(qreal stroke MEMBER stroke NOTIFY lookChanged)
public:
    explicit MeasureGlass(QQuickItem* parent = nullptr);

    [[nodiscard]] MeasureView* view() const { return shown; }
    void setView(MeasureView* view);
    void paint(QPainter* painter) override;

    /// A touch in the whole photo: takes what is there, or marks it. `reach`: of a finger, on the screen.
    Q_INVOKABLE void touch(qreal x, qreal y, qreal reach);
    /// The photo was drawn by so much, on the screen: moves what is held the other way.
    Q_INVOKABLE void draw(qreal dx, qreal dy);
    /// One pixel of the photo at a time, for keys.
    Q_INVOKABLE void step(int dx, int dy);

    /// Photo to screen.
    [[nodiscard]] Q_INVOKABLE QPointF onScreen(qreal x, qreal y) const;

signals:
    void viewChanged();
    void lookChanged();

private:
    [[nodiscard]] QTransform place() const;     ///< photo to item
    [[nodiscard]] QTransform lastPlace() const; ///< last photo to item
    [[nodiscard]] QTransform whole(const QSizeF& size) const;
    void drawMarks(QPainter& painter, const QTransform& to) const;
    void drawCross(QPainter& painter) const;

    MeasureView* shown = nullptr;
    bool showsLast = false;
    QColor ground = Qt::black;
    QColor ink = Qt::black;
    QColor rim = Qt::white;
    qreal shine = 1;
    qreal stroke = 2;
};

} // namespace ambit::view
