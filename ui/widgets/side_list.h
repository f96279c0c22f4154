// The list of places at the side. Knows no workbook.
#pragma once

#include <QListWidget>

namespace ww::ui {

class SideList : public QListWidget {
    Q_OBJECT

  public:
    explicit SideList(QWidget* parent = nullptr);
    /// Adds a place with the number of its key (Alt+number).
    /// `isCounted`: something may wait there.
    void addPlace(int number, const QString& name, bool isCounted = false);
    /// Says behind the name of a place how much waits there: `spoken` is what a screen reader adds. Nothing
    /// where `count` is 0. Whether it said something else before.
    bool setWaiting(int row, int count, const QString& spoken);
    /// What its longest item needs, px; a place where something may wait has room for a digit always, so that
    /// nothing beside the list moves with it.
    int wantedWidth() const;
};

}  // namespace ww::ui
