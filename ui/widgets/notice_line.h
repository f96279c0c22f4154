// The reserved line above the content: one message at a time, and nothing moves when it comes or goes. Knows
// no workbook.
#pragma once

#include <QLabel>

namespace ww::ui {

class NoticeLine : public QLabel {
    Q_OBJECT

  public:
    explicit NoticeLine(QWidget* parent = nullptr);
    /// Shows a message; an empty one clears the line. The whole text is also the tooltip. `isUrgent`: in the
    /// color of warnings.
    void showMessage(const QString& message, bool isUrgent);
    void clearMessage() { showMessage(QString(), false); }
    /// The whole message, also where the line has no room for it.
    QString message() const { return m_message; }

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    void fit();
    QString m_message;
};

}  // namespace ww::ui
