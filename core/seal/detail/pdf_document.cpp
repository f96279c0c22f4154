#include "core/seal/detail/pdf_document.h"

#include <algorithm>

#include "core/base/term.h"
#include "core/seal/detail/pdf_parser.h"
#include "core/seal/seal_messages.h"

namespace ww::seal::detail {
namespace {

/// How far from the end the last startxref may stand (ISO 32000-1, annex H).
constexpr std::size_t kTail = 1024;
/// A report has three; more than this is no report, and would take long to go through.
constexpr std::size_t kMostRevisions = 64;

base::Fault damaged(const std::string& what) {
    return {&kPdfDamaged, {}, {what}};
}

/// The offset that the last startxref gives; nothing behind its %%EOF but white space.
std::optional<std::size_t> lastTable(std::string_view bytes) {
    const std::size_t from = bytes.size() > kTail ? bytes.size() - kTail : 0;
    const std::size_t found = bytes.rfind("startxref");
    if (found == std::string_view::npos || found < from) {
        return std::nullopt;
    }
    PdfParser parser(bytes, found + 9);
    parser.skipSpace();
    const auto offset = parser.digits();
    parser.skipBlanks();
    if (!offset || !parser.take("%%EOF")) {
        return std::nullopt;
    }
    const std::string_view rest = bytes.substr(parser.at());
    return std::all_of(rest.begin(), rest.end(), isPdfSpace) ? std::optional<std::size_t>(*offset)
                                                             : std::nullopt;
}

/// One line of a table: "0000000015 00000 n" and two signs that end it.
std::optional<PdfXrefEntry> tableLine(std::string_view line) {
    PdfParser parser(line, 0);
    const auto offset = parser.digits();
    const bool hasGap = parser.at() == 10 && parser.take(" ");
    const auto generation = parser.digits();
    const bool hasSecondGap = parser.at() == 16 && parser.take(" ");
    const bool isFree = line[17] == 'f';
    if (!offset || !generation || !hasGap || !hasSecondGap || (!isFree && line[17] != 'n') ||
        *generation > 65535 || !isPdfSpace(line[18]) || !isPdfSpace(line[19])) {
        return std::nullopt;
    }
    return PdfXrefEntry{static_cast<std::size_t>(*offset), static_cast<int>(*generation), isFree};
}

bool readEntries(std::string_view bytes, PdfParser& parser, PdfSection& section) {
    constexpr std::size_t kLine = 20;
    constexpr std::int64_t kHighest = 8'388'607;  // ISO 32000-1, annex C
    while (true) {
        parser.skipSpace();
        if (parser.takeWord("trailer")) {
            return true;
        }
        const auto first = parser.digits();
        const bool hasGap = parser.take(" ");
        const auto count = parser.digits();
        parser.skipSpace();
        if (!first || !hasGap || !count || *first + *count > kHighest ||
            static_cast<std::size_t>(*count) > (bytes.size() - parser.at()) / kLine) {
            return false;
        }
        for (std::int64_t i = 0; i < *count; ++i) {
            const auto entry = tableLine(bytes.substr(parser.at(), kLine));
            if (!entry || !section.entries.emplace(static_cast<int>(*first + i), *entry).second) {
                return false;
            }
            parser = PdfParser(bytes, parser.at() + kLine);
        }
    }
}

/// The table at an offset with its trailer and the startxref that closes it.
std::optional<PdfSection> readSection(std::string_view bytes, std::size_t offset) {
    if (offset >= bytes.size()) {
        return std::nullopt;
    }
    PdfSection section;
    section.begin = offset;
    PdfParser parser(bytes, offset);
    if (!parser.takeWord("xref") || !readEntries(bytes, parser, section)) {
        return std::nullopt;
    }
    const auto trailer = parser.object();
    if (!trailer || trailer->as<PdfDictionary>() == nullptr) {
        return std::nullopt;
    }
    section.trailer = *trailer->as<PdfDictionary>();
    parser.skipSpace();
    const bool isClosed = parser.takeWord("startxref");
    parser.skipSpace();
    const auto own = isClosed ? parser.digits() : std::nullopt;
    if (!own || static_cast<std::size_t>(*own) != offset) {
        return std::nullopt;
    }
    parser.skipBlanks();
    if (!parser.take("%%EOF")) {
        return std::nullopt;
    }
    section.end = parser.at();
    return section;
}

}  // namespace

base::Result<PdfDocument> PdfDocument::open(std::string_view bytes) {
    if (!bytes.starts_with("%PDF-1.") && !bytes.starts_with("%PDF-2.")) {
        return damaged("it does not begin as a PDF");
    }
    const auto offset = lastTable(bytes);
    if (!offset) {
        return damaged("its end is missing");
    }
    PdfDocument document(bytes);
    for (std::size_t at = *offset;;) {
        if (at < bytes.size() && !bytes.substr(at).starts_with("xref")) {
            return base::Fault{&kPdfForm, {}, {base::term("no cross-reference table")}};
        }
        auto section = readSection(bytes, at);
        if (!section) {
            return damaged("cross-reference table at byte " + std::to_string(at));
        }
        if (section->trailer.find("XRefStm") != nullptr || section->trailer.find("Encrypt") != nullptr) {
            return base::Fault{&kPdfForm, {}, {base::term("encrypted, or with cross-reference streams")}};
        }
        const PdfObject* previous = section->trailer.find("Prev");
        const bool isOldest = previous == nullptr;
        const std::int64_t next = isOldest ? -1 : previous->wholeNumber().value_or(-1);
        document.m_sections.push_back(std::move(*section));
        if (isOldest) {
            return document;
        }
        if (document.m_sections.size() >= kMostRevisions) {
            return base::Fault{&kPdfForm, {}, {base::term("too many revisions")}};
        }
        // Updates only ever point backward, so a chain that does not is damaged, and no chain is endless.
        if (next < 0 || static_cast<std::size_t>(next) >= at) {
            return damaged("chain of cross-reference tables");
        }
        at = static_cast<std::size_t>(next);
    }
}

const PdfXrefEntry* PdfDocument::entry(int number) const {
    for (const PdfSection& section : m_sections) {
        const auto found = section.entries.find(number);
        if (found != section.entries.end()) {
            return found->second.isFree ? nullptr : &found->second;
        }
    }
    return nullptr;
}

std::set<int> PdfDocument::numbers() const {
    std::set<int> all;
    for (const PdfSection& section : m_sections) {
        for (const auto& [number, entry] : section.entries) {
            all.insert(number);
        }
    }
    std::erase_if(all, [this](int number) { return entry(number) == nullptr; });
    return all;
}

int PdfDocument::nextNumber() const {
    int highest = 0;
    for (const PdfSection& section : m_sections) {
        highest = section.entries.empty() ? highest : std::max(highest, section.entries.rbegin()->first);
    }
    return highest + 1;
}

std::optional<PdfIndirect> PdfDocument::object(int number) const {
    const PdfXrefEntry* found = entry(number);
    return found != nullptr ? objectAt(number, *found) : std::nullopt;
}

std::optional<PdfIndirect> PdfDocument::object(const std::optional<PdfReference>& reference) const {
    const PdfXrefEntry* found = reference ? entry(reference->number) : nullptr;
    if (found == nullptr || found->generation != reference->generation) {
        return std::nullopt;
    }
    return objectAt(reference->number, *found);
}

PdfObject PdfDocument::resolved(const PdfObject& value) const {
    const PdfReference* reference = value.as<PdfReference>();
    if (reference == nullptr) {
        return value;
    }
    auto found = object(*reference);
    return found ? std::move(found->value) : PdfObject();
}

PdfObject PdfDocument::resolved(const PdfDictionary& dictionary, std::string_view name) const {
    const PdfObject* value = dictionary.find(name);
    return value != nullptr ? resolved(*value) : PdfObject();
}

std::optional<PdfIndirect> PdfDocument::objectAt(int number, const PdfXrefEntry& entry) const {
    if (entry.offset >= m_bytes.size()) {
        return std::nullopt;
    }
    PdfParser parser(m_bytes, entry.offset);
    const bool isIts = parser.digits() == number && parser.take(" ") && parser.digits() == entry.generation &&
                       parser.take(" ") && parser.takeWord("obj");
    auto value = isIts ? parser.object() : std::nullopt;
    if (!value) {
        return std::nullopt;
    }
    PdfIndirect object{std::move(*value), std::nullopt, entry.offset, 0};
    parser.skipSpace();
    if (parser.takeWord("stream")) {
        std::size_t at = parser.at();
        if (object.dictionary() == nullptr) {
            return std::nullopt;
        }
        object.stream = streamAt(*object.dictionary(), at);
        if (!object.stream) {
            return std::nullopt;
        }
        parser = PdfParser(m_bytes, at);
        parser.skipSpace();
    }
    if (!parser.takeWord("endobj")) {
        return std::nullopt;
    }
    object.end = parser.at();
    return object;
}

std::optional<std::string_view> PdfDocument::streamAt(const PdfDictionary& dictionary,
                                                      std::size_t& at) const {
    PdfParser parser(m_bytes, at);
    if (!parser.take("\r\n") && !parser.take("\n")) {
        return std::nullopt;
    }
    constexpr std::int64_t kNoLength = -1;
    const PdfObject* length = dictionary.find("Length");
    std::int64_t bytes = length != nullptr ? length->wholeNumber().value_or(kNoLength) : kNoLength;
    if (const auto reference = dictionary.reference("Length")) {
        // The length stands in an object of its own, which is a number and no stream: no endless descent.
        const PdfXrefEntry* found = entry(reference->number);
        PdfParser other(m_bytes, found != nullptr ? found->offset : m_bytes.size());
        const bool isIts = found != nullptr && other.digits() == reference->number && other.take(" ") &&
                           other.digits() == reference->generation && other.take(" ") &&
                           other.takeWord("obj");
        const auto value = isIts ? other.object() : std::nullopt;
        bytes = value ? value->wholeNumber().value_or(kNoLength) : kNoLength;
    }
    if (bytes < 0 || static_cast<std::size_t>(bytes) > m_bytes.size() - parser.at()) {
        return std::nullopt;
    }
    const std::string_view data = m_bytes.substr(parser.at(), static_cast<std::size_t>(bytes));
    parser = PdfParser(m_bytes, parser.at() + data.size());
    if (!parser.take("\r\n")) {
        parser.take("\n");
    }
    if (!parser.takeWord("endstream")) {
        return std::nullopt;
    }
    at = parser.at();
    return data;
}

bool PdfDocument::isFilledFrom(std::size_t begin) const {
    std::vector<std::pair<std::size_t, std::size_t>> spans;
    for (const PdfSection& section : m_sections) {
        if (section.begin < begin) {
            continue;
        }
        spans.emplace_back(section.begin, section.end);
        for (const auto& [number, entry] : section.entries) {
            const auto object = entry.isFree ? std::nullopt : objectAt(number, entry);
            if (object) {
                spans.emplace_back(object->begin, object->end);
            } else if (!entry.isFree) {
                return false;
            }
        }
    }
    std::sort(spans.begin(), spans.end());
    spans.emplace_back(m_bytes.size(), m_bytes.size());
    std::size_t at = begin;
    for (const auto& [from, to] : spans) {
        if (from < at) {
            return false;
        }
        PdfParser gap(m_bytes.substr(0, from), at);
        gap.skipSpace();
        if (gap.at() < from) {
            return false;
        }
        at = to;
    }
    return true;
}

std::optional<std::vector<int>> pageNumbers(const PdfDocument& document) {
    constexpr std::size_t kMostNodes = 1'000'000;
    const auto catalog = document.catalog();
    if (!catalog || catalog->dictionary() == nullptr) {
        return std::nullopt;
    }
    const auto root = catalog->dictionary()->reference("Pages");
    std::vector<int> pages;
    std::vector<PdfReference> ahead;
    std::set<int> seen;
    if (root) {
        ahead.push_back(*root);
    }
    while (!ahead.empty() && seen.size() < kMostNodes) {
        const PdfReference reference = ahead.back();
        ahead.pop_back();
        const auto node = document.object(reference);
        if (!node || node->dictionary() == nullptr || !seen.insert(reference.number).second) {
            return std::nullopt;
        }
        if (node->dictionary()->name("Type") == "Page") {
            pages.push_back(reference.number);
            continue;
        }
        const PdfObject kids = document.resolved(*node->dictionary(), "Kids");
        const PdfArray* array = kids.as<PdfArray>();
        if (array == nullptr) {
            return std::nullopt;
        }
        for (auto kid = array->rbegin(); kid != array->rend(); ++kid) {
            if (kid->as<PdfReference>() == nullptr) {
                return std::nullopt;
            }
            ahead.push_back(*kid->as<PdfReference>());
        }
    }
    return pages;
}

}  // namespace ww::seal::detail
