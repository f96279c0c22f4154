#include "ui/preferences.h"

#include <QApplication>
#include <QFileInfo>
#include <QFont>
#include <algorithm>
#include <cmath>

namespace ww::ui {
namespace {

const QString kDisplay = QStringLiteral("view/display");
const QString kLanguage = QStringLiteral("view/language");
const QString kTextPoints = QStringLiteral("view/text_points");
const QString kLargeTargets = QStringLiteral("view/large_targets");
const QString kRecent = QStringLiteral("files/recent");
const QString kUnclosed = QStringLiteral("files/unclosed");
const QString kGeometry = QStringLiteral("window/geometry");
const QString kDesk = QStringLiteral("desk");
const QString kTyped = QStringLiteral("typed");
const QString kOrder = QStringLiteral("working_order");
const QString kAdvised = QStringLiteral("advised");
const QString kByHand = QStringLiteral("by_hand");
const QString kReadingTyped = QStringLiteral("reading");
const QString kSettingTyped = QStringLiteral("setting");
constexpr QChar kBetweenParts = ' ';

/// The settings' key of what is remembered of one workbook.
QString deskKey(const base::Id& workbook, const QString& what) {
    return kDesk + '/' + QString::fromStdString(workbook.text()) + '/' + what;
}

/// The settings' key of a column of ours in one job.
QString matchKey(const base::Id& job, const std::string& file, std::string_view column) {
    return QStringLiteral("import/") + QString::fromStdString(job.text()) + '/' +
           QString::fromStdString(file) + '/' +
           QString::fromUtf8(column.data(), static_cast<int>(column.size()));
}

}  // namespace

Preferences::Preferences()
    : m_settings(QStringLiteral("Waterwright"), QStringLiteral("Waterwright")),
      m_desktopPoints(std::round(QApplication::font().pointSizeF())) {}
Preferences::Preferences(const QString& file, double desktopPoints)
    : m_settings(file, QSettings::IniFormat), m_desktopPoints(desktopPoints) {}

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
    return std::clamp(m_settings.value(kTextPoints, m_desktopPoints).toDouble(), double(kLeastPoints),
                      double(kMostPoints));
}

void Preferences::setTextPoints(double points) {
    m_settings.setValue(kTextPoints, std::clamp(points, double(kLeastPoints), double(kMostPoints)));
}

void Preferences::resetTextPoints() {
    m_settings.remove(kTextPoints);
}

bool Preferences::hasLargeTargets() const {
    return m_settings.value(kLargeTargets, false).toBool();
}

void Preferences::setLargeTargets(bool isLarge) {
    m_settings.setValue(kLargeTargets, isLarge);
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

QStringList Preferences::unclosedFiles() const {
    return m_settings.value(kUnclosed).toStringList();
}

void Preferences::rememberOpened(const QString& file) {
    // Another program of this desk may have written meanwhile.
    m_settings.sync();
    QStringList files = unclosedFiles();
    const QString path = QFileInfo(file).absoluteFilePath();
    if (!files.contains(path)) {
        setUnclosed(files << path);
    }
}

void Preferences::rememberClosed(const QString& file) {
    m_settings.sync();
    QStringList files = unclosedFiles();
    if (files.removeAll(QFileInfo(file).absoluteFilePath()) > 0) {
        setUnclosed(files);
    }
}

void Preferences::setUnclosed(const QStringList& files) {
    m_settings.setValue(kUnclosed, files);
    m_settings.sync();
}

void Preferences::reset() {
    for (const QString& key : {kDisplay, kTextPoints, kLanguage, kLargeTargets, kRecent, kGeometry}) {
        m_settings.remove(key);
    }
    for (const QString& key : m_settings.allKeys()) {
        // What was typed and not entered is no setting, nor is the order of work that is under way.
        if (key.startsWith(kDesk + '/') && !key.endsWith('/' + kTyped) && !key.endsWith('/' + kOrder)) {
            m_settings.remove(key);
        }
    }
}

void Preferences::recallMatch(const base::Id& job, const exchange::SourceTable& table,
                              exchange::TableMapping& mapping) const {
    const auto columns = exchange::columnsOfTable(mapping.file);
    if (mapping.headRow >= table.text.rows.size()) {
        return;
    }
    const auto& headings = table.text.rows[mapping.headRow].cells;
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const QStringList kept =
            m_settings.value(matchKey(job, mapping.file, columns[i].name)).toStringList();
        const auto found = kept.size() == 2 && !kept[0].isEmpty()
                               ? std::find(headings.begin(), headings.end(), kept[0].toStdString())
                               : headings.end();
        if (found != headings.end()) {
            mapping.columns[i].source = static_cast<std::size_t>(found - headings.begin());
            const auto said = exchange::unitInHeading(*found, columns[i]);
            mapping.columns[i].unit =
                said || !columns[i].dimension
                    ? said
                    : exchange::unitFor(kept[1].toStdString(), *columns[i].dimension, columns[i].name);
        }
    }
}

