// A language of the screen for as long as this stands; English before and after. Not for the language of the
// machine.
#pragma once

#include <QApplication>
#include <QLocale>

#include "ui/language.h"

namespace ww::support {

class Spoken {
  public:
    explicit Spoken(const QString& code) {
        ui::useLanguage(code, *qApp);
        QLocale::setDefault(QLocale(code));
    }
    ~Spoken() {
        ui::useLanguage(QStringLiteral("en"), *qApp);
        QLocale::setDefault(QLocale::c());
    }
    Spoken(const Spoken&) = delete;
    Spoken& operator=(const Spoken&) = delete;
};

}  // namespace ww::support
