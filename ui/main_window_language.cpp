// The menu of languages.
#include <QActionGroup>

#include "ui/language.h"
#include "ui/main_window.h"

namespace ww::ui {
namespace {

constexpr base::MessageForm kLanguageLater{
    "language_later", "windows that are open keep their words; start Waterwright again to see it in {1}"};

}  // namespace

void MainWindow::fillLanguages() {
    auto* group = new QActionGroup(this);
    const auto add = [&](const QString& code, const QString& name) {
        QAction* action = m_commands->language->addAction(name);
        action->setCheckable(true);
        action->setData(code);
        action->setChecked(m_preferences.language() == code);
        group->addAction(action);
        connect(action, &QAction::triggered, this, [this, code] {
            m_preferences.setLanguage(code);
            followLanguage();
        });
    };
    add(QString(), tr("As the &System"));
    for (const Language& language : languages()) {
        add(language.code, language.name);
    }
}

/// Marks the language that was chosen in the menu, and says when it is seen.
void MainWindow::followLanguage() {
    const QString code = m_preferences.language();
    for (QAction* action : m_commands->language->actions()) {
        action->setChecked(action->data().toString() == code);
    }
    const QString used = code.isEmpty() ? languageOf(QProcessEnvironment::systemEnvironment()) : code;
    for (const Language& language : languages()) {
        if (language.code == used) {
            emit m_bridge.messageRaised(base::Fault{&kLanguageLater, {}, {language.name.toStdString()}});
        }
    }
}

}  // namespace ww::ui
