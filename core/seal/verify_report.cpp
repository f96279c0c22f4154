#include "core/seal/verify_report.h"

#include <algorithm>

#include "core/base/digest.h"
#include "core/seal/detail/byte_view.h"
#include "core/seal/detail/cms.h"
#include "core/seal/detail/der.h"
#include "core/seal/detail/pdf_date.h"
#include "core/seal/detail/revision_check.h"
#include "core/seal/detail/signature_field.h"
#include "core/seal/seal_messages.h"

namespace ww::seal {
namespace {

using namespace detail;

base::Fault malformed(const char* what) {
    return {&kSignatureMalformed, {}, {what}};
}

/// What a signature covers: everything up to its contents, and from behind them to `end`.
struct Range {
    std::size_t before = 0;
    std::size_t behind = 0;
    std::size_t end = 0;
};

/// The range of a signature; nothing unless it covers all of its file but the contents' own token.
std::optional<Range> rangeOf(const PdfDictionary& signature, const PdfString& contents,
                             std::size_t fileSize) {
    const PdfObject* written = signature.find("ByteRange");
    const PdfArray* array = written != nullptr ? written->as<PdfArray>() : nullptr;
    if (array == nullptr || array->size() != 4) {
        return std::nullopt;
    }
    std::array<std::size_t, 4> numbers{};
    for (std::size_t i = 0; i < numbers.size(); ++i) {
        const auto number = (*array)[i].wholeNumber();
        if (!number || *number < 0) {
            return std::nullopt;
        }
        numbers[i] = static_cast<std::size_t>(*number);
    }
    const Range range{numbers[1], numbers[2], numbers[2] + numbers[3]};
    const bool isExact = numbers[0] == 0 && range.before == contents.begin && range.behind == contents.end &&
                         range.end <= fileSize && range.end > range.behind;
    return isExact ? std::optional(range) : std::nullopt;
}

/// The signature's bytes out of its hexadecimal token: one way to write it only, so digits of one case,
/// nothing between them, and nothing but zeros behind.
std::optional<std::string_view> exactContents(std::string_view token, const PdfString& contents) {
    if (!contents.isHexadecimal || token.size() < 2) {
        return std::nullopt;
    }
    const std::string_view digits = token.substr(1, token.size() - 2);
    const bool isSmall = digits.find_first_not_of("0123456789abcdef") == std::string_view::npos;
    const bool isLarge = digits.find_first_not_of("0123456789ABCDEF") == std::string_view::npos;
    if (!(isSmall || isLarge) || digits.size() % 2 != 0) {
        return std::nullopt;
    }
    DerReader reader(contents.bytes);
    const auto whole = reader.take(kDerSequence);
    const auto rest = reader.rest();
    const bool isPadded = std::all_of(rest.begin(), rest.end(), [](char sign) { return sign == '\0'; });
    return whole && isPadded ? std::optional(whole->whole) : std::nullopt;
}

struct Judged {
    SignatureFinding finding;
    std::optional<Range> range;
    int field = 0;
    bool forbidsChanges = false;
};

/// Whether this signature allows no later change at all: DocMDP with P 1 (ISO 32000-1, table 254).
bool forbidsChanges(const PdfDocument& document, const PdfDictionary& signature) {
    const PdfObject references = document.resolved(signature, "Reference");
    const PdfArray* array = references.as<PdfArray>();
    if (array == nullptr) {
        return false;
    }
    return std::any_of(array->begin(), array->end(), [&](const PdfObject& each) {
        const PdfObject reference = document.resolved(each);
        const PdfDictionary* dictionary = reference.as<PdfDictionary>();
        const PdfObject parameters =
            dictionary != nullptr ? document.resolved(*dictionary, "TransformParams") : PdfObject();
        return dictionary != nullptr && dictionary->name("TransformMethod") == "DocMDP" &&
               parameters.as<PdfDictionary>() != nullptr && parameters.as<PdfDictionary>()->number("P") == 1;
    });
}

void judgeSigner(const CmsReading& reading, const std::vector<Certificate>& anchors,
                 SignatureFinding& finding) {
    if (reading.signer != nullptr) {
        finding.signer = factsOf(reading.signer.get());
    }
    if (reading.fault) {
        finding.faults.push_back(*reading.fault);
        return;
    }
    finding.isValid = true;
    const base::Instant when = finding.time.value_or(base::Instant{});
    finding.isTrusted = finding.time && isTrusted(reading.signer.get(), reading.others, anchors, when);
}

Judged judge(const PdfDocument& document, const FieldFound& field, const std::vector<Certificate>& anchors) {
    Judged judged;
    judged.field = field.number;
    SignatureFinding& finding = judged.finding;
    finding.field = field.name;
    finding.role = roleNamed(field.name);
    const auto object = document.object(*field.signature);
    const PdfDictionary* signature = object ? object->dictionary() : nullptr;
    const PdfObject* contents = signature != nullptr ? signature->find("Contents") : nullptr;
    const PdfString* token = contents != nullptr ? contents->as<PdfString>() : nullptr;
    if (token == nullptr || object->stream) {
        finding.faults.push_back(malformed("dictionary"));
        return judged;
    }
    if (const PdfObject* time = signature->find("M"); time != nullptr && time->as<PdfString>() != nullptr) {
        finding.time = instantOfPdfDate(time->as<PdfString>()->bytes);
    }
    judged.forbidsChanges = forbidsChanges(document, *signature);
    const auto kind = signature->name("SubFilter");
    const auto range = rangeOf(*signature, *token, document.bytes().size());
    if (kind != "ETSI.CAdES.detached" || !range) {
        finding.faults.push_back(malformed(range ? "kind" : "range"));
        return judged;
    }
    judged.range = range;
    finding.coversWholeFile = range->end == document.bytes().size();
    const std::string_view bytes = document.bytes();
    const auto cms = exactContents(bytes.substr(range->before, range->behind - range->before), *token);
    if (!cms) {
        finding.faults.push_back(malformed("contents"));
        return judged;
    }
    std::string covered(bytes.substr(0, range->before));
    covered += bytes.substr(range->behind, range->end - range->behind);
    judgeSigner(checkCms(*cms, base::sha256(bytesOf(covered))), anchors, finding);
    return judged;
}

std::optional<ReportBinding> bindingOf(const PdfDocument& document) {
    const auto information = document.object(document.trailer().reference("Info"));
    if (!information || information->dictionary() == nullptr) {
        return std::nullopt;
    }
    const auto text = [&](const char* key) {
        const PdfObject* found = information->dictionary()->find(key);
        const PdfString* string = found != nullptr ? found->as<PdfString>() : nullptr;
        return string != nullptr ? std::optional(utf8OfTextString(string->bytes)) : std::nullopt;
    };
    const auto workbook = text(kWorkbookKey);
    const auto journal = text(kJournalKey);
    return workbook && journal ? std::optional(ReportBinding{*workbook, *journal}) : std::nullopt;
}

/// Whether every field that was signed in an earlier revision carries the same signature still.
bool keepsSignatures(const PdfDocument& document, const std::vector<FieldFound>& fields) {
    for (const PdfSection& section : document.sections()) {
        const auto before = PdfDocument::open(document.bytes().substr(0, section.end));
        const auto were = before ? signatureFields(*before) : std::nullopt;
        if (!were) {
            return false;
        }
        const bool areKept = std::all_of(were->begin(), were->end(), [&](const FieldFound& was) {
            return !was.signature || std::any_of(fields.begin(), fields.end(), [&](const FieldFound& field) {
                return field.number == was.number && field.signature == was.signature;
            });
        });
        if (!areKept) {
            return false;
        }
    }
    return true;
}

/// Faults of what was added behind each signature; `signatures` in the order of their ends.
void judgeRevisions(std::string_view pdf, const std::vector<Judged>& signatures,
                    std::vector<base::Fault>& faults) {
    for (std::size_t i = 0; i < signatures.size(); ++i) {
        if (!signatures[i].range) {
            return;
        }
        const bool isLast = i + 1 == signatures.size();
        const std::size_t end = signatures[i].range->end;
        if (isLast) {
            if (end != pdf.size()) {
                faults.push_back({&kUncoveredEnd, {}, {}});
            }
            return;
        }
        if (!signatures[i + 1].range) {
            return;
        }
        if (signatures[i].forbidsChanges) {
            faults.push_back({&kNoChangesAllowed, {}, {}});
        }
        const auto before = PdfDocument::open(pdf.substr(0, end));
        const auto after = PdfDocument::open(pdf.substr(0, signatures[i + 1].range->end));
        if (!before || !after) {
            faults.push_back(before ? after.fault() : before.fault());
        } else if (auto fault = changesBeside(*before, *after, signatures[i + 1].field)) {
            faults.push_back(*fault);
        }
    }
}

}  // namespace

base::Result<TrustAnchors> TrustAnchors::fromPem(std::string_view pem) {
    if (readPem(pem).empty()) {
        return base::Fault{&kTrustUnreadable, {}, {}};
    }
    TrustAnchors anchors;
    anchors.m_pem = pem;
    return anchors;
}

ReportVerification verifyReport(std::string_view pdf, const TrustAnchors& anchors) {
    ReportVerification verification;
    const auto document = PdfDocument::open(pdf);
    if (!document) {
        verification.faults.push_back(document.fault());
        return verification;
    }
    const auto fields = signatureFields(*document);
    if (!fields) {
        verification.faults.push_back({&kPdfDamaged, {}, {"form"}});
        return verification;
    }
    verification.binding = bindingOf(*document);
    const std::vector<Certificate> roots = readPem(anchors.pem());
    std::vector<Judged> judged;
    for (const FieldFound& field : *fields) {
        if (field.signature) {
            judged.push_back(judge(*document, field, roots));
        } else if (const auto role = roleNamed(field.name)) {
            verification.waiting.push_back(*role);
        }
    }
    std::stable_sort(judged.begin(), judged.end(), [](const Judged& left, const Judged& right) {
        return (left.range ? left.range->end : 0) < (right.range ? right.range->end : 0);
    });
    if (judged.empty()) {
        verification.faults.push_back({&kNotSigned, {}, {}});
    }
    if (!keepsSignatures(*document, *fields)) {
        verification.faults.push_back({&kSignatureTakenOut, {}, {}});
    }
    judgeRevisions(pdf, judged, verification.faults);
    bool areValid = true;
    for (Judged& each : judged) {
        areValid = areValid && each.finding.isValid;
        verification.signatures.push_back(std::move(each.finding));
    }
    verification.isIntact = areValid && verification.faults.empty();
    return verification;
}

bool hasSignature(std::string_view pdf) {
    // Looked for as text, so that a damaged report is still known as one.
    return pdf.starts_with("%PDF-") && pdf.find("/ByteRange") != std::string_view::npos;
}

}  // namespace ww::seal
