#include "core/seal/detail/field_signing.h"

#include <array>

#include "core/base/digest.h"
#include "core/base/expects.h"
#include "core/base/hex.h"
#include "core/base/term.h"
#include "core/seal/detail/byte_view.h"
#include "core/seal/detail/cms.h"
#include "core/seal/detail/identity_state.h"
#include "core/seal/detail/pdf_date.h"
#include "core/seal/seal_messages.h"

namespace ww::seal::detail {
namespace {

constexpr std::string_view kByteRange = "/ByteRange [0 ";
constexpr std::size_t kNumberWidth = 10;
constexpr std::string_view kContents = "/Contents <";

/// The signature dictionary with room for the range and the signature (ISO 32000-1, 12.8.1).
std::string signatureText(const Identity& identity, const Signing& signing, bool isFirst, std::size_t room) {
    const auto string = [](std::string_view text) {
        return pdfText(PdfObject::ofString(pdfTextString(text)));
    };
    std::string text = "<<\n/Type /Sig\n";
    // The name of the signature handler is the one that ISO 32000-1, table 252, gives; viewers go by
    // SubFilter.
    text += "/Filter /Adobe.PPKLite\n/SubFilter /ETSI.CAdES.detached\n";
    text += kByteRange;
    text += std::string(3 * kNumberWidth + 2, ' ') + "]\n";
    text += kContents;
    text += std::string(2 * room, '0') + ">\n";
    text += "/Name " + string(identity.facts().name) + "\n";
    text += "/Reason " + string(meaning(signing.role).text) + "\n";
    text += "/M " + pdfText(PdfObject::ofString(pdfDate(signing.time))) + "\n";
    if (isFirst) {
        // Only signatures may follow: ISO 32000-1, 12.8.2.2 and table 254.
        text +=
            "/Reference [<< /Type /SigRef /TransformMethod /DocMDP /TransformParams << /Type "
            "/TransformParams "
            "/P 2 /V /1.2 >> >>]\n";
    }
    return text + ">>";
}

/// How many bytes the signature takes: one made over nothing tells, with some to spare for a curve's numbers.
std::optional<std::size_t> roomFor(const Identity& identity) {
    constexpr std::size_t kSpare = 32;
    const auto trial = makeCms(identity.state(), base::Digest{});
    return trial ? std::optional(trial->size() + kSpare) : std::nullopt;
}

/// Fills range and signature into a file that has room for them from `place` on.
base::Outcome fill(std::string& file, std::size_t place, const Identity& identity) {
    const std::size_t range = file.find(kByteRange, place);
    const std::size_t contents = file.find(kContents, place);
    EXPECTS(range != std::string::npos && contents != std::string::npos);
    const std::size_t before = contents + kContents.size() - 1;
    const std::size_t behind = file.find('>', before) + 1;
    const std::string numbers =
        std::to_string(before) + " " + std::to_string(behind) + " " + std::to_string(file.size() - behind);
    if (numbers.size() > 3 * kNumberWidth + 2) {
        return base::Fault{&kSigningFailed, {}, {base::term("the report is too large")}};
    }
    file.replace(range + kByteRange.size(), numbers.size(), numbers);
    const std::string_view bytes = file;
    const std::string covered = std::string(bytes.substr(0, before)) + std::string(bytes.substr(behind));
    const auto signature = makeCms(identity.state(), base::sha256(bytesOf(covered)));
    const std::size_t room = (behind - before) / 2 - 1;
    if (!signature || signature->size() > room) {
        return base::Fault{&kSigningFailed, {}, {identity.facts().name}};
    }
    const std::string digits = base::hex(bytesOf(*signature));
    file.replace(before + 1, digits.size(), digits);
    return base::Done{};
}

}  // namespace

std::optional<PaperSize> fieldSize(const PdfDictionary& field) {
    const PdfObject* rectangle = field.find("Rect");
    const PdfArray* edges = rectangle != nullptr ? rectangle->as<PdfArray>() : nullptr;
    if (edges == nullptr || edges->size() != 4) {
        return std::nullopt;
    }
    std::array<int, 4> numbers{};
    for (std::size_t i = 0; i < numbers.size(); ++i) {
        const auto number = thousandths((*edges)[i]);
        if (!number) {
            return std::nullopt;
        }
        numbers[i] = *number;
    }
    return PaperSize{numbers[2] - numbers[0], numbers[3] - numbers[1]};
}

base::Result<std::string> signField(const PdfDocument& document, PdfUpdate& update, const FieldFound& field,
                                    const Identity& identity, const Signing& signing, bool isFirst) {
    const auto size = fieldSize(field.dictionary);
    const auto room = roomFor(identity);
    const auto root = document.trailer().reference("Root");
    const auto catalog = document.catalog();
    if (!size || !catalog || catalog->dictionary() == nullptr) {
        return base::Fault{&kPdfDamaged, {}, {base::term("field")}};
    }
    if (!room) {
        return base::Fault{&kSigningFailed, {}, {identity.facts().name}};
    }
    const int signature = update.newNumber();
    update.setText(signature, signatureText(identity, signing, isFirst, *room));
    PdfDictionary signedField = field.dictionary;
    signedField.set("V", PdfObject::ofReference(signature));
    signedField.set("AP", addAppearance(update, signing.drawing, *size));
    update.set(field.number, PdfObject::Value(std::move(signedField)));
    if (isFirst) {
        PdfDictionary permissions;
        permissions.set("DocMDP", PdfObject::ofReference(signature));
        PdfDictionary changed = *catalog->dictionary();
        changed.set("Perms", PdfObject::Value(std::move(permissions)));
        update.set(root->number, PdfObject::Value(std::move(changed)));
    }
    std::string file = update.written();
    const base::Outcome filled = fill(file, update.placeOf(signature), identity);
    if (!filled) {
        return filled.fault();
    }
    return file;
}

}  // namespace ww::seal::detail
