// What a widget writes, run by run as it reaches the paper. Not for where it stands.
#pragma once

#include <QPainter>
#include <QStringList>
#include <QWidget>
#include <functional>
#include <optional>

namespace ww::support {

/// All runs of text that a widget shows, from left to right or not.
QStringList writtenRuns(QWidget& widget);

/// The height of the smallest letters that a widget writes, device-independent pixels of their font; nothing
/// where it writes none.
std::optional<double> smallestWritten(QWidget& widget);

/// The runs of text that `paint` writes from right to left, as painted in a layout of that direction. Marks
/// that only direct a text do not count. Where no letter of such a script is written, a number in such a run,
/// or between two of them, has lost its place beside its sign, unit or arrow.
QStringList runsFromRightToLeft(const QSize& size, const std::function<void(QPainter& painter)>& paint);

/// The same of what a widget shows.
QStringList runsFromRightToLeft(QWidget& widget);

}  // namespace ww::support
