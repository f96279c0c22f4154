#include "core/seal/detail/pdf_update.h"

#include <cstdio>

#include "core/base/digest.h"
#include "core/base/expects.h"
#include "core/seal/detail/byte_view.h"

namespace ww::seal::detail {
namespace {

std::string header(int number) {
    return std::to_string(number) + " 0 obj\n";
}
constexpr std::string_view kFooter = "\nendobj\n";

/// One line of a table, 20 signs: ISO 32000-1, 7.5.4.
std::string xrefLine(std::size_t offset, int generation, char kind) {
    char line[32];
    std::snprintf(line, sizeof line, "%010zu %05d %c \n", offset, generation, kind);
    return line;
}

}  // namespace

int PdfUpdate::add(const PdfObject& value) {
    const int number = newNumber();
    set(number, value);
    return number;
}

int PdfUpdate::addStream(PdfDictionary dictionary, std::string_view data) {
    const int number = newNumber();
    setStream(number, std::move(dictionary), data);
    return number;
}

void PdfUpdate::setStream(int number, PdfDictionary dictionary, std::string_view data) {
    dictionary.set("Length", PdfObject::ofNumber(static_cast<std::int64_t>(data.size())));
    std::string text = pdfText(PdfObject::Value(std::move(dictionary)));
    text += "\nstream\n";
    text += data;
    text += "\nendstream";
    setText(number, std::move(text));
}

void PdfUpdate::setText(int number, std::string text) {
    m_objects[number] = std::move(text);
}

std::string_view PdfUpdate::opening() const {
    return m_before.bytes().ends_with('\n') ? std::string_view() : std::string_view("\n");
}

std::size_t PdfUpdate::placeOf(int number) const {
    EXPECTS(m_objects.contains(number));
    std::size_t place = m_before.bytes().size() + opening().size();
    for (const auto& [each, text] : m_objects) {
        if (each == number) {
            break;
        }
        place += header(each).size() + text.size() + kFooter.size();
    }
    return place + header(number).size();
}

std::string PdfUpdate::written() const {
    std::string out(m_before.bytes());
    out += opening();
    std::map<int, std::size_t> offsets;
    base::Digester digester;
    digester.addText(m_before.bytes());
    for (const auto& [number, text] : m_objects) {
        offsets[number] = out.size();
        out += header(number);
        out += text;
        out += kFooter;
        digester.addText(text);
    }
    const std::size_t table = out.size();
    out += "xref\n";
    for (auto entry = offsets.begin(); entry != offsets.end();) {
        auto end = entry;
        int next = entry->first;
        std::string lines;
        while (end != offsets.end() && end->first == next) {
            lines += xrefLine(end->second, 0, 'n');
            ++end;
            ++next;
        }
        out += std::to_string(entry->first) + " " + std::to_string(next - entry->first) + "\n" + lines;
        entry = end;
    }
    PdfDictionary trailer;
    trailer.set("Size", PdfObject::ofNumber(m_next));
    for (const char* kept : {"Root", "Info"}) {
        if (const PdfObject* value = m_before.trailer().find(kept)) {
            trailer.set(kept, *value);
        }
    }
    if (const PdfObject* ids = m_before.trailer().find("ID")) {
        // The first stays, the second tells revisions apart: ISO 32000-1, 14.4.
        PdfObject both = *ids;
        if (PdfArray* array = both.as<PdfArray>(); array != nullptr && array->size() == 2) {
            constexpr std::size_t kIdSize = 16;
            const base::Digest digest = digester.finish();
            (*array)[1] =
                PdfObject::ofString(std::string(digest.bytes.begin(), digest.bytes.begin() + kIdSize));
        }
        trailer.set("ID", std::move(both));
    }
    trailer.set("Prev", PdfObject::ofNumber(static_cast<std::int64_t>(m_before.sections().front().begin)));
    out += "trailer\n" + pdfText(PdfObject::Value(std::move(trailer))) + "\nstartxref\n" +
           std::to_string(table) + "\n%%EOF\n";
    return out;
}

}  // namespace ww::seal::detail
