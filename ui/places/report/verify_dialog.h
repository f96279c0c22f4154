// What was found about a signed report: for every signature who, when, changed or not, trusted or not; and
// how the open workbook stands to it. Not for the proof itself (seal/verify_report.h).
#pragma once

#include <QGridLayout>

#include "core/report/report.h"
#include "core/seal/verify_report.h"
#include "ui/theme/theme.h"
#include "ui/widgets/ordered_dialog.h"
#include "ui/workbook_bridge.h"

namespace ww::ui {

inline constexpr base::MessageForm kFileUnread{"verify_file_unread",
                                               "{1} could not be read; choose a file that is there"};

class VerifyDialog : public OrderedDialog {
    Q_OBJECT

  public:
    VerifyDialog(const WorkbookBridge& bridge, const theme::Tokens& tokens, QWidget* parent = nullptr);

    /// Judges a file and shows the answers.
    void show(const QString& file);
    /// Takes the root certificates of a PEM file as trusted and judges again.
    void trust(const QString& pemFile);
    const seal::ReportVerification& found() const { return m_found; }

  private:
    void judge();
    void addFact(const QString& label, const QString& words, ww::report::Mark mark);
    void addHeading(const QString& words);
    void addFault(const base::Fault& fault);
    void askTrust();

    const WorkbookBridge& m_bridge;
    theme::Tokens m_tokens;
    QString m_file;
    seal::TrustAnchors m_anchors;
    seal::ReportVerification m_found;
    QWidget* m_page;
    QGridLayout* m_lines;
};

}  // namespace ww::ui
