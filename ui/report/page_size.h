// The two papers of a report, in dots. Part of report_pages.
#pragma once

#include <QSizeF>

#include "ui/report/report_pages.h"

namespace ww::ui::report {

/// A4 (ISO 216: 210 x 297 mm) or Letter (8.5 x 11 in).
inline QSizeF pageSize(bool isLetter, bool isLandscape) {
    const QSizeF upright =
        isLetter ? QSizeF(8.5, 11.0) * kDotsPerInch : QSizeF(210, 297) * kDotsPerMillimetre;
    return isLandscape ? upright.transposed() : upright;
}

}  // namespace ww::ui::report
