#include "core/seal/sign_report.h"

#include <algorithm>

#include "core/seal/detail/field_signing.h"
#include "core/seal/seal_messages.h"
#include "core/seal/verify_report.h"

namespace ww::seal {
namespace {

using namespace detail;

base::Fault damagedPart(const char* what) {
    return {&kPdfDamaged, {}, {what}};
}

struct Target {
    FieldFound field;
    bool isFirst = false;
};

base::Result<Target> fieldOf(const PdfDocument& document, Role role) {
    const auto fields = signatureFields(document);
    if (!fields) {
        return damagedPart("form");
    }
    const auto found = std::find_if(fields->begin(), fields->end(),
                                    [role](const FieldFound& field) { return field.name == name(role); });
    if (found == fields->end()) {
        return base::Fault{&kNoSignatureField, {}, {std::string(name(role))}};
    }
    const bool isFirst = std::none_of(fields->begin(), fields->end(),
                                      [](const FieldFound& field) { return field.signature.has_value(); });
    return Target{*found, isFirst};
}

}  // namespace

base::Result<PaperSize> blockSize(std::string_view pdf, Role role) {
    const auto document = PdfDocument::open(pdf);
    if (!document) {
        return document.fault();
    }
    const auto target = fieldOf(*document, role);
    if (!target) {
        return target.fault();
    }
    const auto size = fieldSize(target->field.dictionary);
    return size ? base::Result<PaperSize>(*size) : base::Result<PaperSize>(damagedPart("field"));
}

base::Result<std::string> signReport(std::string_view pdf, const Identity& identity, const Signing& signing) {
    if (auto refusal = identity.refusal(signing.time)) {
        return *refusal;
    }
    const auto document = PdfDocument::open(pdf);
    if (!document) {
        return document.fault();
    }
    const auto target = fieldOf(*document, signing.role);
    if (!target) {
        return target.fault();
    }
    if (target->field.signature) {
        return base::Fault{&kAlreadySigned, {}, {std::string(name(signing.role))}};
    }
    if (!target->isFirst && !verifyReport(pdf).isIntact) {
        return base::Fault{&kNotIntactNotSigned, {}, {}};
    }
    PdfUpdate update(*document);
    return signField(*document, update, target->field, identity, signing, target->isFirst);
}

}  // namespace ww::seal
