#include "ui/import/import_source.h"

#include <QCoreApplication>
#include <QFileInfo>

#include "core/exchange/spreadsheet_source.h"
#include "core/spreadsheet/read_spreadsheet.h"
#include "ui/text/words.h"

namespace ww::ui {

namespace {

/// The texts of this file.
struct ImportSourceText {
    Q_DECLARE_TR_FUNCTIONS(ImportSource)
};

base::Result<ImportSource> fromCsv(const QString& name, exchange::CsvResult result) {
    if (!result.failures.empty()) {
        return result.failures.front().fault;
    }
    exchange::SourceTable table;
    table.isThere = true;
    table.text = std::move(result.text);
    return ImportSource{name, {{name, std::move(table)}}};
}

}  // namespace

base::Fault nothingPasted(const base::Fault& why) {
    return {&kNothingPasted, why.subject, {text::translated(why).toStdString()}};
}

bool isTableFile(const QString& file) {
    return file.endsWith(QStringLiteral(".csv"), Qt::CaseInsensitive) ||
           file.endsWith(QStringLiteral(".xlsx"), Qt::CaseInsensitive) ||
           file.endsWith(QStringLiteral(".xlsm"), Qt::CaseInsensitive);
}

base::Result<ImportSource> readImportSource(const QString& file) {
    const QString name = QFileInfo(file).fileName();
    if (file.endsWith(QStringLiteral(".csv"), Qt::CaseInsensitive)) {
        return fromCsv(name, exchange::readCsv(file.toStdString()));
    }
    const auto sheets = spreadsheet::readSpreadsheet(file.toStdString());
    if (!sheets) {
        base::Fault fault = sheets.fault();
        fault.subject = name.toStdString();
        return fault;
    }
    ImportSource source{name, {}};
    for (const spreadsheet::ReadSheet& sheet : *sheets) {
        if (!sheet.rows.empty()) {
            source.sheets.push_back({QString::fromStdString(sheet.name), exchange::tableOf(sheet)});
        }
    }
    if (source.sheets.empty()) {
        return base::Fault{&kNothingToImport, name.toStdString(), {}};
    }
    return source;
}

base::Result<ImportSource> pastedSource(const QString& text) {
    if (text.trimmed().isEmpty()) {
        return nothingPasted({&kNothingToPaste, {}, {}});
    }
    const QString name = ImportSourceText::tr("the clipboard");
    auto source = fromCsv(name, exchange::parseCsv(text.toStdString(), '\t'));
    return source ? std::move(source) : nothingPasted(source.fault());
}

}  // namespace ww::ui
