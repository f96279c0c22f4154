#include "ui/run_desktop.h"

#include <QApplication>
#include <QFileInfo>
#include <QFontDatabase>
#include <QIcon>
#include <QProcessEnvironment>
#include <QSysInfo>
#include <future>
#include <iostream>
#include <utility>

#include "core/base/account.h"
#include "core/base/expects.h"
#include "core/base/term.h"
#include "core/base/version.h"
#include "ui/language.h"
#include "ui/main_window.h"
#include "ui/text/words.h"

namespace ww::ui {
namespace {

/// That of the commands for bad usage.
constexpr int kBadUsage = 2;

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

/// An empty window, shown.
MainWindow& newWindow(const Desk& desk, Preferences& preferences) {
    auto* window = new MainWindow(desk, preferences);
    window->setAttribute(Qt::WA_DeleteOnClose);
    QObject::connect(window, &MainWindow::anotherWindowWanted, window,
                     [&preferences, desk](const QString& other) {
                         Opening opening = beginOpening(desk, other);
                         newWindow(desk, preferences).openFile(std::move(opening));
                     });
    window->show();
    return *window;
}

}  // namespace

void openFirstWindows(const Desk& desk, Preferences& preferences, const QStringList& files) {
    const QStringList wanted = files.isEmpty() ? preferences.unclosedFiles() : files;
    // What fonts there are is read beside the screen; the first text that is measured waits for it.
    const std::shared_future<void> fonts =
        std::async(std::launch::async, [] { static_cast<void>(QFontDatabase::families()); });
    MainWindow* window = nullptr;
    for (const QString& file : wanted) {
        Opening opening = beginOpeningAfter(fonts, desk, file);
        // A window that could not open what was left open takes the next.
        if (window == nullptr || !files.isEmpty() || window->bridge().isOpen()) {
            window = &newWindow(desk, preferences);
        }
        files.isEmpty() ? window->reopenFile(std::move(opening)) : window->openFile(std::move(opening));
    }
    if (window == nullptr) {
        newWindow(desk, preferences);
    }
}

int runDesktop(int argc, char** argv) {
    Application application(argc, argv);
    // Qt has taken what is its own.
    const QStringList files = QApplication::arguments().mid(1);
    for (const QString& file : files) {
        if (file.startsWith(QLatin1Char('-')) && !QFileInfo::exists(file)) {
            std::cerr << "the desktop has no option \"" << file.toStdString()
                      << "\"; see waterwright --help\n";
            return kBadUsage;
        }
    }
    QApplication::setApplicationName(QStringLiteral("waterwright"));
    QApplication::setApplicationDisplayName(QStringLiteral("Waterwright"));
    QApplication::setApplicationVersion(QString::fromStdString(std::string(base::version())));
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
    openFirstWindows(desk, preferences, files);
    return QApplication::exec();
}

}  // namespace ww::ui
