#include "ui/widgets/number_pad.h"

#include <QGridLayout>
#include <QStyle>

namespace ww::ui {
namespace {

constexpr int kDigitColumns = 3;
constexpr int kRows = 4;
constexpr double kPadTextPoints = 18.0;
constexpr double kPadWordPoints = 12.0;

}  // namespace

NumberPad::NumberPad(QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("number_pad"));
    setAccessibleName(tr("Number pad"));
    const QString minus = tr("set %1", "a step of the setting; short").arg(QChar(0x2212));
    const QString plus = tr("set %1", "a step of the setting; short").arg('+');
    const struct {
        QString text;
        QString name;
        int key;  ///< 0: none of a keyboard
        int steps;
        Cells cells;
    } kKeys[] = {
        {QStringLiteral("7"), {}, Qt::Key_7, 0, {{0, 0, 1, 1}, {0, 0, 1, 1}}},
        {QStringLiteral("8"), {}, Qt::Key_8, 0, {{1, 0, 1, 1}, {1, 0, 1, 1}}},
        {QStringLiteral("9"), {}, Qt::Key_9, 0, {{2, 0, 1, 1}, {2, 0, 1, 1}}},
        {QString(QChar(0x232B)), tr("Delete last digit"), Qt::Key_Backspace, 0, {{3, 0, 1, 1}, {3, 0, 1, 1}}},
        {QStringLiteral("4"), {}, Qt::Key_4, 0, {{0, 1, 1, 1}, {0, 1, 1, 1}}},
        {QStringLiteral("5"), {}, Qt::Key_5, 0, {{1, 1, 1, 1}, {1, 1, 1, 1}}},
        {QStringLiteral("6"), {}, Qt::Key_6, 0, {{2, 1, 1, 1}, {2, 1, 1, 1}}},
        {minus, tr("Setting one step down"), 0, -1, {{3, 1, 1, 1}, {3, 1, 1, 1}}},
        {QStringLiteral("1"), {}, Qt::Key_1, 0, {{0, 2, 1, 1}, {0, 2, 1, 1}}},
        {QStringLiteral("2"), {}, Qt::Key_2, 0, {{1, 2, 1, 1}, {1, 2, 1, 1}}},
        {QStringLiteral("3"), {}, Qt::Key_3, 0, {{2, 2, 1, 1}, {2, 2, 1, 1}}},
        {plus, tr("Setting one step up"), 0, 1, {{3, 2, 1, 1}, {3, 2, 1, 1}}},
        {QStringLiteral("0"), {}, Qt::Key_0, 0, {{0, 3, 1, 1}, {0, 3, 2, 1}}},
        {QStringLiteral("."), tr("Point"), Qt::Key_Period, 0, {{1, 3, 1, 1}, {2, 3, 1, 1}}},
        {QStringLiteral("x"), tr("Cannot be read"), Qt::Key_X, 0, {{2, 3, 1, 1}, {3, 3, 1, 1}}},
        {QString(QChar(0x21B5)), tr("Store and go on"), Qt::Key_Return, 0, {{3, 3, 1, 1}, {4, 1, 1, 3}}},
        {tr("note", "a key of the number pad; short"),
         tr("Write a note"),
         0,
         0,
         {{0, 4, 4, 1}, {4, 0, 1, 1}}},
    };
    auto* grid = new QGridLayout(this);
    // A pad lies the same way in every script.
    setLayoutDirection(Qt::LeftToRight);
    for (const auto& key : kKeys) {
        auto* button = new QPushButton(key.text, this);
        button->setObjectName(QStringLiteral("pad_key"));
        button->setAccessibleName(key.name.isEmpty() ? tr("Digit %1").arg(key.text) : key.name);
        // The field keeps the focus: the pad is a second keyboard, not a place to be in.
        button->setFocusPolicy(Qt::NoFocus);
        // The last columns hold words.
        button->setProperty("is_digit", key.cells.high.x() < kDigitColumns && key.cells.high.width() == 1);
        if (key.steps != 0) {
            button->setAutoRepeat(true);
            connect(button, &QPushButton::clicked, this,
                    [this, steps = key.steps] { emit settingStepped(steps); });
        } else if (key.key == 0) {
            connect(button, &QPushButton::clicked, this, &NumberPad::noteWanted);
        } else {
            const bool isTyped = key.text.size() == 1 && key.text.front().unicode() < 0x80;
            connect(button, &QPushButton::clicked, this,
                    [this, code = key.key, text = isTyped ? key.text : QString()] {
                        emit keyTouched(code, text);
                    });
        }
        m_keys.push_back(button);
        m_cells.push_back(key.cells);
    }
    grid->setSizeConstraint(QLayout::SetFixedSize);
    putInPlace(false);
}

void NumberPad::putInPlace(bool isLow) {
    auto* grid = static_cast<QGridLayout*>(layout());
    for (std::size_t i = 0; i < m_keys.size(); ++i) {
        const QRect cells = isLow ? m_cells[i].low : m_cells[i].high;
        m_keys[i]->setSizePolicy(QSizePolicy::Expanding,
                                 cells.height() > 1 ? QSizePolicy::Expanding : QSizePolicy::Fixed);
        grid->removeWidget(m_keys[i]);
        grid->addWidget(m_keys[i], cells.y(), cells.x(), cells.height(), cells.width());
    }
    m_isLow = isLow;
}

int NumberPad::leastHeight() {
    return kRows * (kLeastTarget + kTightGap);
}

void NumberPad::setMetrics(const theme::Metrics& metrics, bool isTight, bool isLow) {
    // In the smallest window the card beside it has the note, and a fifth column would take its room.
    m_keys.back()->setVisible(!isTight);
    if (const bool isLaidLow = isLow && !isTight; isLaidLow != m_isLow) {
        putInPlace(isLaidLow);
    }
    const int gap = isTight ? kTightGap : metrics.gap;
    layout()->setSpacing(gap);
    layout()->setContentsMargins(gap, gap / 2, gap, gap / 2);
    for (QPushButton* key : m_keys) {
        if (key->property("is_tight").toBool() != isTight) {
            key->setProperty("is_tight", isTight);
            key->style()->unpolish(key);
            key->style()->polish(key);
        }
        QFont font = this->font();
        font.setPointSizeF(std::max(key->text().size() > 1 ? kPadWordPoints : kPadTextPoints,
                                    std::min(metrics.textPoints, kPadTextPoints)));
        font.setBold(true);
        key->setFont(font);
    }
}

QPushButton* NumberPad::keyOf(const QString& text) const {
    for (QPushButton* key : m_keys) {
        if (key->text() == text || key->accessibleName() == text) {
            return key;
        }
    }
    return nullptr;
}

}  // namespace ww::ui
