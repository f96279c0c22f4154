#include "core/spreadsheet/detail/book_parts.h"

#include <charconv>

#include "core/base/term.h"
#include "core/spreadsheet/read_spreadsheet.h"
#include "core/spreadsheet/spreadsheet_messages.h"

namespace ww::spreadsheet::detail {

namespace {

struct Relation {
    std::string target;
    std::string type;  ///< the last word of its address
};

class RelationListener : public XmlListener {
  public:
    void begin(std::string_view element, const XmlAttributes& attributes) override {
        if (element == "Relationship" && attributes.find("TargetMode").value_or("Internal") == "Internal") {
            const std::string type = attributes.text("Type");
            relations[attributes.text("Id")] = {attributes.text("Target"), type.substr(type.rfind('/') + 1)};
        }
    }
    void end(std::string_view) override {}
    void text(std::string_view) override {}

    std::map<std::string, Relation> relations;
};

class BookListener : public XmlListener {
  public:
    void begin(std::string_view element, const XmlAttributes& attributes) override {
        if (element == "sheet") {
            sheets.emplace_back(attributes.text("name"), attributes.text("id"));
        } else if (element == "workbookPr") {
            const auto system = attributes.find("date1904").value_or("0");
            is1904 = system == "1" || system == "true";
        }
    }
    void end(std::string_view) override {}
    void text(std::string_view) override {}

    std::vector<std::pair<std::string, std::string>> sheets;
    bool is1904 = false;
};

class StringListener : public XmlListener {
  public:
    void begin(std::string_view element, const XmlAttributes&) override {
        m_isSpoken = m_isSpoken || element == "rPh";
        m_isText = element == "t" && !m_isSpoken;
        if (element == "si") {
            m_string.clear();
        }
    }
    void end(std::string_view element) override {
        m_isText = false;
        if (element == "rPh") {
            m_isSpoken = false;
        } else if (element == "si") {
            m_bytes += m_string.size();
            strings.push_back(unescaped(std::move(m_string)));
        }
    }
    void text(std::string_view piece) override {
        if (m_isText) {
            m_string += piece;
        }
    }
    std::optional<base::Fault> fault() const override {
        const bool isTooMuch = strings.size() > kMostCells || m_bytes > kMostText_MB * 1'000'000;
        return isTooMuch ? std::optional(base::Fault{&kSpreadsheetUnpacksTooLarge, "", {"sharedStrings"}})
                         : std::nullopt;
    }

    std::vector<std::string> strings;

  private:
    std::string m_string;
    std::size_t m_bytes = 0;
    bool m_isText = false;
    bool m_isSpoken = false;  ///< how a word is spoken stands beside it and is none of its text
};

class StyleListener : public XmlListener {
  public:
    void begin(std::string_view element, const XmlAttributes& attributes) override {
        if (element == "numFmt") {
            m_own[attributes.text("numFmtId")] = numberFormat(attributes.text("formatCode"));
        } else if (element == "cellXfs") {
            m_isCells = true;
        } else if (element == "xf" && m_isCells) {
            const std::string id = attributes.text("numFmtId");
            const auto own = m_own.find(id);
            const int number = static_cast<int>(wholeNumber(id).value_or(0));
            formats.push_back(own != m_own.end() ? own->second : builtInFormat(number));
        }
    }
    void end(std::string_view element) override { m_isCells = m_isCells && element != "cellXfs"; }
    void text(std::string_view) override {}

    std::vector<NumberFormat> formats;

