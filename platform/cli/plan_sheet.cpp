#include "cli/plan_sheet.hpp"

#include <algorithm>
#include <cmath>

namespace ambit::cli {

using airframe::Place;
using svg::escaped;
using svg::number;

namespace {

// All in millimetres on paper.
constexpr double pageWidth = 190;
constexpr double pageHeight = 277;
constexpr double leastFigure = 120; ///< high, however long the legend is
constexpr double border = 8;        ///< round the figure, for tags
constexpr double lineHeight = 4.4;
constexpr double fontSize = 3.2;
constexpr double letterWidth = 0.56 * fontSize; ///< of a plain typeface, about
constexpr double tagHeight = 4.2;

std::string attribute(const char* name, const std::string& value) {
    return ' ' + std::string(name) + "=\"" + value + '"';
}

double lengthOf(Place a, Place b) {
    return std::sqrt((a.x - b.x) * (a.x - b.x) + (a.y - b.y) * (a.y - b.y));
}

} // namespace

void Bounds::take(Place place) {
    left = std::min(left, place.x);
    right = std::max(right, place.x);
    bottom = std::min(bottom, place.y);
    top = std::max(top, place.y);
}

void Bounds::take(const airframe::Outline& outline) {
    for (const Place place : outline)
        take(place);
}

Sheet::Sheet(const std::string& title, const Bounds& figure, std::size_t legendLines) {
    const double legendHeight = (static_cast<double>(legendLines) + 2) * lineHeight;
    const double room = std::max(leastFigure, pageHeight - legendHeight) - 2 * border;
    const double wide = figure.right - figure.left;
    const double tall = figure.top - figure.bottom;
    for (const double one : {10, 20, 25, 40, 50, 75, 100, 150, 200, 500, 1000, 2000}) {
        scale = one;
        if (wide <= mm(pageWidth - 2 * border) && tall <= mm(room)) break;
    }
    left = (figure.left + figure.right) / 2 - mm(pageWidth) / 2;
    top = figure.top + mm(border);
    figureHeight = tall + mm(2 * border);
    const double height = figureHeight + mm(legendHeight);
    out = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" "
          "version=\"1.1\"" +
          attribute("width", number(pageWidth, 1) + "mm") +
          attribute("height", number(height / scale * 1000, 1) + "mm") +
          attribute("viewBox",
                    number(left) + ' ' + number(-top) + ' ' + number(mm(pageWidth)) + ' ' + number(height)) +
          attribute("font-family", "sans-serif") + size("font-size", fontSize) + ">\n<title>" +
          escaped(title) + "</title>\n<defs>\n" +
          pattern("hatch", 2,
                  "<path d=\"M0,0 L0," + number(mm(2)) + "\" stroke=\"black\"" + size("stroke-width", 0.35) +
                      "/>") +
          pattern("dots", 1.6,
                  "<circle" + size("cx", 0.4) + size("cy", 0.4) + size("r", 0.35) + " fill=\"black\"/>") +
          "<clipPath id=\"figure\">";
    rect(left, top, mm(pageWidth), figureHeight, "");
    out += "</clipPath>\n</defs>\n";
    rect(left, top, mm(pageWidth), height, " fill=\"white\"");
}

void Sheet::beginFigure() {
    out += "<g clip-path=\"url(#figure)\">\n";
}

void Sheet::endFigure() {
    for (const Label& label : labels)
        drawLeader(label);
    for (const Label& label : labels)
        drawLabel(label);
    out += "</g>\n";
}

void Sheet::area(const airframe::Outline& outline, const char* fill, double width, bool dashed) {
    out += "<polygon" + attribute("points", svg::points(outline)) + attribute("fill", fill) +
           stroke(width, dashed) + "/>\n";
}

void Sheet::line(const std::vector<Place>& places, double width, bool dashed) {
    out += "<polyline" + attribute("points", svg::points(places)) + attribute("fill", "none") +
           stroke(width, dashed) + "/>\n";
}

void Sheet::dot(Place place, double radius, const char* fill) {
    out += "<circle" + attribute("cx", number(place.x)) + attribute("cy", number(-place.y)) +
           size("r", radius) + attribute("fill", fill) + stroke(0.3, false) + "/>\n";
}

void Sheet::arrow(const std::vector<Place>& places) {
    double half = 0;
    for (std::size_t i = 1; i < places.size(); ++i)
        half += lengthOf(places[i - 1], places[i]) / 2;
    if (half < mm(3.5)) return;
    for (std::size_t i = 1; i < places.size(); ++i) {
        const Place a = places[i - 1];
        const Place b = places[i];
        const double length = lengthOf(a, b);
        if (length < half) {
            half -= length;
            continue;
        }
        const Place along{(b.x - a.x) / length, (b.y - a.y) / length};
        const auto at = [&](double on, double beside) {
            const double share = half + mm(on);
            return Place{a.x + along.x * share - along.y * mm(beside),
                         a.y + along.y * share + along.x * mm(beside)};
        };
        area({at(1.6, 0), at(-1, 1.1), at(-1, -1.1)}, "black", 0.1);
        return;
    }
}

void Sheet::tag(Place place, const std::string& text, Tag kind) {
    const double wide = mm(std::max(tagHeight, static_cast<double>(svg::letters(text)) * letterWidth + 1.6));
    const double high = mm(tagHeight);
    labels.push_back({text, kind, place, roomFor(place, wide, high), wide, high});
}

void Sheet::legend(std::vector<std::string> lines) {
    lines.push_back("Scale 1:" + number(scale, 0) + ", nose up.");
    double y = top - figureHeight;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        y -= mm(lineHeight);
        words({left + mm(5), y}, lines[i], i == 0 ? attribute("font-weight", "bold") : "");
    }
}

