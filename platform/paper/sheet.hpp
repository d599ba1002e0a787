// The pages as they fill up, top to bottom. Everything is laid out first and drawn at the end, when the
// number of pages is known. Points (1/72 inch), y down.
#pragma once

#include "paper/text.hpp"

#include <functional>
#include <map>
#include <string>

class QPdfWriter;

namespace ambit::paper {

namespace area {
inline constexpr double pageWidth = 595.2756; // A4: 210 × 297 mm
inline constexpr double pageHeight = 841.8898;
inline constexpr double left = 58;
inline constexpr double right = pageWidth - 58;
inline constexpr double width = right - left;
inline constexpr double top = 84;
inline constexpr double bottom = pageHeight - 74;
inline constexpr double height = bottom - top;
} // namespace area

/// What stands in the margins of every page.
struct Running {
    QString left;  ///< aircraft and walk
    QString right; ///< of the upper margin
    QString foot;  ///< the record's identity, short
};

class Sheet {
public:
    using Draw = std::function<void(QPainter&)>;

    explicit Sheet(Running words);

    double y = area::top; ///< where the next thing goes

    [[nodiscard]] double left() const { return area::bottom - y; }            ///< room to the bottom margin
    [[nodiscard]] int page() const { return static_cast<int>(pages.size()); } ///< from 1
    [[nodiscard]] bool atTop() const { return y <= area::top; }

    void newPage();
    /// A new page unless `height` fits on this one; an empty page always does.
    void need(double height);
    /// White space; none at the top of a page.
    void gap(double height);
    /// Something on this page, drawn later.
    void put(Draw draw);
    void line(double from, double to, const QColor& color, double thickness = 0.5); ///< across at y

    /// Text at `x`, going on over pages as it must; never one line alone before or after a page's end.
    void text(const Text& text, double x = area::left);
    /// The same, on this page, y unmoved.
    void textAt(const Text& text, const QPointF& at);

    /// Run at the top of each new page while set: a table's header.
    std::function<void()> onNewPage;

    /// Page where something can be read, for “page 4” on an earlier one.
    void mark(const std::string& name) { marks.emplace(name, page()); }
    [[nodiscard]] int pageOf(const std::string& name) const; ///< 0: nowhere; only asked while drawing

    void drawAll(QPdfWriter& writer, QPainter& painter) const;

private:
    void margins(QPainter& painter, int page) const;

    Running running;
    std::vector<std::vector<Draw>> pages{1};
    std::map<std::string, int> marks;
};

} // namespace ambit::paper
