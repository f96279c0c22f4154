// What stands between a job and its signed report, line by line, each with what cures it. Not for the rules
// (balancing/ready_to_sign.h) nor for signing.
#pragma once

#include <QPushButton>
#include <QVBoxLayout>
#include <QWidget>

#include "core/balancing/ready_to_sign.h"
#include "ui/theme/theme.h"
#include "ui/widgets/entry_field.h"
#include "ui/workbook_bridge.h"

namespace ww::ui {

class ReadyList : public QWidget {
    Q_OBJECT

  public:
    /// Where a line leads.
    enum class Target { Job, System, Walk, Pump, Review, Merge };

    explicit ReadyList(WorkbookBridge& bridge, QWidget* parent = nullptr);

    /// Fills the list anew. Where the keys were in a reason that is given now they go on to the next line
    /// that waits for one, else they stay where they were.
    void show(const std::vector<balancing::SignLine>& lines, const theme::Tokens& tokens);
    /// The first line that stands in the way; the first of all where none does. Null before show().
    QWidget* firstOpen() const { return m_firstOpen; }
    /// Keeps why a line stands; an empty reason takes that back. Says whether it was stored.
    bool giveReason(const base::Fault& line, const QString& reason);

  signals:
    void placeWanted(ww::ui::ReadyList::Target target);
    void branchWanted(const ww::base::Id& branch);
    /// The deficiency that keeps a terminal outside its tolerance is to be listed.
    void deficiencyWanted(const ww::base::Id& branch);

  private:
    QWidget* add(const balancing::SignLine& line, const theme::Tokens& tokens);
    QPushButton* button(const QString& words, const balancing::SignLine& line);
    void addCure(const balancing::SignLine& line, QVBoxLayout& column);
    void addReason(const balancing::SignLine& line, QVBoxLayout& column);

    /// Gives the keys to what stands now where the control of that name stood.
    void passKeys(const QString& name);

    struct Reason {
        EntryField* field;
        bool isOpen;
    };

    WorkbookBridge& m_bridge;
    QVBoxLayout* m_lines;
    std::vector<Reason> m_reasons;
    QWidget* m_firstOpen = nullptr;
};

}  // namespace ww::ui