void Preferences::rememberMatch(const base::Id& job, const exchange::SourceTable& table,
                                const exchange::TableMapping& mapping) {
    const auto columns = exchange::columnsOfTable(mapping.file);
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const exchange::ColumnMatch& match = mapping.columns[i];
        const QString key = matchKey(job, mapping.file, columns[i].name);
        if (!match.source) {
            m_settings.remove(key);
            continue;
        }
        const std::string unit = match.unit ? std::string(quantity::symbol(*match.unit)) : std::string();
        const std::string& heading = table.text.rows[mapping.headRow].cells[*match.source];
        m_settings.setValue(key, QStringList{QString::fromStdString(heading), QString::fromStdString(unit)});
    }
}

std::optional<base::Id> Preferences::personIn(const base::Id& workbook) const {
    return base::Id::fromText(m_settings.value(deskKey(workbook, "person")).toString().toStdString());
}

void Preferences::rememberPerson(const base::Id& workbook, const base::Id& person) {
    m_settings.setValue(deskKey(workbook, "person"), QString::fromStdString(person.text()));
}

std::optional<int> Preferences::placeIn(const base::Id& workbook) const {
    const QVariant place = m_settings.value(deskKey(workbook, "place"));
    return place.isValid() ? std::optional(place.toInt()) : std::nullopt;
}

void Preferences::rememberPlace(const base::Id& workbook, int place) {
    m_settings.setValue(deskKey(workbook, "place"), place);
}

std::vector<TypedDraft> Preferences::draftsIn(const base::Id& workbook) const {
    std::vector<TypedDraft> drafts;
    for (const QString& kept : m_settings.value(deskKey(workbook, kTyped)).toStringList()) {
        const auto part = [&](int i) { return kept.section(kBetweenParts, i, i); };
        const auto round = base::Id::fromText(part(0).toStdString());
        const auto branch = base::Id::fromText(part(1).toStdString());
        // The text comes last and may hold anything.
        const QString text = kept.section(kBetweenParts, 3);
        if (round && branch && !text.isEmpty()) {
            const auto field =
                part(2) == kSettingTyped ? TypedDraft::Field::Setting : TypedDraft::Field::Reading;
            drafts.push_back({*round, *branch, field, text});
        }
    }
    return drafts;
}

void Preferences::keepDrafts(const base::Id& workbook, const std::vector<TypedDraft>& drafts) {
    QStringList kept;
    for (const TypedDraft& draft : drafts) {
        const bool isSetting = draft.field == TypedDraft::Field::Setting;
        kept << QStringList{QString::fromStdString(draft.round.text()),
                            QString::fromStdString(draft.branch.text()),
                            isSetting ? kSettingTyped : kReadingTyped, draft.text}
                    .join(kBetweenParts);
    }
    const QString key = deskKey(workbook, kTyped);
    kept.isEmpty() ? m_settings.remove(key) : m_settings.setValue(key, kept);
    m_settings.sync();
}

std::optional<OrderOfRound> Preferences::orderIn(const base::Id& workbook) const {
    // The round, how the order came about, then the valves.
    constexpr qsizetype kBefore = 3;
    const QStringList kept = m_settings.value(deskKey(workbook, kOrder)).toStringList();
    const auto round =
        kept.size() > kBefore ? base::Id::fromText(kept[0].toStdString()) : std::optional<base::Id>();
    if (!round) {
        return std::nullopt;
    }
    OrderOfRound order{*round, {}, kept[1] == kAdvised, kept[2] == kByHand};
    for (qsizetype i = kBefore; i < kept.size(); ++i) {
        const auto branch = base::Id::fromText(kept[i].toStdString());
        if (!branch) {
            return std::nullopt;
        }
        order.branches.push_back(*branch);
    }
    return order;
}

void Preferences::keepOrder(const base::Id& workbook, const OrderOfRound& order) {
    const auto wordIf = [](bool is, const QString& word) { return is ? word : QStringLiteral("-"); };
    QStringList kept{QString::fromStdString(order.round.text()), wordIf(order.isAdvised, kAdvised),
                     wordIf(order.isChanged, kByHand)};
    for (const base::Id& branch : order.branches) {
        kept << QString::fromStdString(branch.text());
    }
    m_settings.setValue(deskKey(workbook, kOrder), kept);
    m_settings.sync();
}

QByteArray Preferences::windowGeometry() const {
    return m_settings.value(kGeometry).toByteArray();
}

void Preferences::setWindowGeometry(const QByteArray& geometry) {
    m_settings.setValue(kGeometry, geometry);
}

}  // namespace ww::ui
