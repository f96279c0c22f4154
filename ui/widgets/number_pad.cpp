#include "ui/widgets/number_pad.h"

#include <QGridLayout>
#include <QStyle>

namespace ww::ui {
namespace {

constexpr int kColumns = 4;
constexpr int kRows = 4;
constexpr double kPadTextPoints = 18.0;
constexpr double kPadWordPoints = 12.0;

}  // namespace

NumberPad::NumberPad(QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("number_pad"));
    setAccessibleName(tr("Number pad"));
    const struct {
        QString text;
        QString name;
        int key;
        int steps;
    } kKeys[] = {
        {QStringLiteral("7"), {}, Qt::Key_7, 0},
        {QStringLiteral("8"), {}, Qt::Key_8, 0},
        {QStringLiteral("9"), {}, Qt::Key_9, 0},
        {QString(QChar(0x232B)), tr("Delete last digit"), Qt::Key_Backspace, 0},
        {QStringLiteral("4"), {}, Qt::Key_4, 0},
        {QStringLiteral("5"), {}, Qt::Key_5, 0},
        {QStringLiteral("6"), {}, Qt::Key_6, 0},
        {tr("set %1", "a step of the setting; short").arg(QChar(0x2212)), tr("Setting one step down"), 0, -1},
        {QStringLiteral("1"), {}, Qt::Key_1, 0},
        {QStringLiteral("2"), {}, Qt::Key_2, 0},
        {QStringLiteral("3"), {}, Qt::Key_3, 0},
        {tr("set %1", "a step of the setting; short").arg('+'), tr("Setting one step up"), 0, 1},
        {QStringLiteral("0"), {}, Qt::Key_0, 0},
        {QStringLiteral("."), tr("Point"), Qt::Key_Period, 0},
        {QStringLiteral("x"), tr("Cannot be read"), Qt::Key_X, 0},
        {QString(QChar(0x21B5)), tr("Store and go on"), Qt::Key_Return, 0},
    };
    auto* grid = new QGridLayout(this);
    // A pad lies the same way in every script.
    setLayoutDirection(Qt::LeftToRight);
    int place = 0;
    for (const auto& key : kKeys) {
        auto* button = new QPushButton(key.text, this);
        button->setObjectName(QStringLiteral("pad_key"));
        button->setAccessibleName(key.name.isEmpty() ? tr("Digit %1").arg(key.text) : key.name);
        // The field keeps the focus: the pad is a second keyboard, not a place to be in.
        button->setFocusPolicy(Qt::NoFocus);
        button->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
        // The last column holds words.
        button->setProperty("is_digit", place % kColumns + 1 < kColumns);
        if (key.steps != 0) {
            button->setAutoRepeat(true);
            connect(button, &QPushButton::clicked, this,
                    [this, steps = key.steps] { emit settingStepped(steps); });
        } else {
            const bool isTyped = key.text.size() == 1 && key.text.front().unicode() < 0x80;
            connect(button, &QPushButton::clicked, this,
                    [this, code = key.key, text = isTyped ? key.text : QString()] {
                        emit keyTouched(code, text);
                    });
        }
        grid->addWidget(button, place / kColumns, place % kColumns);
        m_keys.push_back(button);
        ++place;
    }
    grid->setSizeConstraint(QLayout::SetFixedSize);
}

int NumberPad::leastHeight() {
    return kRows * (kLeastTarget + kTightGap);
}

void NumberPad::setMetrics(const theme::Metrics& metrics, bool isTight) {
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
