// Many sentences of a section on the screen, one below the other: text that lays out only what is seen, to be
// read, marked and copied. Knows no workbook.
#pragma once

#include <QPlainTextEdit>
#include <QStringList>

namespace ww::ui {

class StatementList : public QPlainTextEdit {
    Q_OBJECT

  public:
    explicit StatementList(QWidget* parent = nullptr);

    /// One paragraph each, with an empty line between two.
    void show(const QStringList& sentences);

  protected:
    void changeEvent(QEvent* event) override;

  private:
    void fitHeight();
};

}  // namespace ww::ui
