#include "core/seal/prepare_report.h"

#include <algorithm>

#include "core/seal/detail/deflate.h"
#include "core/seal/detail/pdf_date.h"
#include "core/seal/detail/pdf_document.h"
#include "core/seal/detail/pdf_update.h"
#include "core/seal/detail/signature_field.h"
#include "core/seal/seal_messages.h"

namespace ww::seal {
namespace {

using namespace detail;

base::Fault damaged(const char* what) {
    return {&kPdfDamaged, {}, {what}};
}

/// Metadata that says PDF/A-3b, which may carry files of any kind (ISO 19005-3, 6.8); the writer says
/// PDF/A-1b.
base::Outcome setMetadata(const PdfDocument& document, const PdfDictionary& catalog, PdfUpdate& update) {
    const auto reference = catalog.reference("Metadata");
    const auto metadata = document.object(reference);
    constexpr std::string_view kPart = "pdfaid:part=\"";
    if (!metadata || !metadata->stream || metadata->dictionary()->find("Filter") != nullptr) {
        return damaged("metadata");
    }
    std::string text(*metadata->stream);
    const std::size_t part = text.find(kPart);
    if (part == std::string::npos || part + kPart.size() >= text.size()) {
        return damaged("metadata without PDF/A");
    }
    text[part + kPart.size()] = '3';
    update.setStream(reference->number, *metadata->dictionary(), text);
    return base::Done{};
}

base::Outcome setBinding(const PdfDocument& document, const ReportBinding& binding, PdfUpdate& update) {
    const auto reference = document.trailer().reference("Info");
    const auto information = document.object(reference);
    if (!information || information->dictionary() == nullptr) {
        return damaged("information");
    }
    PdfDictionary dictionary = *information->dictionary();
    dictionary.set(kWorkbookKey, PdfObject::ofString(binding.workbookId));
    dictionary.set(kJournalKey, PdfObject::ofString(binding.journalDigest));
    update.set(reference->number, PdfObject::Value(std::move(dictionary)));
    return base::Done{};
}

/// Adds a file and what describes it; gives the reference to the description.
PdfObject addFile(PdfUpdate& update, const Attachment& file, const base::Instant& made) {
    PdfDictionary parameters;
    parameters.set("ModDate", PdfObject::ofString(pdfDate(made)));
    parameters.set("Size", PdfObject::ofNumber(static_cast<std::int64_t>(file.bytes.size())));
    PdfDictionary stream;
    stream.set("Type", PdfObject::ofName("EmbeddedFile"));
    stream.set("Subtype", PdfObject::ofName(file.mediaType));
    stream.set("Params", PdfObject::Value(std::move(parameters)));
    stream.set("Filter", PdfObject::ofName("FlateDecode"));
    PdfDictionary embedded;
    embedded.set("F", PdfObject::ofReference(update.addStream(std::move(stream), deflated(file.bytes))));
    embedded.set("UF", *embedded.find("F"));
    PdfDictionary specification;
    specification.set("Type", PdfObject::ofName("Filespec"));
    specification.set("F", PdfObject::ofString(pdfTextString(file.name)));
    specification.set("UF", PdfObject::ofString(pdfTextString(file.name)));
    specification.set("Desc", PdfObject::ofString(pdfTextString(file.description)));
    specification.set("AFRelationship", PdfObject::ofName("Data"));
    specification.set("EF", PdfObject::Value(std::move(embedded)));
    return PdfObject::ofReference(update.add(PdfObject::Value(std::move(specification))));
}

void addFiles(PdfUpdate& update, const Preparation& preparation, PdfDictionary& catalog) {
    if (preparation.attachments.empty()) {
        return;
    }
    std::vector<const Attachment*> sorted;
    for (const Attachment& file : preparation.attachments) {
        sorted.push_back(&file);
    }
    // A tree of names is in order: ISO 32000-1, 7.9.6.
    std::sort(sorted.begin(), sorted.end(), [](const Attachment* left, const Attachment* right) {
        return pdfTextString(left->name) < pdfTextString(right->name);
    });
    PdfArray names;
    PdfArray associated;
    for (const Attachment* file : sorted) {
        associated.push_back(addFile(update, *file, preparation.made));
        names.push_back(PdfObject::ofString(pdfTextString(file->name)));
        names.push_back(associated.back());
    }
    PdfDictionary tree;
    tree.set("Names", PdfObject::Value(std::move(names)));
    PdfDictionary trees;
    trees.set("EmbeddedFiles", PdfObject::Value(std::move(tree)));
    catalog.set("Names", PdfObject::Value(std::move(trees)));
    catalog.set("AF", PdfObject::Value(std::move(associated)));
}

PdfObject rectangle(const PaperPlace& place) {
    const auto edge = [](int value) { return PdfObject(PdfObject::Value(PdfNumber{inPoints(value)})); };
    return PdfObject::Value(PdfArray{edge(place.lowerLeft.x), edge(place.lowerLeft.y),
                                     edge(place.lowerLeft.x + place.size.width),
                                     edge(place.lowerLeft.y + place.size.height)});
}

PdfObject addField(PdfUpdate& update, const SignatureField& field, int page) {
    constexpr int kPrintAndLocked = 4 + 128;  // ISO 32000-1, table 165
    PdfDictionary widget;
    widget.set("Type", PdfObject::ofName("Annot"));
    widget.set("Subtype", PdfObject::ofName("Widget"));
    widget.set("FT", PdfObject::ofName("Sig"));
    widget.set("T", PdfObject::ofString(std::string(name(field.role))));
    widget.set("TU", PdfObject::ofString(std::string(meaning(field.role).text)));
    widget.set("F", PdfObject::ofNumber(kPrintAndLocked));
    widget.set("P", PdfObject::ofReference(page));
    widget.set("Rect", rectangle(field.place));
    widget.set("AP", addAppearance(update, field.waiting, field.place.size));
    return PdfObject::ofReference(update.add(PdfObject::Value(std::move(widget))));
}

/// Puts the fields' blocks on their page.
bool addToPage(const PdfDocument& document, PdfUpdate& update, int page, const PdfArray& blocks) {
    const auto object = document.object(page);
    if (!object || object->dictionary() == nullptr) {
        return false;
    }
    const PdfObject annotations = document.resolved(*object->dictionary(), "Annots");
    PdfArray all = annotations.as<PdfArray>() != nullptr ? *annotations.as<PdfArray>() : PdfArray();
    all.insert(all.end(), blocks.begin(), blocks.end());
    if (const auto reference = object->dictionary()->reference("Annots")) {
        update.set(reference->number, PdfObject::Value(std::move(all)));
        return true;
    }
    PdfDictionary dictionary = *object->dictionary();
    dictionary.set("Annots", PdfObject::Value(std::move(all)));
    update.set(page, PdfObject::Value(std::move(dictionary)));
    return true;
}

base::Outcome addFields(const PdfDocument& document, PdfUpdate& update, const Preparation& preparation,
                        PdfDictionary& catalog) {
    if (preparation.fields.empty()) {
        return base::Done{};
    }
    const auto pages = pageNumbers(document);
    if (!pages) {
        return damaged("pages");
    }
    PdfArray fields;
    std::map<int, PdfArray> ofPages;
    for (const SignatureField& field : preparation.fields) {
        if (field.place.page < 0 || static_cast<std::size_t>(field.place.page) >= pages->size()) {
            return base::Fault{&kNoSuchPage, {}, {std::to_string(field.place.page + 1)}};
        }
        const int page = (*pages)[static_cast<std::size_t>(field.place.page)];
        fields.push_back(addField(update, field, page));
        ofPages[page].push_back(fields.back());
    }
    for (const auto& [page, blocks] : ofPages) {
        if (!addToPage(document, update, page, blocks)) {
            return damaged("page");
        }
    }
    constexpr int kSignaturesAppendOnly = 3;  // ISO 32000-1, table 219
    PdfDictionary form;
    form.set("Fields", PdfObject::Value(std::move(fields)));
    form.set("SigFlags", PdfObject::ofNumber(kSignaturesAppendOnly));
    catalog.set("AcroForm", PdfObject::ofReference(update.add(PdfObject::Value(std::move(form)))));
    return base::Done{};
}

}  // namespace

base::Result<std::string> prepareReport(std::string_view pdf, const Preparation& preparation) {
    const auto document = PdfDocument::open(pdf);
    if (!document) {
        return document.fault();
    }
    const auto root = document->trailer().reference("Root");
    const auto catalog = document->catalog();
    if (!catalog || catalog->dictionary() == nullptr) {
        return damaged("catalog");
    }
    if (catalog->dictionary()->find("AcroForm") != nullptr ||
        catalog->dictionary()->find("Names") != nullptr) {
        return base::Fault{&kAlreadyPrepared, {}, {}};
    }
    PdfUpdate update(*document);
    PdfDictionary changed = *catalog->dictionary();
    for (const base::Outcome& outcome :
         {setMetadata(*document, changed, update), setBinding(*document, preparation.binding, update),
          addFields(*document, update, preparation, changed)}) {
        if (!outcome) {
            return outcome.fault();
        }
    }
    addFiles(update, preparation, changed);
    // Associated files belong to PDF 1.7 with PDF/A-3; the header says less.
    changed.set("Version", PdfObject::ofName("1.7"));
    update.set(root->number, PdfObject::Value(std::move(changed)));
    return update.written();
}

}  // namespace ww::seal
