#include "core/exchange/csv_text.h"

#include <fstream>
#include <sstream>

#include "core/base/decimal.h"
#include "core/base/term.h"

namespace ww::exchange {

namespace {

constexpr std::string_view kByteOrderMark = "\xEF\xBB\xBF";

/// Text without null bytes; `badAt` is where it is none.
bool isUtf8(std::string_view text, std::size_t& badAt) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    for (std::size_t i = 0; i < text.size();) {
        const unsigned char lead = byte(i);
        std::size_t length = 0;
        std::uint32_t point = 0;
        if (lead == 0) {
            badAt = i;
            return false;
        }
        if (lead < 0x80) {
            ++i;
            continue;
        }
        if (lead >= 0xC2 && lead <= 0xDF) {
            length = 2;
            point = lead & 0x1F;
        } else if ((lead & 0xF0) == 0xE0) {
            length = 3;
            point = lead & 0x0F;
        } else if (lead >= 0xF0 && lead <= 0xF4) {
            length = 4;
            point = lead & 0x07;
        }
        bool isGood = length != 0 && i + length <= text.size();
        for (std::size_t k = 1; isGood && k < length; ++k) {
            isGood = (byte(i + k) & 0xC0) == 0x80;
            point = (point << 6) | (byte(i + k) & 0x3F);
        }
        const bool isOverlong = (length == 3 && point < 0x800) || (length == 4 && point < 0x10000);
        if (!isGood || isOverlong || (point >= 0xD800 && point <= 0xDFFF) || point > 0x10FFFF) {
            badAt = i;
            return false;
        }
        i += length;
    }
    return true;
}

int lineOf(std::string_view text, std::size_t position) {
    int line = 1;
    for (std::size_t i = 0; i < position; ++i) {
        const bool isLoneReturn = text[i] == '\r' && (i + 1 == text.size() || text[i + 1] != '\n');
        line += text[i] == '\n' || isLoneReturn ? 1 : 0;
    }
    return line;
}

char separatorOf(std::string_view text) {
    bool isQuoted = false;
    for (const char c : text) {
        if (c == '"') {
            isQuoted = !isQuoted;
        } else if (!isQuoted && c == ';') {
            return ';';
        } else if (!isQuoted && (c == '\n' || c == '\r')) {
            break;
        }
    }
    return ',';
}

/// RFC 4180 as a state machine over the whole text.
class Machine {
  public:
    Machine(std::string_view text, std::optional<char> separator, CsvResult& out) : m_text(text), m_out(out) {
        m_out.text.separator = separator.value_or(separatorOf(text));
        m_row.line = 1;
    }

    void run() {
        while (m_at < m_text.size() && m_out.failures.empty()) {
            takeOne();
        }
        if (!m_out.failures.empty()) {
            return;
        }
        if (m_state == State::Quoted) {
            fail(m_quoteLine, kCsvQuoteOpen);
        } else if (!m_row.cells.empty() || !m_cell.empty() || m_state != State::Start) {
            endRow();
        }
    }

  private:
    enum class State { Start, Plain, Quoted, AfterQuote };

    void fail(int line, const base::MessageForm& form, std::vector<std::string> arguments = {}) {
        m_out.failures.push_back({line, {&form, "", std::move(arguments)}});
    }

    void takeOne() {
        const char c = m_text[m_at++];
        if (++m_lineLength > kLongestLine) {
            fail(m_line, kCsvLineTooLong, {std::to_string(kLongestLine)});
            return;
        }
        if (c == '\n') {
            ++m_line;
            m_lineLength = 0;
        }
        if (m_state == State::Quoted) {
            takeQuoted(c);
        } else if (c == m_out.text.separator) {
            endCell();
        } else if (c == '\n' || c == '\r') {
            takeLineEnd(c);
        } else if (c == '"' && m_state == State::Start) {
            m_state = State::Quoted;
            m_quoteLine = m_line;
        } else if (m_state == State::AfterQuote || c == '"') {
            fail(m_line, kCsvQuoteMisplaced);
        } else {
            m_state = State::Plain;
            m_cell += c;
        }
    }

    void takeQuoted(char c) {
        if (c != '"') {
            m_cell += c;
        } else if (m_at < m_text.size() && m_text[m_at] == '"') {
            m_cell += '"';
            ++m_at;
        } else {
            m_state = State::AfterQuote;
        }
    }

