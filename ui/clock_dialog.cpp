#include "ui/clock_dialog.h"

#include <QDateTime>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QRegularExpression>
#include <QVBoxLayout>
#include <algorithm>
#include <cstdlib>

#include "core/project/clock_offset.h"

namespace ww::ui {
namespace {

constexpr int kClockDialogWidth = 460;

/// As people here write it: local time, to the minute.
QString localText(const base::Instant& time) {
    return QDateTime::fromSecsSinceEpoch(time.seconds).toString(QStringLiteral("yyyy-MM-dd HH:mm"));
}

/// A time without a zone is that of this place.
base::Instant withZone(base::Instant time) {
    if (!time.zoneMinutes) {
        const QDateTime wall = QDateTime::fromSecsSinceEpoch(time.seconds, Qt::UTC);
        time.seconds = QDateTime(wall.date(), wall.time(), Qt::LocalTime).toSecsSinceEpoch();
    }
    time.zoneMinutes = 0;
    return time;
}

}  // namespace

ClockDialog::ClockDialog(const workbook::Workbook& workbook, QWidget* parent)
    : OrderedDialog(parent),
      m_workbook(workbook),
      m_time(new QLineEdit(this)),
      m_result(new QLabel(this)),
      m_set(new QPushButton(tr("Set Offset"), this)) {
    setWindowTitle(tr("Set Clock Offset"));
    auto* said = new QLabel(
        tr("What this laptop's clock is off by is added to every time written in this job from now "
           "on, and is told in the report. Times written before stay as they are."),
        this);
    said->setWordWrap(true);
    m_result->setWordWrap(true);
    m_result->setObjectName(QStringLiteral("clock_result"));
    m_time->setAccessibleName(tr("True date and time here"));
    m_time->setText(localText(std::max(workbook.newestEntry().time, workbook.now())));
    constexpr int kMargins = 20;
    const QString moment = QStringLiteral("2026-03-02 14:05");
    m_time->setMinimumWidth(fontMetrics().horizontalAdvance(moment) + kMargins);
    auto* form = new QFormLayout;
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    form->addRow(tr("True &date and time here"), m_time);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    buttons->addButton(m_set, QDialogButtonBox::AcceptRole);
    auto* own = buttons->addButton(tr("Use Own Clock"), QDialogButtonBox::ActionRole);
    own->setAccessibleDescription(tr("For a clock that is right again: nothing is added to it any more"));
    connect(own, &QPushButton::clicked, this, [this] { m_time->setText(localText(m_workbook.ownClock())); });
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(m_time, &QLineEdit::textChanged, this, &ClockDialog::refresh);
    auto* content = new QVBoxLayout;
    content->addWidget(said);
    content->addLayout(form);
    content->addWidget(m_result);
    layOut(content, buttons);
    m_time->selectAll();
    refresh();
    resizeToWords(kClockDialogWidth);
}

base::Instant ClockDialog::stated() const {
    return typed().value_or(m_workbook.now());
}

std::optional<base::Instant> ClockDialog::typed() const {
    const QString text = m_time->text().simplified();
    const auto time = base::Instant::fromText(text.toStdString());
    // A day alone says nothing of a clock.
    if (!time || !text.contains(':')) {
        return std::nullopt;
    }
    base::Instant stated = withZone(*time);
    static const QRegularExpression kSeconds(QStringLiteral("\\d:\\d\\d:\\d\\d"));
    if (!kSeconds.match(text).hasMatch()) {
        // A watch without seconds: what this clock is past its minute is no difference.
        constexpr int kMinute_s = 60;
        stated.seconds += m_workbook.ownClock().seconds % kMinute_s;
    }
    return stated;
}

void ClockDialog::refresh() {
    const auto time = typed();
    const project::Edit edit = time ? m_workbook.settingOfClock(*time) : project::Edit{};
    m_set->setEnabled(!edit.isEmpty());
    if (!time) {
        m_result->setText(tr("Write day and time as in 2026-03-02 14:05."));
        return;
    }
    if (edit.isEmpty()) {
        m_result->setText(tr("That is what is written already; nothing is to be set."));
        return;
    }
    const std::int64_t added_s = project::added_s(std::get<project::ClockOffset>(edit.put.front()));
    if (added_s == 0) {
        m_result->setText(tr("This laptop's own clock is right; nothing is added to it any more."));
        return;
    }
    const std::int64_t minutes = std::abs(added_s) / 60;
    const QString off = tr("%1 h %2 min").arg(minutes / 60).arg(minutes % 60);
    m_result->setText(added_s > 0 ? tr("This laptop's clock is %1 behind.").arg(off)
                                  : tr("This laptop's clock is %1 ahead.").arg(off));
}

}  // namespace ww::ui
