// The one word that says what the hand does next, with its shape. Knows no workbook.
#pragma once

#include <QWidget>
#include <optional>

#include "core/balancing/aim.h"
#include "ui/theme/theme.h"

namespace ww::ui {

class WordSign : public QWidget {
    Q_OBJECT

  public:
    /// Narrower no word is readable.
    static constexpr int kLeastWidth = 160;

    explicit WordSign(QWidget* parent = nullptr);

    /// Nothing: no reading says anything yet. `words` is what is written, `note` a smaller line below it.
    void show(std::optional<balancing::AimWord> word, const QString& words, const QString& note);
    /// The longest words that can ever stand there, which set the size, so that nothing moves.
    void setLongest(const QString& words);
    /// What was shown last.
    std::optional<balancing::AimWord> word() const { return m_word; }
    void setTokens(const theme::Tokens& tokens);

    /// How high it is at that width with the note that it shows, px.
    int heightAt(int width) const;

    QSize sizeHint() const override;
    QSize minimumSizeHint() const override { return {kLeastWidth, sizeHint().height()}; }

  protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

  private:
    QFont wordFont() const;
    int noteHeight(int width) const;
    /// Gives a longer note its lines; once there they stay until width or font change.
    void fitNote(bool isAnew);

    std::optional<balancing::AimWord> m_word;
    QString m_words;
    QString m_note;
    QString m_longest;
    int m_noteHeight = 0;
    theme::Tokens m_tokens;
};

}  // namespace ww::ui
