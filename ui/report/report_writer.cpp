#include "ui/report/report_writer.h"

#include <time.h>

#include <QBuffer>
#include <QCryptographicHash>
#include <QHashSeed>
#include <QPdfWriter>
#include <QSaveFile>

#include "core/base/expects.h"
#include "core/exchange/job_folder.h"
#include "core/workbook/output_target.h"
#include "ui/report/signature_drawing.h"

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

/// Qt writes the local time with its offset, whose length differs from zone to zone. While a report is
/// written the zone is UTC; reports are written from the main thread only.
class UniversalTime {
  public:
    UniversalTime() : m_was(qgetenv("TZ")), m_wasSet(qEnvironmentVariableIsSet("TZ")) {
        qputenv("TZ", "UTC");
        tzset();
    }
    ~UniversalTime() {
        if (m_wasSet) {
            qputenv("TZ", m_was);
        } else {
            qunsetenv("TZ");
        }
        tzset();
    }
    UniversalTime(const UniversalTime&) = delete;
    UniversalTime& operator=(const UniversalTime&) = delete;

  private:
    QByteArray m_was;
    bool m_wasSet;
};

/// Puts `text` over what stands between `before` and `after`, at the first place of `before` from `from`
/// onward; the length stays, so that the offsets inside the file stay right. Gives where it ended, or -1.
qsizetype overwrite(QByteArray& bytes, const QByteArray& before, char after, const QByteArray& text,
                    qsizetype from) {
    const qsizetype found = bytes.indexOf(before, from);
    if (found < 0) {
        return -1;
    }
    const qsizetype begin = found + before.size();
    const qsizetype end = bytes.indexOf(after, begin);
    if (end < 0) {
        return -1;
    }
    bytes.replace(begin, end - begin, text.leftJustified(end - begin, ' ', true));
    return end;
}

/// The clock and the random ids that Qt writes give way to the report's own date and identity.
void makeSteady(QByteArray& bytes, const ww::report::Report& report) {
    const QByteArray iso = QByteArray::fromStdString(
        base::Instant{report.printed.seconds, std::nullopt}.text());  // 2026-03-04T14:02:07
    QByteArray compact = iso;
    compact.replace("-", "").replace(":", "").replace("T", "");
    overwrite(bytes, "/CreationDate (D:", ')', compact + 'Z', 0);
    overwrite(bytes, "xmp:CreateDate=\"", '"', iso + 'Z', 0);
    overwrite(bytes, "xmp:ModifyDate=\"", '"', iso + 'Z', 0);
    const QByteArray identity =
        QCryptographicHash::hash(
            QByteArray::fromStdString(report.workbookId + report.digest + report.jobName),
            QCryptographicHash::Sha256)
            .toHex()
            .left(32);
    // Only in the trailer: the same signs may stand in the maps of the fonts.
    const qsizetype trailer = bytes.lastIndexOf("/ID [ <");
    if (trailer >= 0) {
        const qsizetype second = overwrite(bytes, "/ID [ <", '>', identity, trailer);
        overwrite(bytes, " <", '>', identity, second);
    }
}

base::Result<QByteArray> written(const ww::report::Report& report, const ReportPages& pages,
                                 const Watch& watch) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    bool isWhole = false;
    {
        QPdfWriter writer(&buffer);
        writer.setPdfVersion(QPagedPaintDevice::PdfVersion_A1b);
        writer.setResolution(kDotsPerInch);
        writer.setTitle(QString::fromStdString(report.jobName));
        writer.setCreator(QStringLiteral("Waterwright"));
        isWhole = paintPages(pages, writer, watch);
    }
    buffer.close();
    if (!isWhole) {
        return base::Fault{&kReportStopped, {}, {}};
    }
    makeSteady(bytes, report);
    return bytes;
}

/// The pages that are there, else new ones; null where that was stopped.
std::shared_ptr<const ReportPages> pagesOf(const ww::report::Report& report, const project::Project& project,
                                           const Waiting& waiting) {
    if (waiting.pages != nullptr) {
        return waiting.pages;
    }
    auto laid = layOut(report, project, waiting.layingOut);
    return laid ? std::make_shared<const ReportPages>(std::move(*laid)) : nullptr;
}

/// The record as tables and as one document.
std::vector<seal::Attachment> machineTwin(const project::Project& project) {
    std::vector<seal::Attachment> files;
    for (exchange::JobTable& table : exchange::jobTables(project)) {
        files.push_back({std::move(table.file), "text/csv", "A table of the job, digits as typed",
                         std::move(table.text)});
    }
    files.push_back(
        {"job.json", "application/json", "The whole job as one document", exchange::jobJson(project)});
    return files;
}

base::Result<QByteArray> pdf(const ww::report::Report& report, const project::Project& project,
                             const Waiting& waiting) {
    const SteadyHashes steady;
    const UniversalTime universal;
    const auto pages = pagesOf(report, project, waiting);
    if (pages == nullptr) {
        return base::Fault{&kReportStopped, {}, {}};
    }
    const base::Result<QByteArray> drawn = written(report, *pages, waiting.writing);
    if (!drawn) {
        return drawn.fault();
    }
    const auto whole = seal::prepareReport(
        drawn->toStdString(),
        {{}, machineTwin(project), {report.workbookId, report.journalDigest}, report.printed});
    // What was just drawn is a PDF of the form that is read here.
    EXPECTS(whole.ok());
    return QByteArray::fromStdString(*whole);
}

}  // namespace

QByteArray pdf(const ww::report::Report& report, const project::Project& project) {
    return *pdf(report, project, Waiting());
}

base::Result<workbook::ReportToSign> reportToSign(const ww::report::Report& report,
                                                  const project::Project& project, const Waiting& waiting) {
    const SteadyHashes steady;
    const UniversalTime universal;
    const auto pages = pagesOf(report, project, waiting);
    if (pages == nullptr) {
        return base::Fault{&kReportStopped, {}, {}};
    }
    const base::Result<QByteArray> bytes = written(report, *pages, waiting.writing);
    if (!bytes) {
        return bytes.fault();
    }
    workbook::ReportToSign drawn;
    drawn.pdf = bytes->toStdString();
    for (const SignatureSpace& space : pages->spaces) {
        drawn.fields.push_back(
            {space.role, space.place, drawBlock(seal::waitingText(space.role), space.place.size)});
    }
    drawn.attachments = machineTwin(project);
    return drawn;
}

base::Outcome writeWhole(const std::filesystem::path& out,
                         const std::function<base::Result<QByteArray>()>& make) {
    if (auto refusal = workbook::refusalToReplace(out)) {
        return *refusal;
    }
    if (auto refusal = workbook::refusalToReplaceSigned(out)) {
        return *refusal;
    }
    QSaveFile file(QString::fromStdString(out.string()));
    const auto failed = [&] {
        return base::Fault{&kReportNotWritten, {}, {out.string(), file.errorString().toStdString()}};
    };
    if (!file.open(QIODevice::WriteOnly)) {
        return failed();
    }
    const base::Result<QByteArray> bytes = make();
    if (!bytes) {
        file.cancelWriting();
        return bytes.fault();
    }
    if (file.write(*bytes) != bytes->size() || !file.commit()) {
        return failed();
    }
    return base::Done{};
}

base::Outcome writePdf(const ww::report::Report& report, const project::Project& project,
                       const std::filesystem::path& out, const Waiting& waiting) {
    return writeWhole(out, [&] { return pdf(report, project, waiting); });
}

}  // namespace ww::ui::report