std::string Sheet::close() {
    return std::move(out) + "</svg>\n";
}

std::string Sheet::size(const char* name, double millimetres) const {
    return attribute(name, number(mm(millimetres)));
}

std::string Sheet::pattern(const char* id, double millimetres, const std::string& content) const {
    return "<pattern" + attribute("id", id) + " patternUnits=\"userSpaceOnUse\"" +
           size("width", millimetres) + size("height", millimetres) + " patternTransform=\"rotate(45)\">" +
           content + "</pattern>\n";
}

std::string Sheet::stroke(double width, bool dashed) const {
    return " stroke=\"black\" stroke-linejoin=\"round\"" + size("stroke-width", width) +
           (dashed ? attribute("stroke-dasharray", number(mm(1.4)) + ' ' + number(mm(1.1))) : "");
}

void Sheet::rect(double leftEdge, double topEdge, double wide, double high, const std::string& style) {
    out += "<rect" + attribute("x", number(leftEdge)) + attribute("y", number(-topEdge)) +
           attribute("width", number(wide)) + attribute("height", number(high)) + style + "/>\n";
}

void Sheet::words(Place at, const std::string& text, const std::string& style) {
    out += "<text" + attribute("x", number(at.x)) + attribute("y", number(-at.y)) + style + '>' +
           escaped(text) + "</text>\n";
}

/// The nearest of some places round it where no label is yet.
Place Sheet::roomFor(Place place, double wide, double high) const {
    constexpr std::pair<int, int> ways[] = {{1, 0}, {-1, 0}, {0, 1},  {0, -1},
                                            {1, 1}, {-1, 1}, {1, -1}, {-1, -1}};
    for (int ring = 0; ring <= 8; ++ring) {
        for (const auto& [x, y] : ways) {
            const Place middle{place.x + x * ring * mm(2.6), place.y + y * ring * mm(2.6)};
            const auto overlaps = [&](const Label& label) {
                return std::fabs(label.middle.x - middle.x) < (label.wide + wide) / 2 + mm(0.4) &&
                       std::fabs(label.middle.y - middle.y) < (label.high + high) / 2 + mm(0.4);
            };
            if (std::none_of(labels.begin(), labels.end(), overlaps)) return middle;
        }
    }
    return place;
}

void Sheet::drawLeader(const Label& label) {
    if (label.middle == label.place) return;
    line({label.place, label.middle}, 0.2);
    dot(label.place, 0.5, "black");
}

void Sheet::drawLabel(const Label& label) {
    drawShape(label);
    words({label.middle.x, label.middle.y - mm(fontSize) * 0.36}, label.text,
          attribute("text-anchor", "middle") +
              attribute("fill", label.kind == Tag::diamond ? "white" : "black"));
}

void Sheet::drawShape(const Label& label) {
    const double wide = label.wide;
    const double high = label.high;
    const Place middle = label.middle;
    if (label.kind == Tag::diamond) {
        const double half = std::max(wide, high) * 0.62;
        area({{middle.x - half, middle.y},
              {middle.x, middle.y + half},
              {middle.x + half, middle.y},
              {middle.x, middle.y - half}},
             "black", 0.2);
        return;
    }
    const double corner = label.kind == Tag::round || label.kind == Tag::kneeling ? high / 2 : 0;
    const std::string style = attribute("rx", number(corner)) + attribute("fill", "white");
    rect(middle.x - wide / 2, middle.y + high / 2, wide, high,
         label.kind == Tag::bare ? style : style + stroke(label.kind == Tag::square ? 0.7 : 0.4, false));
    const double foot = middle.y - high / 2;
    if (label.kind == Tag::kneeling) line({{middle.x - wide / 3, foot}, {middle.x + wide / 3, foot}}, 1.1);
}

} // namespace ambit::cli
