#include "ui/widgets/job_strip.h"

#include <QHBoxLayout>
#include <QPainter>
#include <QStyle>

#include "ui/text/written_way.h"

namespace ww::ui {

/// A bar that fills as valves are read.
class JobStrip::Progress : public QWidget {
  public:
    explicit Progress(QWidget* parent) : QWidget(parent) { setFixedSize(90, 12); }
    void set(int done, int all) {
        m_done = done;
        m_all = all;
        update();
    }
    void setTokens(const theme::Tokens& tokens) {
        m_tokens = tokens;
        update();
    }

  protected:
    void paintEvent(QPaintEvent*) override {
        if (m_all <= 0) {
            return;
        }
        QPainter painter(this);
        const QRect frame = rect().adjusted(0, 0, -1, -1);
        painter.setPen(m_tokens.rule);
        painter.setBrush(m_tokens.paper);
        painter.drawRect(frame);
        const int width = static_cast<int>((frame.width() - 3) * std::min(1.0, double(m_done) / m_all));
        painter.fillRect(QRect(frame.left() + 2, frame.top() + 2, width, frame.height() - 3), m_tokens.ink);
    }

  private:
    int m_done = 0;
    int m_all = 0;
    theme::Tokens m_tokens;
};

namespace {

/// As many whole words of a text as fit before three dots; letters where not even one does.
QString wholeWords(const QFontMetrics& metrics, const QString& text, int width) {
    for (qsizetype end = text.lastIndexOf(' '); end > 0; end = text.lastIndexOf(' ', end - 1)) {
        const QString shown = text.left(end) + QChar(0x2026);
        if (metrics.horizontalAdvance(shown) <= width) {
            return shown;
        }
    }
    return metrics.elidedText(text, Qt::ElideRight, width);
}

}  // namespace

/// A label that gives up its end where the strip is too short for all; the whole text is its tooltip.
class JobStrip::Yielding : public QLabel {
  public:
    using QLabel::QLabel;
    QSize minimumSizeHint() const override { return {40, QLabel::minimumSizeHint().height()}; }

  protected:
    void paintEvent(QPaintEvent* event) override {
        if (property("inverse").toBool() || QLabel::sizeHint().width() <= width()) {
            QLabel::paintEvent(event);
            return;
        }
        QPainter painter(this);
        painter.setPen(palette().color(QPalette::WindowText));
        painter.setLayoutDirection(Qt::LayoutDirectionAuto);
        const int flags = int(Qt::AlignVCenter | Qt::AlignLeft);
        painter.drawText(rect(), ui::text::writtenFlags(layoutDirection(), flags, text()),
                         wholeWords(fontMetrics(), text(), width()));
    }
};

JobStrip::JobStrip(QWidget* parent)
    : QWidget(parent),
      m_menu(new QPushButton(this)),
      m_job(new Yielding(this)),
      m_round(new QLabel(this)),
      m_read(new QLabel(this)),
      m_progress(new Progress(this)),
      m_person(new QLabel(this)),
      m_meter(new QLabel(this)),
      m_stored(new Yielding(this)),
      m_conflicts(new QPushButton(this)),
      m_elsewhere(new QPushButton(tr("Save a Copy Elsewhere…"), this)),
      m_display(new QLabel(this)) {
    setObjectName(QStringLiteral("job_strip"));
    setAccessibleName(tr("Job strip"));
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(12, 0, 12, 0);
    layout->setSpacing(20);
    const struct {
        QLabel* label;
        QString name;
    } kLabels[] = {{m_job, tr("Job")},        {m_round, tr("Round")}, {m_read, tr("Progress")},
                   {m_person, tr("Person")},  {m_meter, tr("Meter")}, {m_stored, tr("Stored")},
                   {m_display, tr("Display")}};
    for (const auto& [label, name] : kLabels) {
        label->setAccessibleName(name);
        label->setTextFormat(Qt::PlainText);
        label->setSizePolicy(QSizePolicy::Maximum, QSizePolicy::Preferred);
    }
    m_job->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Preferred);
    m_conflicts->setObjectName(QStringLiteral("conflict_badge"));
    m_conflicts->setAccessibleName(tr("Conflicts to decide"));
    m_conflicts->hide();
    connect(m_conflicts, &QPushButton::clicked, this, &JobStrip::conflictsWanted);
    m_elsewhere->setObjectName(QStringLiteral("save_elsewhere"));
    m_elsewhere->setAccessibleDescription(
        tr("Writes the whole workbook to another disk, with what could not be stored, and goes on there"));
    m_elsewhere->hide();
    connect(m_elsewhere, &QPushButton::clicked, this, &JobStrip::copyElsewhereWanted);
    m_menu->setObjectName(QStringLiteral("places_button"));
    m_menu->setAccessibleName(tr("Places and commands"));
    m_menu->hide();
    m_progress->setAccessibleName(tr("Valves read"));
    for (QWidget* widget : std::initializer_list<QWidget*>{m_menu, m_job, m_round, m_read, m_progress}) {
        layout->addWidget(widget);
    }
    layout->addStretch(1);
    for (QWidget* widget :
         std::initializer_list<QWidget*>{m_conflicts, m_person, m_meter, m_stored, m_elsewhere, m_display}) {
        layout->addWidget(widget);
    }
}

void JobStrip::show(const StripText& text) {
    m_job->setText(text.job);
    m_round->setText(text.round);
    m_read->setText(text.read);
    m_read->setToolTip(text.wholeRead);
    m_read->setAccessibleDescription(text.wholeRead);
    m_progress->set(text.readCount, text.valveCount);
    m_progress->setVisible(text.valveCount > 0 && text.hasBar);
    m_person->setText(text.person);
    m_person->setToolTip(text.wholePerson);
    m_person->setAccessibleDescription(text.wholePerson);
    m_meter->setText(text.meter);
    m_stored->setText(text.stored);
    m_stored->setToolTip(text.stored);
    m_job->setToolTip(text.job);
    m_display->setText(text.display);
    for (QLabel* label : {m_round, m_read, m_person, m_meter, m_stored, m_display}) {
        label->setVisible(!label->text().isEmpty());
    }
    m_conflicts->setText(tr("%n to decide", nullptr, text.conflictCount));
    m_conflicts->setVisible(text.conflictCount > 0);
    m_elsewhere->setVisible(text.isNotStored);
    if (m_stored->property("inverse").toBool() != text.isNotStored) {
        m_stored->setProperty("inverse", text.isNotStored);
        m_stored->style()->unpolish(m_stored);
        m_stored->style()->polish(m_stored);
    }
}

void JobStrip::setMenu(QMenu* menu, const QString& title) {
    if (m_menu->menu() != menu) {
        m_menu->setMenu(menu);
    }
    // The three bars of a list that is folded away.
    m_menu->setText(QString(QChar(0x2261)) + QStringLiteral("  ") + title);
    m_menu->setVisible(menu != nullptr);
}

void JobStrip::setTokens(const theme::Tokens& tokens, const theme::Metrics& metrics) {
    m_tokens = tokens;
    m_progress->setTokens(tokens);
    setFixedHeight(metrics.stripHeight);
    layout()->setSpacing(metrics.hasLargeTargets ? 12 : 20);
    QFont font = this->font();
    // As in strong cells: each weight of letters is loaded by itself.
    font.setWeight(QFont::DemiBold);
    m_job->setFont(font);
    update();
}

void JobStrip::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), m_tokens.panel);
    painter.setPen(m_tokens.isDaylight ? m_tokens.ink : m_tokens.rule);
    painter.drawLine(0, height() - 1, width(), height() - 1);
}

}  // namespace ww::ui
