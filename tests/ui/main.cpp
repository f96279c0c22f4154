// Runs the tests of ui: no screen, no settings and no locale of the machine.
#include <gtest/gtest.h>

#include <QApplication>
#include <QHashSeed>
#include <QLocale>
#include <QSettings>
#include <QStandardPaths>
#include <QTemporaryDir>

#include "ui/language.h"

int main(int argc, char** argv) {
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) {
        qputenv("QT_QPA_PLATFORM", "offscreen");
    }
    QHashSeed::setDeterministicGlobalSeed();
    QStandardPaths::setTestModeEnabled(true);
    const QTemporaryDir settings;
    QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope, settings.path());
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, settings.path());
    QLocale::setDefault(QLocale::c());
    testing::InitGoogleTest(&argc, argv);
    QApplication application(argc, argv);
    ww::ui::useLanguage("en", application);
    return RUN_ALL_TESTS();
}
