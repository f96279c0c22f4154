// What PDF/A-3b (ISO 19005-3, level B) asks of a file and what can be told from its objects. No independent
// validator is among the packages of Debian 12, so the properties are listed here, each with its clause from
// memory of the standard and of ISO 32000-1; poppler's pdffonts and pdfimages stand beside.
#include <gtest/gtest.h>

#include <QBuffer>
#include <QImage>
#include <QProcess>
#include <QRegularExpression>
#include <set>

#include "core/seal/detail/pdf_document.h"
#include "core/seal/prepare_report.h"
#include "tests/support/counting_ids.h"
#include "tests/support/demo_project.h"
#include "tests/support/temporary_folder.h"
#include "ui/report/report_writer.h"

namespace ww::ui::report {
namespace {

using seal::detail::PdfArray;
using seal::detail::PdfDictionary;
using seal::detail::PdfDocument;
using seal::detail::PdfIndirect;
using seal::detail::PdfObject;

/// A small photo with a see-through corner, as PNG.
project::Attachment seeThroughPhoto(const base::Id& id) {
    QImage image(40, 30, QImage::Format_ARGB32);
    image.fill(QColor(30, 60, 90, 128));
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "PNG");
    project::Attachment photo;
    photo.id = id;
    photo.name = "strainer.png";
    photo.mediaType = "image/png";
    photo.caption = "clogged strainer";
    photo.content = base::SharedBytes(std::vector<std::uint8_t>(bytes.begin(), bytes.end()));
    return photo;
}

std::string reportBytes(ww::report::Signers signers) {
    project::Project project = support::demoProject();
    support::CountingIds ids(700);
    project.put(seeThroughPhoto(ids.next()));
    ww::report::ReportOptions options;
    options.journalDigest = std::string(64, 'b');
    options.workbookId = std::string(32, 'a');
    options.printed = *base::Instant::fromText("2026-03-04T10:00:00Z");
    options.signers = signers;
    const ww::report::Report report = ww::report::build(project, options);
    if (signers == ww::report::Signers::None) {
        return pdf(report, project).toStdString();
    }
    const workbook::ReportToSign drawn = *reportToSign(report, project);
    return *seal::prepareReport(
        drawn.pdf,
        {drawn.fields, drawn.attachments, {options.workbookId, options.journalDigest}, options.printed});
}

class PdfA : public testing::TestWithParam<ww::report::Signers> {
  protected:
    PdfA() : m_bytes(reportBytes(GetParam())), m_document(*PdfDocument::open(m_bytes)) {}

    const PdfDictionary& catalog() {
        m_catalog = m_document.catalog();
        return *m_catalog->dictionary();
    }
    std::string streamOf(const PdfObject& reference) const {
        const auto* at = reference.as<seal::detail::PdfReference>();
        const auto object = at != nullptr ? m_document.object(*at) : std::nullopt;
        return object && object->stream ? std::string(*object->stream) : std::string();
    }
    /// Every object in use that is a dictionary.
    template <class Visit>
    void eachDictionary(Visit visit) const {
        for (const int number : m_document.numbers()) {
            const auto object = m_document.object(number);
            ASSERT_TRUE(object.has_value()) << number;
            if (object->dictionary() != nullptr) {
                visit(*object->dictionary(), object->stream.has_value());
            }
        }
    }
    std::string nameIn(const PdfDictionary& dictionary, std::string_view key) const {
        const PdfObject value = m_document.resolved(dictionary, key);
        const auto* name = value.as<seal::detail::PdfName>();
        return name == nullptr ? std::string() : name->text;
    }

