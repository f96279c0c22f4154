// The comments of a round beside its comparison: threads, a field to write in, and what can be done with the
// thread in hand. Not for deciding on a round (decision_panel.h).
#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QWidget>

#include "core/balancing/review_steps.h"
#include "ui/workbook_bridge.h"

namespace ww::ui {

class CommentPanel : public QWidget {
    Q_OBJECT

  public:
    explicit CommentPanel(WorkbookBridge& bridge, QWidget* parent = nullptr);

    /// The cell that the next new comment is pinned to, and the round whose comments are listed.
    void setPlace(const balancing::CommentPlace& place);
    /// Puts the keys into the field of a new comment.
    void write();
    QListWidget* list() const { return m_list; }

  signals:
    /// A thread was chosen whose branch is to be shown.
    void branchWanted(const ww::base::Id& branch);

  public slots:
    void refresh();

  private:
    void showInHand();
    void take(const project::Edit& edit);
    const project::Comment* inHand() const;
    QString threadText(const project::Comment& comment) const;

    WorkbookBridge& m_bridge;
    balancing::CommentPlace m_place;
    QLabel* m_head;
    QListWidget* m_list;
    QLabel* m_target;
    QLineEdit* m_text;
    QPushButton* m_add;
    QPushButton* m_answer;
    QPushButton* m_resolve;
};

}  // namespace ww::ui
