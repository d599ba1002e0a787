// A piece of text set in a column: measured when made, drawn later, whole or some lines of it.
#pragma once

#include "paper/fonts.hpp"

#include <QColor>
#include <QPainter>
#include <QTextLayout>

#include <memory>
#include <vector>

namespace ambit::paper {

// Ink and the greys. Amber and red mean caution and warning (27.1322) and colour nothing else.
namespace ink {
inline const QColor black(0x15, 0x19, 0x1e);
inline const QColor grey(0x59, 0x63, 0x6c);
inline const QColor line(0xc4, 0xc9, 0xce);
inline const QColor edge(0x9a, 0xa1, 0xa8);
inline const QColor fill(0xd3, 0xd7, 0xdb);
inline const QColor solid(0x5f, 0x67, 0x70);
inline const QColor paper(0xff, 0xff, 0xff);
inline const QColor shade(0xf3, 0xf3, 0xf0);
inline const QColor amber(0x9a, 0x5b, 0x00);
inline const QColor amberFill(0xf0, 0xdd, 0xbd);
inline const QColor red(0xa8, 0x1c, 0x1c);
inline const QColor redFill(0xf2, 0xcf, 0xcb);
} // namespace ink

struct Style {
    Face face = Face::regular;
    double size = 9;     ///< pt
    double leading = 13; ///< pt from line to line
    QColor color = ink::black;
};

namespace style {
inline const Style body{Face::regular, 9.5, 13.5, ink::black};
inline const Style strong{Face::bold, 9.5, 13.5, ink::black};
inline const Style small{Face::regular, 8, 11, ink::black};
inline const Style smallStrong{Face::bold, 8, 11, ink::black};
inline const Style quiet{Face::regular, 8, 11, ink::grey};
inline const Style label{Face::bold, 7.5, 11, ink::grey};
inline const Style hash{Face::mono, 8, 12, ink::black};
inline const Style heading{Face::bold, 17, 22, ink::black};
inline const Style subheading{Face::bold, 11.5, 16, ink::black};
} // namespace style

enum class Align { left, right, centre };

class Text {
public:
    /// `width` in points. Words wider than that break anywhere. `most` lines, the last elided; 0: as many as
    /// it takes.
    Text(const QString& text, const Style& style, double width, Align align = Align::left, int most = 0);

    [[nodiscard]] int lines() const { return static_cast<int>(count); }
    [[nodiscard]] double leading() const { return style.leading; }
    [[nodiscard]] double height() const { return static_cast<double>(count) * style.leading; }
    [[nodiscard]] double widest() const { return natural; } ///< of its lines, pt

    /// `at` is the upper left corner of the first line drawn.
    void draw(QPainter& painter, const QPointF& at, int first = 0, int howMany = -1) const;

private:
    std::shared_ptr<QTextLayout> layout; // copies draw the same lines
    Style style;
    qsizetype count = 0;
    double natural = 0;
    double baseline = 0; // below a line's top, steps
};

/// Text built from the record's own words.
[[nodiscard]] inline Text textOf(std::string_view utf8, const Style& style, double width,
                                 Align align = Align::left, int most = 0) {
    return {shown(utf8), style, width, align, most};
}

} // namespace ambit::paper
