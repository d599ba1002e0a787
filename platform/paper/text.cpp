#include "paper/text.hpp"

#include <QFontMetricsF>

namespace ambit::paper {

namespace {

Qt::Alignment toQt(Align align) {
    switch (align) {
    case Align::right:
        return Qt::AlignRight;
    case Align::centre:
        return Qt::AlignHCenter;
    case Align::left:
        break;
    }
    return Qt::AlignLeft;
}

void breakLines(QTextLayout& layout, double width) {
    layout.beginLayout();
    for (QTextLine line = layout.createLine(); line.isValid(); line = layout.createLine())
        line.setLineWidth(width * stepsPerPoint);
    layout.endLayout();
}

/// The first lines with the rest of the text gone and an ellipsis at the end.
QString cut(const QTextLayout& layout, int most, const QFontMetricsF& metrics, double width) {
    const QTextLine last = layout.lineAt(most - 1);
    const QString rest = layout.text().mid(last.textStart()).replace(QChar(QChar::LineSeparator), u' ');
    return layout.text().left(last.textStart()) +
           metrics.elidedText(rest, Qt::ElideRight, width * stepsPerPoint);
}

} // namespace

Text::Text(const QString& text, const Style& wanted, double width, Align align, int most) : style(wanted) {
    const QFont font = fontOf(style.face, style.size);
    const QFontMetricsF metrics(font);
    QTextOption option(toQt(align));
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    const auto set = [&](const QString& words) {
        layout = std::make_shared<QTextLayout>(words, font);
        layout->setTextOption(option);
        layout->setCacheEnabled(true);
        breakLines(*layout, width);
    };
    set(text);
    if (most > 0 && layout->lineCount() > most) set(cut(*layout, most, metrics, width));
    count = text.isEmpty() ? 0 : layout->lineCount();
    for (int i = 0; i < layout->lineCount(); ++i)
        natural = std::max(natural, layout->lineAt(i).naturalTextWidth() / stepsPerPoint);
    const double room = style.leading * stepsPerPoint - metrics.ascent() - metrics.descent();
    baseline = room / 2 + metrics.ascent();
}

void Text::draw(QPainter& painter, const QPointF& at, int first, int howMany) const {
    const int end = howMany < 0 ? lines() : std::min(lines(), first + howMany);
    painter.save();
    painter.translate(at);
    painter.scale(1.0 / stepsPerPoint, 1.0 / stepsPerPoint);
    painter.setPen(style.color);
    for (int i = first; i < end; ++i) {
        const QTextLine line = layout->lineAt(i);
        // The line's own ascent may be that of a taller substitute; baselines stay on the grid.
        const double top = (i - first) * style.leading * stepsPerPoint + baseline - line.ascent() - line.y();
        line.draw(&painter, QPointF(0, top));
    }
    painter.restore();
}

} // namespace ambit::paper
