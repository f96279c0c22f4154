#include "core/store/changeset_form.h"

#include <cstdint>

namespace ww::store {

namespace {

// The bytes of the format: a table's head, the operations (SQLITE_INSERT, SQLITE_DELETE, SQLITE_UPDATE), and
// the types of values.
constexpr std::uint8_t kTable = 'T';
constexpr std::uint8_t kInsert = 18;
constexpr std::uint8_t kDelete = 9;
constexpr std::uint8_t kUpdate = 23;
constexpr std::uint8_t kUndefined = 0;
constexpr std::uint8_t kInteger = 1;
constexpr std::uint8_t kReal = 2;
constexpr std::uint8_t kText = 3;
constexpr std::uint8_t kBlob = 4;
constexpr std::uint8_t kNull = 5;
constexpr std::uint64_t kMostColumns = 100;

/// Goes through the bytes from front to back; every step says whether what it needs is there.
class Walk {
  public:
    explicit Walk(ByteSpan bytes) : m_rest(bytes) {}

    bool isAtEnd() const { return m_rest.empty(); }

    /// Goes over a table's head or one row.
    bool part() {
        std::uint8_t head = 0;
        byte(head);
        const bool isRow = head == kInsert || head == kDelete || head == kUpdate;
        return head == kTable ? table() : isRow && row(head);
    }

    /// The name of the table whose head was walked last.
    std::string_view tableName() const { return m_table; }
    ByteSpan rest() const { return m_rest; }

  private:
    bool table() {
        std::uint64_t columns = 0;
        if (!number(columns) || columns == 0 || columns > kMostColumns || !skip(columns)) {
            return false;
        }
        m_columns = columns;
        const ByteSpan name = m_rest;
        std::uint8_t letter = 1;
        std::size_t length = 0;
        while (byte(letter) && letter != 0) {
            ++length;
        }
        m_table = {reinterpret_cast<const char*>(name.data()), length};
        return letter == 0 && length > 0;
    }

    bool row(std::uint8_t operation) {
        std::uint8_t isIndirect = 0;
        if (m_columns == 0 || !byte(isIndirect)) {
            return false;
        }
        return values() && (operation != kUpdate || values());
    }

    bool byte(std::uint8_t& value) {
        if (m_rest.empty()) {
            return false;
        }
        value = m_rest.front();
        m_rest = m_rest.subspan(1);
        return true;
    }
    bool skip(std::uint64_t count) {
        if (count > m_rest.size()) {
            return false;
        }
        m_rest = m_rest.subspan(static_cast<std::size_t>(count));
        return true;
    }
    /// SQLite's number of variable length: seven bits a byte, most significant first; lengths need five at
    /// most.
    bool number(std::uint64_t& value) {
        value = 0;
        for (int i = 0; i < 5; ++i) {
            std::uint8_t next = 0;
            if (!byte(next)) {
                return false;
            }
            value = (value << 7) | (next & 0x7Fu);
            if ((next & 0x80u) == 0) {
                return true;
            }
        }
        return false;
    }
    bool value() {
        std::uint8_t type = 0;
        if (!byte(type)) {
            return false;
        }
        std::uint64_t length = 0;
        switch (type) {
            case kUndefined:
            case kNull:
                return true;
            case kInteger:
            case kReal:
                return skip(8);
            case kText:
            case kBlob:
                return number(length) && skip(length);
            default:
                return false;
        }
    }
    bool values() {
        for (std::uint64_t i = 0; i < m_columns; ++i) {
            if (!value()) {
                return false;
            }
        }
        return true;
    }

    ByteSpan m_rest;
    std::uint64_t m_columns = 0;
    std::string_view m_table;
};

}  // namespace

bool isChangeset(ByteSpan bytes) {
    Walk walk(bytes);
    while (!walk.isAtEnd()) {
        if (!walk.part()) {
            return false;
        }
    }
    return true;
}

std::vector<std::uint8_t> changesOfTables(ByteSpan changeset,
                                          const std::function<bool(std::string_view table)>& isWanted) {
    std::vector<std::uint8_t> wanted;
    Walk walk(changeset);
    std::string_view table;
    bool isTaken = false;
    while (!walk.isAtEnd()) {
        const ByteSpan from = walk.rest();
        if (!walk.part()) {
            return {};
        }
        if (walk.tableName().data() != table.data()) {
            table = walk.tableName();
            isTaken = isWanted(table);
        }
        if (isTaken) {
            const ByteSpan part = from.first(from.size() - walk.rest().size());
            wanted.insert(wanted.end(), part.begin(), part.end());
        }
    }
    return wanted;
}

}  // namespace ww::store
