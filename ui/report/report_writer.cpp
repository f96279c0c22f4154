#include "ui/report/report_writer.h"

#include <QBuffer>
#include <QCryptographicHash>
#include <QHashSeed>
#include <QPageLayout>
#include <QPainter>
#include <QPdfWriter>
#include <QSaveFile>

#include "ui/report/report_pages.h"

namespace ww::ui::report {
namespace {

/// Qt orders the objects of a file by hash tables; their seed must not differ from run to run.
class SteadyHashes {
  public:
    SteadyHashes() : m_wasSteady(QHashSeed::globalSeed() == 0) { QHashSeed::setDeterministicGlobalSeed(); }
    ~SteadyHashes() {
        if (!m_wasSteady) {
            QHashSeed::resetRandomGlobalSeed();
        }
    }
    SteadyHashes(const SteadyHashes&) = delete;
    SteadyHashes& operator=(const SteadyHashes&) = delete;

  private:
    bool m_wasSteady;
};

QPageLayout pageLayout(const ReportPages& pages, std::size_t page) {
    return QPageLayout(QPageSize(pages.isLetter ? QPageSize::Letter : QPageSize::A4),
                       pages.pages[page].isLandscape ? QPageLayout::Landscape : QPageLayout::Portrait,
                       QMarginsF());
}

/// Puts `text` over what stands between `before` and `after`, everywhere; the length stays, so that the
/// offsets inside the file stay right.
void overwrite(QByteArray& bytes, const QByteArray& before, const QByteArray& after, const QByteArray& text) {
    for (qsizetype at = bytes.indexOf(before); at >= 0; at = bytes.indexOf(before, at + 1)) {
        const qsizetype from = at + before.size();
        const qsizetype to = bytes.indexOf(after, from);
        if (to < 0 || to - from > 80) {
            continue;
        }
        bytes.replace(from, to - from, text.leftJustified(to - from, ' ', true));
    }
}

/// The clock and the random ids that Qt writes give way to the report's own date and identity.
void makeSteady(QByteArray& bytes, const ww::report::Report& report) {
    const QByteArray iso = QByteArray::fromStdString(
        base::Instant{report.printed.seconds, std::nullopt}.text());  // 2026-03-04T14:02:07
    QByteArray compact = iso;
    compact.replace("-", "").replace(":", "").replace("T", "");
    for (const char* key : {"/CreationDate (D:", "/ModDate (D:"}) {
        overwrite(bytes, key, ")", compact + "+00'00'");
    }
    for (const char* key : {"xmp:CreateDate=\"", "xmp:ModifyDate=\"", "xmp:MetadataDate=\""}) {
        overwrite(bytes, key, "\"", iso + "+00:00");
    }
    const QByteArray identity =
        QCryptographicHash::hash(
            QByteArray::fromStdString(report.workbookId + report.digest + report.jobName),
            QCryptographicHash::Sha256)
            .toHex();
    const QByteArray uuid = identity.left(8) + '-' + identity.mid(8, 4) + '-' + identity.mid(12, 4) + '-' +
                            identity.mid(16, 4) + '-' + identity.mid(20, 12);
    overwrite(bytes, "uuid:", "\"", uuid);
    overwrite(bytes, "/ID [ <", ">", identity.left(32));
    overwrite(bytes, "> <", "> ]", identity.left(32));
}

}  // namespace

QByteArray pdf(const ww::report::Report& report, const project::Project& project) {
    const SteadyHashes steady;
    const ReportPages pages = layOut(report, project);
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&buffer);
        writer.setPdfVersion(QPagedPaintDevice::PdfVersion_A1b);
        writer.setResolution(kDotsPerInch);
        writer.setTitle(QString::fromStdString(report.jobName));
        writer.setCreator(QStringLiteral("Waterwright"));
        writer.setPageLayout(pageLayout(pages, 0));
        QPainter painter(&writer);
        for (std::size_t page = 0; page < pages.pages.size(); ++page) {
            if (page > 0) {
                writer.setPageLayout(pageLayout(pages, page));
                writer.newPage();
            }
            renderPage(painter, pages, page, QRectF(QPointF(0, 0), pages.size(page)));
        }
    }
    buffer.close();
    makeSteady(bytes, report);
    return bytes;
}

base::Outcome writePdf(const ww::report::Report& report, const project::Project& project,
                       const std::filesystem::path& out) {
    const auto failed = [&out](const QString& why) {
        return base::Fault{&kReportNotWritten, {}, {out.string(), why.toStdString()}};
    };
    QSaveFile file(QString::fromStdString(out.string()));
    if (!file.open(QIODevice::WriteOnly)) {
        return failed(file.errorString());
    }
    const QByteArray bytes = pdf(report, project);
    if (file.write(bytes) != bytes.size() || !file.commit()) {
        return failed(file.errorString());
    }
    return base::Done{};
}

}  // namespace ww::ui::report
