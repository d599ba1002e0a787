// The parts of a record's pages, in reading order. Each goes on where the one before ended, or on a new page.
#pragma once

#include "paper/photo.hpp"
#include "paper/record_view.hpp"
#include "paper/sheet.hpp"
#include "paper/wording.hpp"

namespace ambit::paper {

struct Context {
    const RecordView& view;
    Clock clock;
    const record::Certificate& signer;
    Sheet& sheet;
    Pictures& pictures;
    QString statement; ///< what the record is, in its own words
    bool shownWhole;   ///< the typefaces have every character of it
};

void addTitle(const Context& context);
void addFindings(const Context& context);
/// Only where something was measured or photographed as version 5 or later brought it.
void addMeasured(const Context& context);
/// Of the page where a point's trend is drawn: Sheet::pageOf.
[[nodiscard]] std::string trendMark(const std::string& point);
void addFigure(const Context& context);
void addPoints(const Context& context);
void addTimeline(const Context& context);
void addAsks(const Context& context); ///< only where something was asked

/// “look again at 12, Oil level”, “a question”: what an ask is.
[[nodiscard]] QString askWords(const RecordView& view, const round::Ask& ask);

/// A heading with what it is about; what follows begins on the same page.
void addHeading(Sheet& sheet, const QString& words, const QString& about);

} // namespace ambit::paper
