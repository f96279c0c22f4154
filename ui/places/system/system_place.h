// The place System: what was designed, branch by branch. Not for readings (Walk).
#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QStackedWidget>
#include <QWidget>

#include "ui/delegates/branch_delegate.h"
#include "ui/models/system_model.h"
#include "ui/widgets/entry_table.h"

namespace ww::ui {

class SystemPlace : public QWidget {
    Q_OBJECT

  public:
    explicit SystemPlace(WorkbookBridge& bridge, QWidget* parent = nullptr);

    void setTokens(const theme::Tokens& tokens);
    void setMetrics(const theme::Metrics& metrics);
    void takeFocus();
    EntryTable* table() const { return m_table; }
    SystemModel* model() const { return m_model; }

  public slots:
    void findBranch();
    void addBranch();
    void showBranch(const ww::base::Id& branch);

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    void refresh();
    void fitColumns();
    void jump();
    bool store(const QModelIndex& cell, const QString& text);

    WorkbookBridge& m_bridge;
    SystemModel* m_model;
    EntryTable* m_table;
    BranchDelegate* m_delegate;
    QStackedWidget* m_content;
    QLabel* m_empty;
    QLabel* m_sums;
    QLineEdit* m_find;
    QPushButton* m_add;
    theme::Tokens m_tokens;
};

}  // namespace ww::ui
