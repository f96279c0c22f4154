#include "ui/preferences.h"

#include <QFileInfo>
#include <algorithm>

namespace ww::ui {
namespace {

const QString kDisplay = QStringLiteral("view/display");
const QString kLanguage = QStringLiteral("view/language");
const QString kTextPoints = QStringLiteral("view/text_points");
const QString kRecent = QStringLiteral("files/recent");
const QString kGeometry = QStringLiteral("window/geometry");

}  // namespace

Preferences::Preferences() : m_settings(QStringLiteral("Waterwright"), QStringLiteral("Waterwright")) {}
Preferences::Preferences(const QString& file) : m_settings(file, QSettings::IniFormat) {}

theme::Display Preferences::display() const {
    return theme::displayNamed(m_settings.value(kDisplay).toString());
}

void Preferences::setDisplay(theme::Display display) {
    m_settings.setValue(kDisplay, theme::name(display));
}

QString Preferences::language() const {
    return m_settings.value(kLanguage).toString();
}

void Preferences::setLanguage(const QString& code) {
    m_settings.setValue(kLanguage, code);
}

double Preferences::textPoints() const {
    return std::clamp(m_settings.value(kTextPoints, 10.0).toDouble(), 10.0, 20.0);
}

void Preferences::setTextPoints(double points) {
    m_settings.setValue(kTextPoints, std::clamp(points, 10.0, 20.0));
}

QStringList Preferences::recentFiles() const {
    return m_settings.value(kRecent).toStringList();
}

void Preferences::rememberFile(const QString& file) {
    QStringList files = recentFiles();
    const QString path = QFileInfo(file).absoluteFilePath();
    files.removeAll(path);
    files.prepend(path);
    m_settings.setValue(kRecent, files.mid(0, kRecentCount));
}

void Preferences::forgetFile(const QString& file) {
    QStringList files = recentFiles();
    files.removeAll(QFileInfo(file).absoluteFilePath());
    m_settings.setValue(kRecent, files);
}

QByteArray Preferences::windowGeometry() const {
    return m_settings.value(kGeometry).toByteArray();
}

void Preferences::setWindowGeometry(const QByteArray& geometry) {
    m_settings.setValue(kGeometry, geometry);
}

}  // namespace ww::ui
