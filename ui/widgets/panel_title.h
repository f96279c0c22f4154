// The title of a panel, in the letters that the style sheet gives titles.
#pragma once

#include <QLabel>

namespace ww::ui {

inline QLabel* panelTitle(const QString& text, QWidget* parent) {
    auto* label = new QLabel(text, parent);
    label->setObjectName(QStringLiteral("panel_title"));
    return label;
}

}  // namespace ww::ui
