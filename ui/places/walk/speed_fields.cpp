#include "ui/places/walk/speed_fields.h"

#include <QKeyEvent>
#include <algorithm>
#include <utility>

#include "ui/mnemonics.h"
#include "ui/models/record_field.h"

namespace ww::ui {
namespace {

constexpr quantity::Unit kSpeedUnit = quantity::Unit::RevolutionPerMinute;

/// As it was typed; the unit of the field is left out.
QString speedBefore(const project::Project& project, const base::Id& pump) {
    const auto speed = pump_room::lastRunningSpeed(project, pump);
    return speed && speed->unit == kSpeedUnit ? QString::fromStdString(speed->digits.text())
                                              : text::entered(speed);
}

}  // namespace

SpeedFields::SpeedFields(const WorkbookBridge& bridge, QWidget* parent)
    : QWidget(parent), m_bridge(bridge), m_rows(new QVBoxLayout(this)), m_about(new QLabel(this)) {
    m_rows->setContentsMargins(0, 0, 0, 0);
    m_about->setWordWrap(true);
    m_about->setTextFormat(Qt::PlainText);
    m_about->setText(tr("A speed becomes a reading when it is typed, or confirmed with Enter in its field."));
    m_rows->addWidget(m_about);
}

void SpeedFields::begin(bool isAgain) {
    const std::vector<Field> former = std::exchange(m_fields, {});
    for (const project::Pump& pump : m_bridge.project().pumps()) {
        if (!pump.isRunning) {
            continue;
        }
        auto* edit = new HintedField(text::symbol(kSpeedUnit), this);
        auto* head = new QLabel(this);
        head->setWordWrap(true);
        head->setBuddy(edit);
        edit->setText(speedBefore(m_bridge.project(), pump.id));
        edit->installEventFilter(this);
        const int at = m_rows->indexOf(m_about);
        m_rows->insertWidget(at, head);
        m_rows->insertWidget(at + 1, edit);
        m_fields.push_back({pump.id, head, edit, edit->text()});
        const auto same = std::find_if(former.begin(), former.end(), [&](const Field& one) {
            return isAgain && one.pump == pump.id && one.before == edit->text();
        });
        if (same != former.end()) {
            edit->setText(same->field->text());
            m_fields.back().isConfirmed = same->isConfirmed;
        }
        label(m_fields.back());
        connect(edit, &QLineEdit::textEdited, this, [this, edit] {
            const auto typed = std::find_if(m_fields.begin(), m_fields.end(),
                                            [edit](const Field& field) { return field.field == edit; });
            typed->isConfirmed = false;
            label(*typed);
        });
    }
    for (const Field& field : former) {
        delete field.label;
        delete field.field;
    }
    setVisible(!m_fields.empty());
}

void SpeedFields::label(const Field& field) const {
    const QString tag = QString::fromStdString(m_bridge.project().pumps().at(field.pump).tag);
    const QString unit = text::symbol(kSpeedUnit);
    const bool isRead = field.isConfirmed || field.field->text() != field.before;
    const QString words = isRead ? tr("Speed of %1, %2: as read").arg(tag, unit)
                                 : tr("Speed of %1, %2: as before").arg(tag, unit);
    field.label->setText(withoutLetter(words));
    field.field->setAccessibleName(words);
}

base::Result<std::vector<pump_room::ReadSpeed>> SpeedFields::read() {
    std::vector<pump_room::ReadSpeed> speeds;
    for (const Field& field : m_fields) {
        const QString typed = field.field->text().trimmed();
        if (typed.isEmpty() || (!field.isConfirmed && field.field->text() == field.before)) {
            continue;
        }
        auto speed = text::parseMeasured<quantity::RotationalSpeed>(typed, kSpeedUnit);
        auto fault = speed ? fields::faultOfSign(*speed, FieldSign::Positive) : std::optional(speed.fault());
        if (fault) {
            field.field->setFocus(Qt::OtherFocusReason);
            field.field->selectAll();
            return *fault;
        }
        speeds.push_back({field.pump, std::move(speed).value()});
    }
    return speeds;
}

bool SpeedFields::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress) {
        return QWidget::eventFilter(watched, event);
    }
    const int key = static_cast<QKeyEvent*>(event)->key();
    const auto field = std::find_if(m_fields.begin(), m_fields.end(),
                                    [watched](const Field& one) { return one.field == watched; });
    if (field == m_fields.end() || (key != Qt::Key_Return && key != Qt::Key_Enter)) {
        return QWidget::eventFilter(watched, event);
    }
    field->isConfirmed = !field->field->text().trimmed().isEmpty();
    label(*field);
    if (const auto next = std::next(field); next != m_fields.end()) {
        next->field->setFocus(Qt::OtherFocusReason);
        next->field->selectAll();
    } else {
        emit done();
    }
    return true;
}

}  // namespace ww::ui
