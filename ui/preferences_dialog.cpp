#include "ui/preferences_dialog.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <algorithm>

#include "ui/language.h"
#include "ui/window_look.h"

namespace ww::ui {
namespace {

constexpr int kPreferencesWidth = 400;

}  // namespace

PreferencesDialog::PreferencesDialog(Preferences& preferences, QWidget* parent)
    : OrderedDialog(parent),
      m_preferences(preferences),
      m_display(new QuietCombo(this)),
      m_textSize(new QuietCombo(this)),
      m_language(new QuietCombo(this)),
      m_large(new QCheckBox(tr("Use &large targets"), this)) {
    setWindowTitle(tr("Preferences"));
    for (const auto display :
         {theme::Display::Office, theme::Display::Daylight, theme::Display::PlantRoomDark}) {
        m_display->addItem(displayName(display), static_cast<int>(display));
    }
    for (int points = Preferences::kLeastPoints; points <= Preferences::kMostPoints; ++points) {
        m_textSize->addItem(tr("%1 %").arg(points * 100 / Preferences::kLeastPoints), points);
    }
    m_language->addItem(tr("As the system"), QString());
    for (const Language& language : languages()) {
        m_language->addItem(language.name, language.code);
    }
    m_display->setAccessibleName(tr("Display"));
    m_language->setAccessibleName(tr("Language"));
    m_textSize->setAccessibleName(tr("Text size"));
    auto* form = new QFormLayout;
    form->addRow(tr("&Display"), m_display);
    form->addRow(tr("&Text size"), m_textSize);
    form->addRow(tr("Lan&guage"), m_language);
    form->addRow(m_large);
    auto* note =
        new QLabel(tr("Units, tolerances and the route are facts of the job and stay as they are."), this);
    note->setWordWrap(true);
    form->addRow(note);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close, this);
    auto* reset = buttons->addButton(tr("Reset Settings"), QDialogButtonBox::ResetRole);
    reset->setAccessibleDescription(
        tr("Display, text size, language, targets, window and the list of recent files "
           "become as they were at first"));
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    connect(reset, &QPushButton::clicked, this, [this] {
        m_preferences.reset();
        refresh();
        tellChanged();
        emit languageChanged();
    });
    connect(m_display, &QComboBox::activated, this, [this] {
        m_preferences.setDisplay(static_cast<theme::Display>(m_display->currentData().toInt()));
        tellChanged();
    });
    connect(m_textSize, &QComboBox::activated, this, [this] {
        m_preferences.setTextPoints(m_textSize->currentData().toDouble());
        tellChanged();
    });
    connect(m_language, &QComboBox::activated, this, [this] {
        m_preferences.setLanguage(m_language->currentData().toString());
        emit languageChanged();
    });
    connect(m_large, &QCheckBox::clicked, this, [this](bool isLarge) {
        m_preferences.setLargeTargets(isLarge);
        tellChanged();
    });
    layOut(form, buttons);
    refresh();
    resizeToWords(kPreferencesWidth);
}

void PreferencesDialog::tellChanged() {
    emit changed();
    resizeToWords(kPreferencesWidth);
}

void PreferencesDialog::refresh() {
    m_display->setCurrentIndex(m_display->findData(static_cast<int>(m_preferences.display())));
    m_textSize->setCurrentIndex(m_textSize->findData(qRound(m_preferences.textPoints())));
    m_language->setCurrentIndex(std::max(0, m_language->findData(m_preferences.language())));
    m_large->setChecked(m_preferences.hasLargeTargets());
}

}  // namespace ww::ui
