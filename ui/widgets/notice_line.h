// The reserved lines above the content: one message at a time, and nothing moves when it comes or goes,
// unless it is longer than the narrowest letters hold in them. Knows no workbook.
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
    QString message() const { return m_message; }
    /// The height that is kept free whether a message stands there or not, px.
    void setReserved(int height);

  protected:
    void resizeEvent(QResizeEvent* event) override;

  private:
    /// Writes the message in the widest letters that it has room in; higher than reserved where none has.
    void fit();
    bool isWhole() const;
    QString m_message;
    int m_reserved = 0;
};

}  // namespace ww::ui
