#include "paper/sheet.hpp"

#include <QPdfWriter>

namespace ambit::paper {

Sheet::Sheet(Running words) : running(std::move(words)) {}

void Sheet::newPage() {
    pages.emplace_back();
    y = area::top;
    if (onNewPage) onNewPage();
}

void Sheet::need(double height) {
    if (height > left() && !atTop()) newPage();
}

void Sheet::gap(double height) {
    if (!atTop()) y += height;
}

void Sheet::put(Draw draw) {
    pages.back().push_back(std::move(draw));
}

void Sheet::line(double from, double to, const QColor& color, double thickness) {
    put([=, at = y](QPainter& painter) {
        painter.setPen(QPen(color, thickness, Qt::SolidLine, Qt::FlatCap));
        painter.drawLine(QPointF(from, at), QPointF(to, at));
    });
}

void Sheet::text(const Text& text, double x) {
    int done = 0;
    while (done < text.lines()) {
        const int rest = text.lines() - done;
        int fit = static_cast<int>((left() + 0.01) / text.leading());
        if (fit < rest) {
            fit = std::min(fit, rest - 2); // two lines go over at least
            if (fit < 2 && !(atTop() && rest > 0)) {
                newPage();
                continue;
            }
            fit = std::max(fit, 1);
        }
        const int now = std::min(fit, rest);
        put([text, at = QPointF(x, y), done, now](QPainter& painter) { text.draw(painter, at, done, now); });
        done += now;
        y += now * text.leading();
        if (done < text.lines()) newPage();
    }
}

void Sheet::textAt(const Text& text, const QPointF& at) {
    put([text, at](QPainter& painter) { text.draw(painter, at); });
}

int Sheet::pageOf(const std::string& name) const {
    const auto found = marks.find(name);
    return found == marks.end() ? 0 : found->second;
}

void Sheet::margins(QPainter& painter, int page) const {
    using namespace area;
    painter.setPen(QPen(ink::line, 0.5, Qt::SolidLine, Qt::FlatCap));
    const double foot = bottom + 24;
    painter.drawLine(QPointF(area::left, foot), QPointF(right, foot));
    Text(running.foot, style::quiet, width - 90, Align::left, 1).draw(painter, {area::left, foot + 7});
    const QString number = QStringLiteral("page %1 of %2").arg(page).arg(pages.size());
    Text(number, style::quiet, 88, Align::right).draw(painter, {right - 88, foot + 7});
    if (page == 1) return; // the first page has its own head
    const double head = top - 34;
    const Text name(running.left, style::smallStrong, width * 0.6, Align::left, 1);
    name.draw(painter, {area::left, head});
    Text(running.right, style::quiet, width * 0.38, Align::right, 1)
        .draw(painter, {right - width * 0.38, head});
    painter.setPen(QPen(ink::black, 0.8, Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(QPointF(area::left, head + 15), QPointF(right, head + 15));
}

void Sheet::drawAll(QPdfWriter& writer, QPainter& painter) const {
    for (std::size_t i = 0; i < pages.size(); ++i) {
        if (i > 0) writer.newPage();
        margins(painter, static_cast<int>(i) + 1);
        for (const Draw& draw : pages[i]) {
            painter.save();
            draw(painter);
            painter.restore();
        }
    }
}

} // namespace ambit::paper
