// How the windows look, and what the strip on top says. Not for the colour tokens themselves (theme/).
#pragma once

#include <QFont>
#include <QPalette>
#include <QWidget>

#include "ui/theme/theme.h"
#include "ui/widgets/job_strip.h"
#include "ui/workbook_bridge.h"

namespace ww::ui {

/// Everything that follows from a display and a text size.
struct Look {
    theme::Tokens tokens;
    theme::Metrics metrics;
    QPalette palette;
    QFont font;
    QString styleSheet;
};
Look lookOf(theme::Display display, double textPoints, bool hasLargeTargets);

/// No layout below `parent` puts two widgets closer together than `gap`, device-independent pixels; 0 gives
/// every layout back the gaps that it was made with.
void keepApart(QWidget& parent, int gap);

/// Gives the whole program this look; gives it back.
const Look& applyToProgram(const Look& look);

QString displayName(theme::Display display);

/// How many words the strip may take. The least leaves out when something was stored.
enum class StripLength { Full, Middle, RoundInWords, Short, Least };
/// What the strip says about the open workbook.
StripText stripText(const WorkbookBridge& bridge, theme::Display display, StripLength length);

}  // namespace ww::ui