  private:
    std::map<std::string, NumberFormat> m_own;
    bool m_isCells = false;
};

/// The part that a relation of `from` points to: names within the file, never a path on disk.
std::string resolved(const std::string& from, const std::string& target) {
    std::string path = target.starts_with('/') ? target : from.substr(0, from.rfind('/') + 1) + target;
    std::vector<std::string> steps;
    for (std::size_t at = 0; at <= path.size();) {
        const std::size_t end = std::min(path.find('/', at), path.size());
        const std::string step = path.substr(at, end - at);
        if (step == ".." && !steps.empty()) {
            steps.pop_back();
        } else if (!step.empty() && step != "." && step != "..") {
            steps.push_back(step);
        }
        at = end + 1;
    }
    std::string out;
    for (const std::string& step : steps) {
        out += (out.empty() ? "" : "/") + step;
    }
    return out;
}

std::string relationsOf(const std::string& part) {
    const std::size_t slash = part.rfind('/');
    const std::string folder = slash == std::string::npos ? "" : part.substr(0, slash + 1);
    return folder + "_rels/" + part.substr(folder.size()) + ".rels";
}

int hexDigit(char c) {
    if (c >= '0' && c <= '9') {
        return c - '0';
    }
    const char upper = c >= 'a' && c <= 'f' ? static_cast<char>(c - 'a' + 'A') : c;
    return upper >= 'A' && upper <= 'F' ? upper - 'A' + 10 : -1;
}

/// A sign below U+0800 of an escape at `at`; nothing where there is none, and for what cannot stand alone.
std::optional<std::string> escapeAt(const std::string& text, std::size_t at) {
    if (at + 7 > text.size() || text[at] != '_' || text[at + 1] != 'x' || text[at + 6] != '_') {
        return std::nullopt;
    }
    int point = 0;
    for (std::size_t i = at + 2; i < at + 6; ++i) {
        const int digit = hexDigit(text[i]);
        if (digit < 0) {
            return std::nullopt;
        }
        point = point * 16 + digit;
    }
    if (point == 0 || point >= 0x800) {
        return std::nullopt;
    }
    if (point < 0x80) {
        return std::string(1, static_cast<char>(point));
    }
    return std::string{static_cast<char>(0xC0 | (point >> 6)), static_cast<char>(0x80 | (point & 0x3F))};
}

}  // namespace

std::optional<std::size_t> wholeNumber(std::string_view text) {
    std::size_t number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    return error == std::errc() && end == text.data() + text.size() && !text.empty() ? std::optional(number)
                                                                                     : std::nullopt;
}

std::string unescaped(std::string text) {
    if (text.find("_x") == std::string::npos) {
        return text;
    }
    std::string out;
    for (std::size_t at = 0; at < text.size();) {
        if (const auto sign = escapeAt(text, at)) {
            out += *sign;
            at += 7;
        } else {
            out += text[at++];
        }
    }
    return out;
}

base::Result<BookParts> readBookParts(PackedFile& file) {
    RelationListener top;
    base::Outcome outcome = readXml(file, "_rels/.rels", top);
    std::string book;
    for (const auto& [id, relation] : top.relations) {
        book = relation.type == "officeDocument" ? resolved("", relation.target) : book;
    }
    if (outcome && book.empty()) {
        return base::Fault{&kNoSpreadsheet, "", {base::term("it names no workbook")}};
    }
    RelationListener own;
    BookListener list;
    outcome = outcome ? readXml(file, relationsOf(book), own) : outcome;
    outcome = outcome ? readXml(file, book, list) : outcome;
    if (!outcome) {
        return outcome.fault();
    }
    BookParts parts;
    parts.is1904 = list.is1904;
    for (const auto& [name, id] : list.sheets) {
        const auto relation = own.relations.find(id);
        if (relation != own.relations.end() && relation->second.type == "worksheet") {
            parts.sheets.push_back({name, resolved(book, relation->second.target)});
        }
    }
    StringListener strings;
    StyleListener styles;
    for (const auto& [id, relation] : own.relations) {
        if (outcome && relation.type == "sharedStrings") {
            outcome = readXml(file, resolved(book, relation.target), strings);
        } else if (outcome && relation.type == "styles") {
            outcome = readXml(file, resolved(book, relation.target), styles);
        }
    }
    if (!outcome) {
        return outcome.fault();
    }
    if (parts.sheets.empty()) {
        return base::Fault{&kNoSpreadsheet, "", {base::term("it has no sheet")}};
    }
    parts.strings = std::move(strings.strings);
    parts.formats = std::move(styles.formats);
    return parts;
}

}  // namespace ww::spreadsheet::detail
