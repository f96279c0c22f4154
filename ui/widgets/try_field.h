// The field at a valve in hand: digits and Enter log a value, arrows step the setting, Escape gives up. It is
// emptied once its value is stored, and what it held does not come back by its own undo. Knows no workbook.
#pragma once

#include <QLineEdit>
#include <functional>

namespace ww::ui {

class TryField : public QLineEdit {
    Q_OBJECT

  public:
    /// Stores what was typed. False: refused; the text stays, selected.
    using Store = std::function<bool(const QString& text)>;

    explicit TryField(QWidget* parent = nullptr);
    void setStore(Store store) { m_store = std::move(store); }
    /// Stores what stands in the field; true also where nothing stands there.
    bool commit();
    /// Forgets what stands in the field and what stood there.
    void empty() { setText(QString()); }
    bool isBlank() const { return text().trimmed().isEmpty(); }

  signals:
    /// The setting is to be moved by so many steps, or whole turns.
    void stepped(int steps);
    void turned(int turns);
    /// Escape on an empty field.
    void givenUp();

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    bool event(QEvent* event) override;

  private:
    Store m_store;
};

}  // namespace ww::ui
