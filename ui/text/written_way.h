// The way in which a painted text runs in a layout from right to left. Not for where else its box stands.
#pragma once

#include <QString>
#include <Qt>

namespace ww::ui::text {

/// Alignment and flags for QPainter::drawText() in a layout of that direction. The text stands on the side
/// that the layout gives it, and runs from left to right unless its own letters run the other way: signs,
/// units and arrows keep their place beside the digits ("-15 %", "2.8 → 2.5").
int writtenFlags(Qt::LayoutDirection layout, int flags, const QString& text);

/// The same for a text that is painted by others in a paragraph of that direction: set apart from it (Unicode
/// Standard Annex #9, 2.4: isolates) where it needs that.
QString writtenApart(Qt::LayoutDirection paragraph, const QString& text);

/// Whether a text is a number, with its signs and its unit: "-3.2 kPa", "~102", "2026-05-13".
bool isNumeral(const QString& text);

}  // namespace ww::ui::text
