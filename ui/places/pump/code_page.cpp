#include "ui/places/pump/code_page.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

#include "core/project/edit_label.h"
#include "core/report/pump_sections.h"
#include "ui/places/pump/section_page.h"
#include "ui/widgets/side_by_side.h"

namespace ww::ui {

namespace {

constexpr int kCodeFormWidth = 400;

}  // namespace

CodePage::CodePage(WorkbookBridge& bridge, QWidget* parent)
    : PumpPage(parent),
      m_bridge(bridge),
      m_fields(new JobFields(bridge, this)),
      m_form(new QuietCombo(this)),
      m_view(new SectionView(this)) {
    m_form->addItem(tr("not chosen"), static_cast<int>(project::CodeForm::NotStated));
    m_form->addItem(tr("5 % of the plate or a fixed power"),
                    static_cast<int>(project::CodeForm::PercentOrFloor));
    m_form->addItem(tr("5 % of the plate"), static_cast<int>(project::CodeForm::PercentOnly));
    m_form->setAccessibleName(tr("Form of the clause"));
    constexpr int kLettersOfForm = 18;
    m_form->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_form->setMinimumContentsLength(kLettersOfForm);
    auto* left = new QWidget(this);
    auto* form = new QFormLayout;
    form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    form->addRow(tr("&Allowed excess"), m_form);
    m_fields->add(form, JobField::CodeEdition, tr("Code and e&dition"));
    m_fields->add(form, JobField::CodeClause, tr("&Clause"));
    m_fields->add(form, JobField::CodeException, tr("E&xception claimed"));
    auto* hint = new QLabel(
        tr("Copy edition and clause from the code that is adopted where the building stands. An exception "
           "needs its number and who grants it."),
        left);
    hint->setWordWrap(true);
    auto* column = new QVBoxLayout(left);
    column->setContentsMargins(0, 0, 0, 0);
    column->addLayout(form);
    column->addWidget(hint);
    column->addStretch(1);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(8, 8, 4, 4);
    row->addWidget(new SideBySide({left, kCodeFormWidth, 0, 0},
                                  {m_view, kSectionWidth, 1, SideBySide::kAsItAsks}, this));
    connect(m_form, &QComboBox::activated, this, [this] {
        project::Job job = m_bridge.project().job();
        job.codeForm = static_cast<project::CodeForm>(m_form->currentData().toInt());
        m_fields->storeJob(job, project::label(project::labels::kCodeForm));
    });
    connect(m_fields, &JobFields::refreshed, this, &CodePage::refresh);
    refresh();
}

void CodePage::refresh() {
    m_form->setCurrentIndex(m_form->findData(static_cast<int>(m_bridge.project().job().codeForm)));
    m_form->setEnabled(!m_bridge.isReadOnly());
}

void CodePage::show(const pump_room::PumpPicture* picture) {
    if (picture == nullptr) {
        m_view->showMessage(computingMessage());
    } else {
        m_view->show(ww::report::energyCodeSection(m_bridge.project(), *picture));
    }
}

void CodePage::setTokens(const theme::Tokens& tokens) {
    m_view->setTokens(tokens);
}

}  // namespace ww::ui
