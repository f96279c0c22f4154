// What this desk remembers between sessions: window, display, text size, recent files, what was not
// closed, and of each workbook who works in it here and where, its working order, and what is typed in it and
// not entered. Facts of a job are in its workbook, never here. Unknown keys stay as they are.
#pragma once

#include <QByteArray>
#include <QSettings>
#include <QStringList>
#include <optional>
#include <vector>

#include "core/exchange/table_mapping.h"
#include "ui/order_of_round.h"
#include "ui/theme/theme.h"
#include "ui/typed_draft.h"

namespace ww::ui {

class Preferences {
  public:
    static constexpr int kRecentCount = 8;

    /// Kept in the desk's settings file of this program.
    static constexpr int kLeastPoints = 10;
    static constexpr int kMostPoints = 20;

    /// Takes the size of the desktop's text from the program's font: made before a look is applied to it.
    Preferences();
    /// Kept in a file of its own, on a desktop with text of a size; for tests.
    explicit Preferences(const QString& file, double desktopPoints = kLeastPoints);

    theme::Display display() const;
    void setDisplay(theme::Display display);

    /// Code of the language of the screen (ui/language.h); empty: that of the system.
    QString language() const;
    void setLanguage(const QString& code);

    /// Text size in points, 10 (100 %) to 20 (200 %); that of the desktop until another is chosen.
    double textPoints() const;
    void setTextPoints(double points);
    /// The size of the desktop's text again.
    void resetTextPoints();

    /// Controls large enough for gloves.
    bool hasLargeTargets() const;
    void setLargeTargets(bool isLarge);

    /// Workbooks opened here, newest first, at most kRecentCount; some may be gone.
    QStringList recentFiles() const;
    void rememberFile(const QString& file);
    void forgetFile(const QString& file);

    /// Workbooks that were opened for changes here and not closed since, in the order they were opened: open
    /// in a window now, or left open by a session that was killed. Written to disk at once.
    QStringList unclosedFiles() const;
    void rememberOpened(const QString& file);
    void rememberClosed(const QString& file);

    /// Everything as it was when the program came; keys that it does not know stay, which workbooks are open,
    /// and of these what was typed and not entered, and their working order.
    void reset();

    /// Which heading of a person's table was last taken for which column of ours, in this job. Headings that
    /// the table does not have change nothing.
    void recallMatch(const base::Id& job, const exchange::SourceTable& table,
                     exchange::TableMapping& mapping) const;
    void rememberMatch(const base::Id& job, const exchange::SourceTable& table,
                       const exchange::TableMapping& mapping);

    /// The person at this desk in one workbook and in its copies, as last chosen; nothing where none was.
    std::optional<base::Id> personIn(const base::Id& workbook) const;
    void rememberPerson(const base::Id& workbook, const base::Id& person);
    /// The place of this workbook that was shown last, in the window's order; nothing where none was.
    std::optional<int> placeIn(const base::Id& workbook) const;
    void rememberPlace(const base::Id& workbook, int place);

    /// What is typed in this workbook here and not entered. Written to disk at once.
    std::vector<TypedDraft> draftsIn(const base::Id& workbook) const;
    void keepDrafts(const base::Id& workbook, const std::vector<TypedDraft>& drafts);

    /// The working order of the valves in this workbook here. Written to disk at once.
    std::optional<OrderOfRound> orderIn(const base::Id& workbook) const;
    void keepOrder(const base::Id& workbook, const OrderOfRound& order);

    QByteArray windowGeometry() const;
    void setWindowGeometry(const QByteArray& geometry);

  private:
    void setUnclosed(const QStringList& files);

    QSettings m_settings;
    double m_desktopPoints;
};

}  // namespace ww::ui
