// What findings and measured points have in common: a head with mark and number, labelled lines, photos.
#pragma once

#include "paper/marks.hpp"
#include "paper/sections.hpp"

namespace ambit::paper {

inline constexpr double indent = 44; ///< of all but mark and number
inline constexpr double wide = area::width - indent;

/// Above it a line across, unless at the top of a page; the text goes on at `indent`.
void addItemHead(Sheet& sheet, Mark mark, int number, const Text& name);

void addLabelled(Sheet& sheet, const QString& label, const QString& words);

/// Draws something over a photo that stands in the box.
using Over = std::function<void(QPainter& painter, const QRectF& box)>;

/// Two beside each other, each with its point's number and hash. `over`: none, or one for each photo.
void addPhotos(const Context& context, const std::vector<round::Photo>& photos, int number,
               const std::vector<Over>& over = {});
/// Of the first row; photos are not empty.
[[nodiscard]] double photoRowHeight(const Context& context, const std::vector<round::Photo>& photos);

} // namespace ambit::paper
