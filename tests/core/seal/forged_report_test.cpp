// Reports forged by revisions put behind a signature, some of them signed by the forger himself.
#include <gtest/gtest.h>

#include <functional>

#include "core/seal/detail/field_signing.h"
#include "core/seal/verify_report.h"
#include "tests/support/signed_report.h"

namespace ww::seal {
namespace {

using namespace detail;
using namespace support;

struct Forgery {
    const char* name;
    std::function<void(const PdfDocument&, PdfUpdate&)> change;
};

PdfObject reference(int number) {
    return PdfObject::ofReference(number);
}
int numberOf(const PdfDocument& document, const char* entry) {
    return document.catalog()->dictionary()->reference(entry)->number;
}
int rootOf(const PdfDocument& document) {
    return document.trailer().reference("Root")->number;
}
int pageOf(const PdfDocument& document) {
    return pageNumbers(document)->front();
}
int fieldOf(const PdfDocument& document, const std::string& name) {
    const auto fields = signatureFields(document);
    for (const FieldFound& field : *fields) {
        if (field.name == name) {
            return field.number;
        }
    }
    return 0;
}
/// Changes one entry of an object that is a dictionary.
void put(const PdfDocument& document, PdfUpdate& update, int number, const char* key, PdfObject value) {
    PdfDictionary dictionary = *document.object(number)->dictionary();
    dictionary.set(key, std::move(value));
    update.set(number, PdfObject::Value(std::move(dictionary)));
}
void putContent(const PdfDocument& document, PdfUpdate& update, const char* text) {
    const int content = document.object(pageOf(document))->dictionary()->reference("Contents")->number;
    update.setStream(content, PdfDictionary(), text);
}

const std::vector<Forgery>& forgeries() {
    static const std::vector<Forgery> all = {
        {"page content replaced",
         [](const PdfDocument& d, PdfUpdate& u) { putContent(d, u, "BT /F1 12 Tf (Share 100 %) Tj ET"); }},
        {"page content emptied", [](const PdfDocument& d, PdfUpdate& u) { putContent(d, u, ""); }},
        {"page content appended",
         [](const PdfDocument& d, PdfUpdate& u) {
             PdfArray both{*d.object(pageOf(d))->dictionary()->find("Contents"),
                           reference(u.addStream(PdfDictionary(), "BT (accepted) Tj ET"))};
             put(d, u, pageOf(d), "Contents", PdfObject::Value(std::move(both)));
         }},
        {"page cropped",
         [](const PdfDocument& d, PdfUpdate& u) {
             put(d, u, pageOf(d), "CropBox", *d.object(pageOf(d))->dictionary()->find("MediaBox"));
         }},
        {"page turned",
         [](const PdfDocument& d, PdfUpdate& u) { put(d, u, pageOf(d), "Rotate", PdfObject::ofNumber(90)); }},
        {"font replaced",
         [](const PdfDocument& d, PdfUpdate& u) { put(d, u, 8, "BaseFont", PdfObject::ofName("Courier")); }},
        {"stamp over the page",
         [](const PdfDocument& d, PdfUpdate& u) {
             const int list = d.object(pageOf(d))->dictionary()->reference("Annots")->number;
             PdfArray all = *d.object(list)->value.as<PdfArray>();
             PdfDictionary stamp;
             stamp.set("Subtype", PdfObject::ofName("Stamp"));
             all.push_back(reference(u.add(PdfObject::Value(std::move(stamp)))));
             u.set(list, PdfObject::Value(std::move(all)));
         }},
        {"page added",
         [](const PdfDocument& d, PdfUpdate& u) {
             const PdfObject copy = d.object(pageOf(d))->value;
             put(d, u, numberOf(d, "Pages"), "Kids",
                 PdfObject::Value(PdfArray{reference(pageOf(d)), reference(u.add(copy))}));
         }},
        {"pages taken out",
         [](const PdfDocument& d, PdfUpdate& u) {
             put(d, u, numberOf(d, "Pages"), "Kids", PdfObject::Value(PdfArray()));
         }},
        {"other tree of pages",
         [](const PdfDocument& d, PdfUpdate& u) {
             const PdfObject copy = d.object(numberOf(d, "Pages"))->value;
             put(d, u, rootOf(d), "Pages", reference(u.add(copy)));
         }},
        {"action on opening",
         [](const PdfDocument& d, PdfUpdate& u) {
             put(d, u, rootOf(d), "OpenAction", PdfObject::Value(PdfDictionary()));
         }},
        {"attached files exchanged",
         [](const PdfDocument& d, PdfUpdate& u) {
             put(d, u, rootOf(d), "Names", PdfObject::Value(PdfDictionary()));
         }},
        {"bytes of an attached file exchanged",
         [](const PdfDocument& d, PdfUpdate& u) {
             const PdfObject files = *d.catalog()->dictionary()->find("AF");
             const auto file = d.object(*files.as<PdfArray>()->front().as<PdfReference>());
             const auto data = file->dictionary()->find("EF")->as<PdfDictionary>()->reference("F");
             u.setStream(data->number, *d.object(*data)->dictionary(), "round,tag\n1,T9\n");
         }},
        {"permissions dropped",
         [](const PdfDocument& d, PdfUpdate& u) {
             put(d, u, rootOf(d), "Perms", PdfObject::Value(PdfDictionary()));
         }},
        {"workbook named otherwise",
         [](const PdfDocument& d, PdfUpdate& u) {
             put(d, u, d.trailer().reference("Info")->number, kWorkbookKey,
                 PdfObject::ofString(std::string(32, 'c')));
         }},
        {"metadata replaced",
         [](const PdfDocument& d, PdfUpdate& u) {
             u.setStream(numberOf(d, "Metadata"), *d.object(numberOf(d, "Metadata"))->dictionary(), "<x/>");
         }},
        {"field added",
         [](const PdfDocument& d, PdfUpdate& u) {
             const int form = numberOf(d, "AcroForm");
             PdfArray fields = *d.object(form)->dictionary()->find("Fields")->as<PdfArray>();
             PdfDictionary text;
             text.set("FT", PdfObject::ofName("Tx"));
             fields.push_back(reference(u.add(PdfObject::Value(std::move(text)))));
             put(d, u, form, "Fields", PdfObject::Value(std::move(fields)));
         }},
        {"technician's block drawn again",
         [](const PdfDocument& d, PdfUpdate& u) {
             put(d, u, fieldOf(d, "technician"), "AP", addAppearance(u, squareDrawing(10), {200000, 50000}));
         }},
        {"technician's signature taken out",
         [](const PdfDocument& d, PdfUpdate& u) {
             PdfDictionary field = *d.object(fieldOf(d, "technician"))->dictionary();
             field.erase("V");
             u.set(fieldOf(d, "technician"), PdfObject::Value(std::move(field)));
         }},
        {"technician's block moved",
         [](const PdfDocument& d, PdfUpdate& u) {
             put(d, u, fieldOf(d, "technician"), "Rect",
                 *d.object(pageOf(d))->dictionary()->find("MediaBox"));
         }},
        {"an object of the pages lost",
         [](const PdfDocument& d, PdfUpdate& u) { u.setText(pageOf(d), "null"); }},
        {"an object broken", [](const PdfDocument& d, PdfUpdate& u) { u.setText(pageOf(d), "<< /Type"); }},
    };
    return all;
}

TEST(ForgedReport, AnythingBehindTheSignaturesIsFound) {
    ASSERT_GE(forgeries().size(), 20U);
    for (const std::string* pdf : {&onceSigned(), &twiceSigned()}) {
        for (const Forgery& forgery : forgeries()) {
            const auto document = PdfDocument::open(*pdf);
            PdfUpdate update(*document);
            forgery.change(*document, update);
            EXPECT_FALSE(verifyReport(update.written()).isIntact) << forgery.name;
        }
    }
}

/// The forger holds a key of his own and signs the supervisor's field together with the change, so that the
/// last signature does cover the whole file.
TEST(ForgedReport, AnythingBesideASignatureIsFound) {
    const auto document = PdfDocument::open(onceSigned());
    const auto fields = signatureFields(*document);
    for (const Forgery& forgery : forgeries()) {
        PdfUpdate update(*document);
        forgery.change(*document, update);
        const auto forged =
            signField(*document, update, fields->at(1), supervisor(), signingBy(Role::Supervisor), false);
        ASSERT_TRUE(forged) << forgery.name;
        EXPECT_FALSE(verifyReport(*forged).isIntact) << forgery.name;
    }
    PdfUpdate honest(*document);
    const auto fair =
        signField(*document, honest, fields->at(1), supervisor(), signingBy(Role::Supervisor), false);
    EXPECT_TRUE(verifyReport(*fair).isIntact);
}

TEST(ForgedReport, TheSignedFieldMayOnlyBeSigned) {
    const auto document = PdfDocument::open(onceSigned());
    FieldFound field = signatureFields(*document)->at(1);
    const auto forge = [&](const char* key, PdfObject value) {
        FieldFound changed = field;
        changed.dictionary.set(key, std::move(value));
        PdfUpdate update(*document);
        return *signField(*document, update, changed, supervisor(), signingBy(Role::Supervisor), false);
    };
    const PdfArray whole{PdfObject::ofNumber(0), PdfObject::ofNumber(0), PdfObject::ofNumber(595),
                         PdfObject::ofNumber(842)};
    EXPECT_FALSE(verifyReport(forge("Rect", PdfObject::Value(whole))).isIntact);
    EXPECT_FALSE(verifyReport(forge("A", PdfObject::Value(PdfDictionary()))).isIntact);
    EXPECT_FALSE(verifyReport(forge("T", PdfObject::ofString("owner"))).isIntact);
    EXPECT_FALSE(verifyReport(forge("Kids", PdfObject::Value(PdfArray()))).isIntact);
}

/// A page may refer to an object that is not there yet: nothing shows until a later revision brings it.
TEST(ForgedReport, AnObjectPutWhereOneWasMissingIsFound) {
    const std::string prepared = preparedPdf();
    const auto plain = PdfDocument::open(prepared);
    const std::string planted = [&] {
        PdfUpdate update(*plain);
        PdfArray both{*plain->object(pageOf(*plain))->dictionary()->find("Contents"), reference(900)};
        put(*plain, update, pageOf(*plain), "Contents", PdfObject::Value(std::move(both)));
        return update.written();
    }();
    const std::string once = signedBy(planted, technician(), Role::Technician);
    EXPECT_TRUE(verifyReport(once).isIntact);
    const auto document = PdfDocument::open(once);
    PdfUpdate update(*document);
    update.setStream(900, PdfDictionary(), "BT (100 %) Tj ET");
    const auto forged = signField(*document, update, signatureFields(*document)->at(1), supervisor(),
                                  signingBy(Role::Supervisor), false);
    EXPECT_FALSE(verifyReport(*forged).isIntact);
}

TEST(ForgedReport, BytesBetweenRevisionsAreFound) {
    const std::string padded = onceSigned() + "BT (100 %) Tj ET\n";
    EXPECT_FALSE(verifyReport(padded).isIntact);
    EXPECT_FALSE(verifyReport(onceSigned() + " ").isIntact);
    EXPECT_FALSE(verifyReport(twiceSigned() + twiceSigned().substr(onceSigned().size())).isIntact);
}

}  // namespace
}  // namespace ww::seal
