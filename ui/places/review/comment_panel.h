// The comments of a round beside its comparison: threads, a field to write in, and what can be done with the
// thread in hand. Not for deciding on a round (decision_panel.h).
#pragma once

#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QWidget>

#include "core/balancing/review_steps.h"
#include "ui/widgets/hinted_field.h"
#include "ui/workbook_bridge.h"

namespace ww::ui {

class CommentPanel : public QWidget {
    Q_OBJECT

  public:
    explicit CommentPanel(WorkbookBridge& bridge, QWidget* parent = nullptr);

    /// The cell that the next new comment is pinned to, and the round whose comments are listed.
    void setPlace(const balancing::CommentPlace& place);
    /// Puts the keys into the field, for a new comment.
    void write();
    QListWidget* list() const { return m_list; }

  signals:
    /// A thread was chosen whose branch is to be shown.
    void branchWanted(const ww::base::Id& branch);

  public slots:
    void refresh();

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    /// The thread in hand was chosen by a person: Enter answers it until a cell is chosen or a comment begun.
    void choose();
    void showInHand();
    void take(const project::Edit& edit);
    const project::Comment* inHand() const;
    QString threadText(const project::Comment& comment) const;

    WorkbookBridge& m_bridge;
    balancing::CommentPlace m_place;
    bool m_isAnswering = false;  ///< what Enter does with the text: the thread in hand gets it
    QLabel* m_head;
    QListWidget* m_list;
    QLabel* m_target;
    HintedField* m_text;
    QPushButton* m_add;
    QPushButton* m_answer;
    QPushButton* m_resolve;
};

}  // namespace ww::ui
