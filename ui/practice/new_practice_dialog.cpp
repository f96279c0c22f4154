#include "ui/practice/new_practice_dialog.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QVBoxLayout>

#include "ui/text/words.h"
#include "ui/widgets/quiet_combo.h"

namespace ww::ui {

namespace {

struct DifficultyWords {
    practice::Difficulty difficulty;
    QString name;
    QString about;
};

QList<DifficultyWords> difficulties() {
    using practice::Difficulty;
    return {
        {Difficulty::First, QObject::tr("First: 3 terminals"),
         QObject::tr("One ladder of three terminals. Instruments scatter; nothing else is wrong.")},
        {Difficulty::Steady, QObject::tr("Steady: 12 terminals"),
         QObject::tr("Three branches of four terminals. Nothing is wrong but the design's losses.")},
        {Difficulty::Faulty, QObject::tr("Faulty: 12 terminals"),
         QObject::tr(
             "As Steady, with errors in the valve tables, a control valve that does not open and a slip "
             "of reading.")},
        {Difficulty::Large, QObject::tr("Large: 120 terminals"),
         QObject::tr(
             "Six risers of five branches of four terminals. Nothing is wrong but the design's losses.")},
        {Difficulty::LargeFaulty, QObject::tr("Large and faulty: 120 terminals"),
         QObject::tr(
             "As Large, with air, a clogging strainer, a stuck control valve, a misread handle and slips "
             "of reading.")},
    };
}

}  // namespace

QString nameOf(practice::Difficulty difficulty) {
    for (const DifficultyWords& words : difficulties()) {
        if (words.difficulty == difficulty) {
            return words.name.section(':', 0, 0).trimmed();
        }
    }
    return {};
}

NewPracticeDialog::NewPracticeDialog(std::uint64_t seed, QWidget* parent)
    : OrderedDialog(parent),
      m_name(new HintedField(this)),
      m_difficulty(new QuietCombo(this)),
      m_about(new WholeLabel(2, this)),
      m_seed(new QLineEdit(QString::number(seed), this)),
      m_fault(new WholeLabel(1, this)) {
    setWindowTitle(tr("New Practice Job"));
    for (const DifficultyWords& words : difficulties()) {
        m_difficulty->addItem(words.name, static_cast<int>(words.difficulty));
    }
    m_difficulty->setCurrentIndex(1);
    m_name->setAccessibleName(tr("Name of the job"));
    m_difficulty->setAccessibleName(tr("Difficulty"));
    m_seed->setAccessibleName(tr("Building number"));
    m_fault->setAccessibleName(tr("What is wrong"));
    auto* form = new QFormLayout;
    form->addRow(tr("&Name"), m_name);
    form->addRow(tr("&Difficulty"), m_difficulty);
    form->addRow(QString(), m_about);
    form->addRow(tr("&Building number"), m_seed);
    form->addRow(QString(), m_fault);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel, this);
    m_make = buttons->addButton(tr("&Make Job…"), QDialogButtonBox::AcceptRole);
    m_make->setDefault(true);
    auto* head =
        new QLabel(tr("A simulated building answers every reading. It is no real plant: nothing of it "
                      "may be reported as a measurement."),
                   this);
    head->setWordWrap(true);
    auto* content = new QVBoxLayout;
    content->addWidget(head);
    content->addLayout(form);
    layOut(content, buttons);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(m_difficulty, &QComboBox::currentIndexChanged, this, &NewPracticeDialog::refresh);
    connect(m_seed, &QLineEdit::textChanged, this, &NewPracticeDialog::refresh);
    refresh();
    resizeToWords(520);
}

practice::PracticeKey NewPracticeDialog::key() const {
    practice::PracticeKey key;
    key.difficulty = static_cast<practice::Difficulty>(m_difficulty->currentData().toInt());
    key.seed = practice::practiceSeed(m_seed->text().trimmed().toStdString()).value();
    return key;
}

void NewPracticeDialog::refresh() {
    m_about->setWords(difficulties().at(m_difficulty->currentIndex()).about);
    const auto seed = practice::practiceSeed(m_seed->text().trimmed().toStdString());
    m_fault->setWords(seed ? QString() : text::sentence(seed.fault()));
    // What the job is called where no name is typed.
    const QString number = m_seed->text().trimmed();
    m_name->setHint(
        seed ? text::term(base::term("Practice building {1}")).replace(QStringLiteral("{1}"), number)
             : QString());
    m_make->setEnabled(seed.ok());
}

}  // namespace ww::ui