    std::string m_bytes;
    PdfDocument m_document;
    std::optional<PdfIndirect> m_catalog;
};

TEST_P(PdfA, TheFileIsMarkedAsBinaryAndHasAnIdAndNoPassword) {
    // 6.1.2 header, 6.1.3 trailer.
    ASSERT_TRUE(m_bytes.starts_with("%PDF-1."));
    const std::size_t second = m_bytes.find('\n') + 1;
    ASSERT_EQ(m_bytes[second], '%');
    for (std::size_t i = second + 1; i < second + 5; ++i) {
        EXPECT_GE(static_cast<unsigned char>(m_bytes[i]), 128U);
    }
    EXPECT_NE(m_document.trailer().find("ID"), nullptr);
    for (const auto& section : m_document.sections()) {
        EXPECT_EQ(section.trailer.find("Encrypt"), nullptr);
    }
}

TEST_P(PdfA, TheMetadataSayWhatTheFileIsAndAreNotCompressed) {
    // 6.6.2 and 6.6.4: part and level, agreeing with the information dictionary.
    const std::string metadata = streamOf(*catalog().find("Metadata"));
    EXPECT_NE(metadata.find("pdfaid:part=\"3\""), std::string::npos) << metadata;
    EXPECT_NE(metadata.find("pdfaid:conformance=\"B\""), std::string::npos);
    EXPECT_NE(metadata.find("2026-03-04T10:00:00"), std::string::npos) << "as in CreationDate";
    EXPECT_NE(m_bytes.find("/CreationDate (D:20260304100000"), std::string::npos);
}

TEST_P(PdfA, ColoursHaveAnOutputIntentWithAProfile) {
    // 6.2.3: an ICC profile; its signature stands at byte 36 (ICC.1:2010, 7.2.9).
    const PdfObject intents = m_document.resolved(catalog(), "OutputIntents");
    ASSERT_NE(intents.as<PdfArray>(), nullptr);
    const PdfObject intent = m_document.resolved(intents.as<PdfArray>()->front());
    ASSERT_NE(intent.as<PdfDictionary>(), nullptr);
    EXPECT_EQ(nameIn(*intent.as<PdfDictionary>(), "S"), "GTS_PDFA1");
    const auto profile = m_document.object(intent.as<PdfDictionary>()->reference("DestOutputProfile"));
    ASSERT_TRUE(profile && profile->stream);
    QByteArray bytes(profile->stream->data(), static_cast<qsizetype>(profile->stream->size()));
    if (nameIn(*profile->dictionary(), "Filter") == "FlateDecode") {
        const char size[] = {0, 0x10, 0, 0};
        bytes = qUncompress(QByteArray(size, 4) + bytes);
    }
    EXPECT_EQ(bytes.mid(36, 4), QByteArray("acsp"));
}

TEST_P(PdfA, EveryFontIsInsideTheFile) {
    // 6.2.11.4: every font program embedded, with its widths.
    int fonts = 0;
    eachDictionary([&](const PdfDictionary& dictionary, bool) {
        if (nameIn(dictionary, "Type") == "FontDescriptor") {
            ++fonts;
            EXPECT_NE(dictionary.find("FontFile2"), nullptr);
        }
    });
    EXPECT_GE(fonts, 2);
}

TEST_P(PdfA, NothingIsSeeThroughHiddenOrRuns) {
    // 6.2.8 images, 6.1.7 streams, 6.1.10 filters, 6.5 actions, 6.3 annotations; no transparency is used, so
    // that black-and-white printers and PDF/A-1 readers show the same.
    eachDictionary([&](const PdfDictionary& dictionary, bool isStream) {
        for (const char* key :
             {"JS", "AA", "Launch", "XFA", "OpenAction", "OCProperties", "Alternates", "OPI"}) {
            EXPECT_EQ(dictionary.find(key), nullptr) << key;
        }
        if (isStream) {
            EXPECT_EQ(dictionary.find("FFilter"), nullptr);
            EXPECT_NE(nameIn(dictionary, "Filter"), "LZWDecode");
        }
        if (nameIn(dictionary, "Subtype") == "Image") {
            EXPECT_EQ(dictionary.find("SMask"), nullptr);
            EXPECT_EQ(dictionary.find("Mask"), nullptr);
        }
        if (dictionary.find("SMask") != nullptr) {
            EXPECT_EQ(nameIn(dictionary, "SMask"), "None");
        }
        if (nameIn(dictionary, "Type") == "Annot") {
            EXPECT_NE(dictionary.find("AP"), nullptr);
            EXPECT_NE(dictionary.find("F"), nullptr);
        }
    });
}

TEST_P(PdfA, AttachedFilesSayWhatTheyAre) {
    // 6.8: file and its Unicode name, a relationship, named from the catalog.
    const PdfObject associated = m_document.resolved(catalog(), "AF");
    ASSERT_NE(associated.as<PdfArray>(), nullptr);
    std::set<std::string> names;
    EXPECT_GE(associated.as<PdfArray>()->size(), 6U) << "the tables of the contract and the JSON";
    for (const PdfObject& reference : *associated.as<PdfArray>()) {
        const PdfObject file = m_document.resolved(reference);
        ASSERT_NE(file.as<PdfDictionary>(), nullptr);
        const PdfObject name = m_document.resolved(*file.as<PdfDictionary>(), "UF");
        ASSERT_NE(name.as<seal::detail::PdfString>(), nullptr);
        names.insert(seal::detail::utf8OfTextString(name.as<seal::detail::PdfString>()->bytes));
        for (const char* key : {"F", "UF", "EF", "AFRelationship", "Desc"}) {
            EXPECT_NE(file.as<PdfDictionary>()->find(key), nullptr) << key;
        }
    }
    EXPECT_TRUE(names.contains("job.json"));
    EXPECT_TRUE(names.contains("readings.csv"));
}

TEST_P(PdfA, PopplerFindsEveryFontInside) {
    const support::TemporaryFolder folder;
    folder.write("r.pdf", m_bytes);
    QProcess process;
    process.start("pdffonts", {QString::fromStdString(folder.file("r.pdf"))});
    ASSERT_TRUE(process.waitForFinished());
    const QStringList lines =
        QString::fromUtf8(process.readAllStandardOutput()).split('\n', Qt::SkipEmptyParts);
    EXPECT_TRUE(process.readAllStandardError().isEmpty());
    ASSERT_GE(lines.size(), 4);
    for (qsizetype i = 2; i < lines.size(); ++i) {
        EXPECT_TRUE(lines[i].contains(QRegularExpression(" yes +(yes|no) +yes "))) << lines[i].toStdString();
    }
}

INSTANTIATE_TEST_SUITE_P(Reports, PdfA,
                         testing::Values(ww::report::Signers::None,
                                         ww::report::Signers::TechnicianAndSupervisor),
                         [](const auto& signers) {
                             return signers.param == ww::report::Signers::None ? "Unsigned" : "ToBeSigned";
                         });

}  // namespace
}  // namespace ww::ui::report
