// Reads the fields of one record from the columns of a row, and remembers the first that cannot be read.
// Not for choosing rows (record_reader.cpp).
#pragma once

#include <algorithm>
#include <optional>
#include <string>

#include "core/project/names.h"
#include "core/project/records.h"
#include "core/project/review_records.h"
#include "core/store/statement.h"

namespace ww::store {

/// The dimension that the units of a directly measured quantity have.
template <class Q>
struct DimensionOf;
template <class Kind>
struct DimensionOf<quantity::Quantity<Kind>> {
    static constexpr quantity::Dimension kValue = Kind::kDimension;
};
template <>
struct DimensionOf<quantity::Temperature> {
    static constexpr quantity::Dimension kValue = quantity::Dimension::Temperature;
};
template <>
struct DimensionOf<quantity::GaugePressure> {
    static constexpr quantity::Dimension kValue = quantity::Dimension::Pressure;
};

/// Takes the columns in order; the statement must select those that ColumnNames lists.
class RowDecoder {
  public:
    RowDecoder(const Statement& row, quantity::Density density) : m_row(row), m_density(density) {}

    void field(const char* column, project::Id& id) {
        const ByteSpan bytes = m_row.blob(m_next++);
        if (bytes.size() != id.bytes.size()) {
            fail(column);
            return;
        }
        std::copy(bytes.begin(), bytes.end(), id.bytes.begin());
    }
    void field(const char*, int& number) { number = static_cast<int>(m_row.integer(m_next++)); }
    void field(const char*, bool& isSet) { isSet = m_row.integer(m_next++) != 0; }
    void field(const char*, std::string& text) { text = m_row.text(m_next++); }
    void field(const char*, base::SharedBytes& content) {
        const ByteSpan bytes = m_row.blob(m_next++);
        content = base::SharedBytes(std::vector<std::uint8_t>(bytes.begin(), bytes.end()));
    }
    void field(const char* column, project::Decimal& digits) {
        if (auto parsed = base::Decimal::parse(m_row.text(m_next++))) {
            digits = std::move(*parsed);
        } else {
            fail(column);
        }
    }
    void field(const char* column, quantity::Unit& unit) {
        if (const auto found = unitOf(m_row.text(m_next++))) {
            unit = *found;
        } else {
            fail(column);
        }
    }
    template <class E>
    requires std::is_enum_v<E>
    void field(const char* column, E& word) {
        if (const auto found = project::fromName<E>(m_row.text(m_next++))) {
            word = *found;
        } else {
            fail(column);
        }
    }
    template <class Q>
    void field(const char* column, quantity::Measured<Q>& value) {
        field(column, value.digits);
        field(column, value.unit);
        if (!isFor<Q>(value.unit)) {
            fail(column);
            return;
        }
        resolve(value);
    }
    template <class Q>
    void field(const char* column, std::optional<quantity::Measured<Q>>& value) {
        if (m_row.isNull(m_next)) {
            value.reset();
            m_next += 2;
            return;
        }
        field(column, value.emplace());
    }
    void field(const char*, std::optional<base::Instant>& moment) {
        if (m_row.isNull(m_next)) {
            moment.reset();
            m_next += 2;
            return;
        }
        moment.emplace().seconds = m_row.integer(m_next++);
        if (!m_row.isNull(m_next)) {
            moment->zoneMinutes = static_cast<std::int16_t>(m_row.integer(m_next));
        }
        ++m_next;
    }
    template <class T>
    void field(const char* column, std::optional<T>& value) {
        if (m_row.isNull(m_next)) {
            value.reset();
            ++m_next;
            return;
        }
        field(column, value.emplace());
    }

    /// The first column that could not be read; null where all could.
    const char* failedColumn() const { return m_failed; }

  private:
    /// Symbols are stored exactly as the table of units writes them.
    static std::optional<quantity::Unit> unitOf(std::string_view symbol) {
        for (const quantity::UnitRow& row : quantity::unitTable()) {
            if (row.symbol == symbol) {
                return row.unit;
            }
        }
        return std::nullopt;
    }
    template <class Q>
    static bool isFor(quantity::Unit unit) {
        constexpr bool kMayBeHead = std::is_same_v<Q, quantity::PressureDifference> ||
                                    std::is_same_v<Q, quantity::GaugePressure> ||
                                    std::is_same_v<Q, quantity::Head>;
        const quantity::Dimension dimension = quantity::dimension(unit);
        return dimension == DimensionOf<Q>::kValue ||
               (kMayBeHead &&
                (dimension == quantity::Dimension::Length || dimension == quantity::Dimension::Pressure));
    }
    template <class Q>
    void resolve(quantity::Measured<Q>& value) {
        if constexpr (std::is_same_v<Q, quantity::PressureDifference>) {
            value = quantity::measuredDifference(std::move(value.digits), value.unit, m_density);
        } else if constexpr (std::is_same_v<Q, quantity::GaugePressure>) {
            value = quantity::measuredGauge(std::move(value.digits), value.unit, m_density);
        } else if constexpr (std::is_same_v<Q, quantity::Head>) {
            value = quantity::measuredHead(std::move(value.digits), value.unit, m_density);
        } else {
            value.value = Q::from(value.digits.value(), value.unit);
        }
    }
    void fail(const char* column) {
        if (m_failed == nullptr) {
            m_failed = column;
        }
    }

    const Statement& m_row;
    quantity::Density m_density;
    int m_next = 0;
    const char* m_failed = nullptr;
};

}  // namespace ww::store
