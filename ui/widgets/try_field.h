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
    /// Whether nothing but spaces stands in the field.
    bool isBlank() const { return text().trimmed().isEmpty(); }
    /// Whether what stands in the field was refused, or is said to stand in the way of something.
    bool isRefused() const { return m_isRefused && !isBlank(); }
    /// It is said that what stands in the field stands in the way.
    void setRefused() { m_isRefused = true; }

  signals:
    /// The setting is to be moved by so many of its steps; below zero: down.
    void stepped(int steps);
    /// The setting is to be moved by so many whole turns.
    void turned(int turns);
    /// Escape on an empty field.
    void givenUp();
    /// A text that was refused is given up: what was said of it no longer holds.
    void refusalGivenUp();

  protected:
    void keyPressEvent(QKeyEvent* event) override;
    bool event(QEvent* event) override;

  private:
    Store m_store;
    bool m_isRefused = false;
};

}  // namespace ww::ui
