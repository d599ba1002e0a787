// The sheet a plan is drawn on: to scale, in metres; lines, letters and tags in millimetres on paper.
#pragma once

#include "cli/svg.hpp"

namespace ambit::cli {

struct Bounds { ///< m
    double left = 1e9, bottom = 1e9, right = -1e9, top = -1e9;
    void take(airframe::Place place);
    void take(const airframe::Outline& outline);
};

/// What a tag looks like.
enum class Tag { round, kneeling, square, diamond, bare };

/// Draw from the bottom up, then close.
class Sheet {
public:
    static constexpr std::size_t lettersALine = 100; ///< of the legend

    /// The largest of some round scales at which the figure and so many lines fit a page.
    Sheet(const std::string& title, const Bounds& figure, std::size_t legendLines);

    /// Nothing is drawn beyond the figure's part of the sheet until the group ends.
    void beginFigure();
    void endFigure();

    /// `fill`: "none", a colour or "url(#hatch)", "url(#dots)"; `width` of the line and `dashes`: mm.
    void area(const airframe::Outline& outline, const char* fill, double width, bool dashed = false);
    void line(const std::vector<airframe::Place>& places, double width, bool dashed = false);
    void dot(airframe::Place place, double radius, const char* fill);
    /// A head in the middle of the way, where the way is long enough on paper.
    void arrow(const std::vector<airframe::Place>& places);
    /// A text in a shape of its own at the place, or beside it where there is one already; drawn above all
    /// else.
    void tag(airframe::Place place, const std::string& text, Tag kind);
    void legend(std::vector<std::string> lines); ///< the first is the heading

    [[nodiscard]] std::string close();

private:
    struct Label {
        std::string text;
        Tag kind;
        airframe::Place place;  ///< what it names
        airframe::Place middle; ///< where there was room for it
        double wide, high;
    };

    [[nodiscard]] double mm(double millimetres) const { return millimetres * scale / 1000; }
    [[nodiscard]] std::string size(const char* attribute, double millimetres) const;
    [[nodiscard]] std::string pattern(const char* id, double millimetres, const std::string& content) const;
    [[nodiscard]] std::string stroke(double width, bool dashed) const;
    void rect(double left, double top, double wide, double high, const std::string& style);
    void words(airframe::Place at, const std::string& text, const std::string& style);
    [[nodiscard]] airframe::Place roomFor(airframe::Place place, double wide, double high) const;
    void drawLeader(const Label& label);
    void drawLabel(const Label& label);
    void drawShape(const Label& label);

    double scale = 1;
    double left = 0, top = 0, figureHeight = 0; ///< m
    std::vector<Label> labels;
    std::string out;
};

} // namespace ambit::cli
