// The list of places at the side. Knows no workbook.
#pragma once

#include <QListWidget>

namespace ww::ui {

class SideList : public QListWidget {
    Q_OBJECT

  public:
    explicit SideList(QWidget* parent = nullptr);
    /// Adds a place with the number of its key (Alt+number).
    void addPlace(int number, const QString& name);
};

}  // namespace ww::ui
