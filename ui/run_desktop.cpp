#include "ui/run_desktop.h"

#include <QApplication>
#include <QFileInfo>
#include <QIcon>
#include <QProcessEnvironment>
#include <QSysInfo>
#include <iostream>

#include "core/base/account.h"
#include "core/base/expects.h"
#include "core/base/term.h"
#include "ui/language.h"
#include "ui/main_window.h"
#include "ui/text/words.h"

namespace ww::ui {
namespace {

/// A defect met in an event must not take the window down: everything acknowledged is on disk already.
class Application : public QApplication {
  public:
    using QApplication::QApplication;

    bool notify(QObject* receiver, QEvent* event) override {
        try {
            return QApplication::notify(receiver, event);
        } catch (const base::ContractBreach& breach) {
            std::cerr << "waterwright: " << breach.what() << '\n';
            for (QWidget* widget : topLevelWidgets()) {
                if (auto* window = qobject_cast<MainWindow*>(widget)) {
                    emit window->bridge().messageRaised(base::Fault{&kInternalDefect, {}, {breach.what()}});
                }
            }
            return false;
        }
    }
};

void openWindow(const Desk& desk, Preferences& preferences, const QString& file) {
    auto* window = new MainWindow(desk, preferences);
    window->setAttribute(Qt::WA_DeleteOnClose);
    QObject::connect(window, &MainWindow::anotherWindowWanted, window,
                     [&preferences, desk](const QString& other) { openWindow(desk, preferences, other); });
    window->show();
    if (!file.isEmpty()) {
        window->openFile(file);
    }
}

}  // namespace

int runDesktop(int argc, char** argv) {
    Application application(argc, argv);
    QApplication::setApplicationName(QStringLiteral("waterwright"));
    QApplication::setApplicationDisplayName(QStringLiteral("Waterwright"));
    QApplication::setApplicationVersion(QStringLiteral(WW_VERSION));
    const QString id = QStringLiteral("org.waterwright.Waterwright");
    QApplication::setDesktopFileName(id);
    QApplication::setWindowIcon(QIcon::fromTheme(id, QIcon(QStringLiteral(":/icons/%1.svg").arg(id))));
    base::SystemClock clock;
    base::RandomIds ids;
    Preferences preferences;
    const QString chosen = preferences.language();
    useLanguage(chosen.isEmpty() ? languageOf(QProcessEnvironment::systemEnvironment()) : chosen,
                application);
    const Desk desk{clock, ids, base::personAtTheDesk(text::term(base::term("unknown person")).toStdString()),
                    QSysInfo::machineHostName().toStdString()};
    // The session ends: what is typed but not entered is stored as well; everything else is on disk already.
    QObject::connect(&application, &QGuiApplication::commitDataRequest, &application, [] {
        for (QWidget* widget : QApplication::topLevelWidgets()) {
            if (auto* window = qobject_cast<MainWindow*>(widget)) {
                window->storeTyped();
            }
        }
    });
    const QStringList files = QApplication::arguments().mid(1);
    for (const QString& file : files) {
        openWindow(desk, preferences, file);
    }
    if (files.isEmpty()) {
        openWindow(desk, preferences, QString());
    }
    return QApplication::exec();
}

}  // namespace ww::ui
