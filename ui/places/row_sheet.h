// Rows that belong to one record, with an empty one behind them in which the next is begun. A row is stored
// as soon as it is whole; until then it is kept here. Not for records of their own (record_table.h).
#pragma once

#include <functional>
#include <vector>

#include "ui/models/record_field.h"

namespace ww::ui {

inline constexpr base::MessageForm kRowIncomplete{
    "row_incomplete", "a row needs {1}; type it, or take the whole row out with its button"};

/// `Row`: a value whose members may all be empty.
template <class Row>
class RowSheet {
  public:
    struct Content {
        std::vector<RecordField<Row>> fields;
        std::function<std::vector<Row>()> rows;  ///< as stored
        std::function<bool(const Row& row)> isWhole;
        QString needs;  ///< what makes a row whole, in words
        std::function<base::Outcome(const std::vector<Row>& rows)> store;
    };

    explicit RowSheet(Content content) : m_content(std::move(content)) {}

    QStringList titles() const { return titlesOf(m_content.fields); }
    int rowCount() const { return static_cast<int>(m_content.rows().size()) + 1; }

    QString text(const project::Project& project, int row, int column) const {
        const std::vector<Row> rows = m_content.rows();
        const auto at = static_cast<std::size_t>(row);
        return m_content.fields[static_cast<std::size_t>(column)].text(project,
                                                                       at < rows.size() ? rows[at] : m_begun);
    }

    base::Outcome take(const project::Project& project, int row, int column, const QString& typed) {
        std::vector<Row> rows = m_content.rows();
        const auto at = static_cast<std::size_t>(row);
        const bool isNew = at >= rows.size();
        Row changed = isNew ? m_begun : rows[at];
        const RecordField<Row>& field = m_content.fields[static_cast<std::size_t>(column)];
        if (auto refusal = field.take(project, changed, typed.trimmed())) {
            return *refusal;
        }
        if (!m_content.isWhole(changed)) {
            if (!isNew) {
                return base::Fault{&kRowIncomplete, {}, {m_content.needs.toStdString()}};
            }
            m_begun = std::move(changed);
            return base::Done{};
        }
        if (isNew) {
            rows.push_back(std::move(changed));
        } else {
            rows[at] = std::move(changed);
        }
        const base::Outcome done = m_content.store(rows);
        if (done && isNew) {
            m_begun = Row{};
        }
        return done;
    }

    /// Takes a stored row out, or empties the one that was begun.
    base::Outcome remove(int row) {
        std::vector<Row> rows = m_content.rows();
        const auto at = static_cast<std::size_t>(row);
        if (at >= rows.size()) {
            m_begun = Row{};
            return base::Done{};
        }
        rows.erase(rows.begin() + row);
        return m_content.store(rows);
    }

  private:
    Content m_content;
    Row m_begun;
};

}  // namespace ww::ui
