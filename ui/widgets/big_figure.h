// One number to be read from two meters away, with what it is above it and what belongs to it below. Knows no
// workbook.
#pragma once

#include <QStringList>
#include <QWidget>

#include "ui/theme/theme.h"

namespace ww::ui {

class BigFigure : public QWidget {
    Q_OBJECT

  public:
    /// Height of a capital letter, device-independent pixels: 22 arc minutes from two meters on a laptop.
    static constexpr int kCapHeight = 57;
    static constexpr int kSmallCapHeight = 36;  ///< where the window is small

    /// `head` says what the number is, for the eye and for a screen reader.
    explicit BigFigure(const QString& head, QWidget* parent = nullptr);

    /// `notes` are at most two short lines below. `isSoft`: the number rests on something old.
    void show(const QString& number, const QStringList& notes, bool isSoft);
    QString number() const { return m_number; }
    void setTokens(const theme::Tokens& tokens);
    /// Whether capitals are kSmallCapHeight high instead of kCapHeight.
    void setSmall(bool isSmall);
    bool isSmall() const { return m_isSmall; }
    /// The room it takes in either size, px.
    QSize sizeOf(bool isSmall) const;

    QSize sizeHint() const override { return sizeOf(m_isSmall); }
    QSize minimumSizeHint() const override { return sizeHint(); }

  protected:
    void paintEvent(QPaintEvent* event) override;

  private:
    /// The font whose capitals have the height wanted.
    QFont numberFont(bool isSmall) const;
    QFont fittedFont(const QString& words) const;

    QString m_head;
    QString m_number;
    QStringList m_notes;
    theme::Tokens m_tokens;
    bool m_isSoft = false;
    bool m_isSmall = false;
};

}  // namespace ww::ui