    void takeLineEnd(char c) {
        if (c == '\r') {
            if (m_at < m_text.size() && m_text[m_at] == '\n') {
                ++m_at;
            }
            ++m_line;
            m_lineLength = 0;
        }
        endRow();
    }

    void endCell() {
        m_row.cells.push_back(std::move(m_cell));
        m_cell.clear();
        m_state = State::Start;
    }

    void endRow() {
        const bool isBlank = m_row.cells.empty() && m_cell.empty() && m_state == State::Start;
        endCell();
        if (!isBlank) {
            m_out.text.rows.push_back(std::move(m_row));
        }
        m_row = CsvRow{m_line, {}};
    }

    std::string_view m_text;
    CsvResult& m_out;
    State m_state = State::Start;
    std::size_t m_at = 0;
    std::size_t m_lineLength = 0;
    int m_line = 1;
    int m_quoteLine = 0;
    std::string m_cell;
    CsvRow m_row;
};

bool isFormulaStart(std::string_view cell) {
    if (cell.empty() || std::string_view("=+-@").find(cell.front()) == std::string_view::npos) {
        return false;
    }
    return !base::Decimal::parse(cell).ok();
}

}  // namespace

CsvResult parseCsv(std::string_view text, std::optional<char> separator) {
    CsvResult out;
    if (text.substr(0, 2) == "\xFF\xFE" || text.substr(0, 2) == "\xFE\xFF" ||
        text.substr(0, 400).find('\0') != std::string_view::npos) {
        out.failures.push_back({1, {&kCsvUtf16, "", {}}});
        return out;
    }
    if (text.starts_with(kByteOrderMark)) {
        text.remove_prefix(3);
    }
    std::size_t badAt = 0;
    if (!isUtf8(text, badAt)) {
        out.failures.push_back({lineOf(text, badAt), {&kCsvNotUtf8, "", {}}});
        return out;
    }
    Machine(text, separator, out).run();
    if (out.failures.empty() && out.text.rows.empty()) {
        out.failures.push_back({0, {&kCsvEmpty, "", {}}});
    }
    return out;
}

CsvResult readCsv(const std::filesystem::path& file) {
    CsvResult out;
    std::error_code error;
    const auto status = std::filesystem::status(file, error);
    if (!std::filesystem::exists(status)) {
        out.failures.push_back({0, {&kCsvMissing, "", {}}});
        return out;
    }
    const auto size = std::filesystem::is_regular_file(status) ? std::filesystem::file_size(file, error) : 0;
    if (size > kLargestFile_MB * 1'000'000) {
        out.failures.push_back(
            {0, {&kCsvTooLarge, "", {std::to_string(size / 1'000'000), std::to_string(kLargestFile_MB)}}});
        return out;
    }
    std::ifstream stream(file, std::ios::binary);
    std::ostringstream content;
    content << stream.rdbuf();
    if (!stream || !std::filesystem::is_regular_file(status)) {
        if (size != 0 || !std::filesystem::is_regular_file(status)) {
            out.failures.push_back(
                {0, {&kCsvUnreadable, "", {base::term("no regular file, or no permission")}}});
            return out;
        }
    }
    return parseCsv(content.str());
}

std::string guarded(const std::string& cell) {
    return isFormulaStart(cell) || (!cell.empty() && cell.front() == '\'') ? "'" + cell : cell;
}

std::string csvRecord(const std::vector<std::string>& cells) {
    std::string out;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        std::string cell = guarded(cells[i]);
        // A byte-order mark at the start of a file is none of its text, unless it stands in quotes.
        const bool startsWithMark = cell.starts_with(kByteOrderMark);
        if (startsWithMark || cell.find_first_of(",;\"\r\n") != std::string::npos ||
            (cells.size() == 1 && cell.empty())) {
            std::string quoted = "\"";
            for (const char c : cell) {
                quoted += c;
                if (c == '"') {
                    quoted += c;
                }
            }
            cell = quoted + "\"";
        }
        out += (i == 0 ? "" : ",") + cell;
    }
    return out + "\r\n";
}

std::string_view withoutGuard(std::string_view cell) {
    if (cell.size() > 1 && cell.front() == '\'' &&
        std::string_view("=+-@'").find(cell[1]) != std::string_view::npos) {
        cell.remove_prefix(1);
    }
    return cell;
}

}  // namespace ww::exchange
