#include "core/seal/detail/signature_field.h"

#include <charconv>
#include <cstdlib>

#include "core/seal/detail/deflate.h"

namespace ww::seal::detail {
namespace {

std::string pointText(const PaperPoint& point) {
    return std::to_string(point.x) + " " + std::to_string(point.y);
}

/// PDF operators of a drawing, in points.
std::string operators(const BlockDrawing& drawing) {
    std::string out = "0.001 0 0 0.001 0 0 cm\n";
    for (const FilledShape& shape : drawing.shapes) {
        if (shape.steps.empty()) {
            continue;
        }
        constexpr int kWhite = 255;
        out += inPoints(shape.gray * 1000 / kWhite) + " g\n";
        for (const OutlineStep& step : shape.steps) {
            switch (step.kind) {
                case OutlineStep::Kind::Move:
                    out += pointText(step.points[0]) + " m\n";
                    break;
                case OutlineStep::Kind::Line:
                    out += pointText(step.points[0]) + " l\n";
                    break;
                case OutlineStep::Kind::Curve:
                    out += pointText(step.points[0]) + " " + pointText(step.points[1]) + " " +
                           pointText(step.points[2]) + " c\n";
                    break;
            }
        }
        out += "f\n";
    }
    return out;
}

}  // namespace

std::optional<std::vector<FieldFound>> signatureFields(const PdfDocument& document) {
    std::vector<FieldFound> found;
    const auto catalog = document.catalog();
    if (!catalog || catalog->dictionary() == nullptr) {
        return std::nullopt;
    }
    const PdfObject* form = catalog->dictionary()->find("AcroForm");
    if (form == nullptr) {
        return found;
    }
    const PdfObject resolved = document.resolved(*form);
    const PdfDictionary* dictionary = resolved.as<PdfDictionary>();
    const PdfObject list = dictionary != nullptr ? document.resolved(*dictionary, "Fields") : PdfObject();
    const PdfArray* fields = list.as<PdfArray>();
    if (fields == nullptr) {
        return std::nullopt;
    }
    for (const PdfObject& field : *fields) {
        const PdfReference* reference = field.as<PdfReference>();
        const auto object = reference != nullptr ? document.object(*reference) : std::nullopt;
        if (!object || object->dictionary() == nullptr || object->dictionary()->find("Kids") != nullptr) {
            return std::nullopt;
        }
        if (object->dictionary()->name("FT") != "Sig") {
            continue;
        }
        const PdfObject* name = object->dictionary()->find("T");
        const PdfObject* value = object->dictionary()->find("V");
        const auto signature = object->dictionary()->reference("V");
        if (name == nullptr || name->as<PdfString>() == nullptr || (value != nullptr && !signature)) {
            return std::nullopt;
        }
        found.push_back({reference->number, utf8OfTextString(name->as<PdfString>()->bytes),
                         *object->dictionary(), signature ? std::optional(signature->number) : std::nullopt});
    }
    return found;
}

PdfObject addAppearance(PdfUpdate& update, const BlockDrawing& drawing, const PaperSize& size) {
    PdfDictionary form;
    form.set("Type", PdfObject::ofName("XObject"));
    form.set("Subtype", PdfObject::ofName("Form"));
    form.set("BBox", PdfObject::Value(PdfArray{PdfObject::ofNumber(0), PdfObject::ofNumber(0),
                                               PdfObject::Value(PdfNumber{inPoints(size.width)}),
                                               PdfObject::Value(PdfNumber{inPoints(size.height)})}));
    form.set("Resources", PdfObject::Value(PdfDictionary()));
    form.set("Filter", PdfObject::ofName("FlateDecode"));
    PdfDictionary appearance;
    appearance.set("N",
                   PdfObject::ofReference(update.addStream(std::move(form), deflated(operators(drawing)))));
    return PdfObject::Value(std::move(appearance));
}

std::string inPoints(int thousandths) {
    constexpr int kWhole = 1000;
    const int magnitude = std::abs(thousandths);
    std::string fraction = std::to_string(kWhole + magnitude % kWhole).substr(1);
    return (thousandths < 0 ? "-" : "") + std::to_string(magnitude / kWhole) + "." + fraction;
}

std::optional<int> thousandths(const PdfObject& number) {
    const PdfNumber* written = number.as<PdfNumber>();
    double points = 0;
    if (written == nullptr) {
        return std::nullopt;
    }
    const std::string& text = written->text;
    const auto read = std::from_chars(text.data(), text.data() + text.size(), points);
    constexpr double kMost = 1e6;
    if (read.ec != std::errc() || read.ptr != text.data() + text.size() || points > kMost ||
        points < -kMost) {
        return std::nullopt;
    }
    return static_cast<int>(points * 1000 + (points < 0 ? -0.5 : 0.5));
}

}  // namespace ww::seal::detail
