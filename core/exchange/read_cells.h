// Reads the columns of a record (record_columns.h) from the cells of a CSV table's row.
#pragma once

#include "core/exchange/import_context.h"
#include "core/exchange/name_cell.h"
#include "core/exchange/record_columns.h"

namespace ww::exchange {

/// A cell that is empty or at fault leaves the member as it is.
class ReadCells {
  public:
    ReadCells(TableReader& table, ImportContext& context) : m_table(table), m_context(context) {}

    void cell(const char* column, std::string& text) { text = m_table.text(column); }
    void cell(const char* column, bool& value) { value = m_table.yesNo(column, value); }
    void cell(const char* column, int& number);
    void cell(const char* column, base::Decimal& number);
    void cell(const char* column, std::optional<base::Decimal>& number) {
        number = m_table.decimal(column, Sign::Any);
    }
    void cell(const char* column, std::optional<base::Instant>& moment) { moment = m_table.instant(column); }
    template <class Enumeration>
    requires std::is_enum_v<Enumeration>
    void cell(const char* column, Enumeration& word) {
        word = nameCell<Enumeration>(m_table, column).value_or(word);
    }
    template <class Q>
    void cell(const char* column, std::optional<Measured<Q>>& value, Sign sign) {
        if constexpr (std::same_as<Q, quantity::PressureDifference>) {
            value = m_table.difference(column, sign, m_context.density);
        } else if constexpr (std::same_as<Q, quantity::GaugePressure>) {
            const auto got = m_table.entered(column, sign);
            if (got) {
                value = quantity::measuredGauge(got->digits, got->unit, m_context.density);
            }
        } else {
            value = m_table.measured<Q>(column, sign);
        }
    }
    void refers(const char* column, RecordKind kind, std::optional<base::Id>& id);
    void record(const char* column, RecordKind kind, base::Id& id);
    void file(const char* column, base::SharedBytes& bytes, const std::string& name);

  private:
    TableReader& m_table;
    ImportContext& m_context;
};

}  // namespace ww::exchange
