// Rows that belong to one record, with an empty one behind them in which the next is begun. A row is stored
// as soon as it is whole; until then it is kept here. Not for records of their own (record_table.h).
#pragma once

#include <functional>
#include <map>
#include <vector>

#include "ui/models/record_field.h"

namespace ww::ui {

inline constexpr base::MessageForm kRowIncomplete{
    "row_incomplete", "a row needs {1}; type it, or take the whole row out with its button"};

inline constexpr base::MessageForm kRowBegun{
    "row_begun", "the row with {1} has no {2}; type it, or take the row out with its button"};

/// `Row`: a value whose members may all be empty.
template <class Row>
class RowSheet {
  public:
    struct Content {
        std::vector<RecordField<Row>> fields;
        std::function<std::vector<Row>()> rows;  ///< as stored
        std::vector<int> needed;                 ///< the fields that make a row whole
        QString needs;                           ///< the same in words
        /// Whose rows these are; nothing: nobody's, and there are none.
        std::function<std::optional<base::Id>()> owner;
        std::function<base::Outcome(const std::vector<Row>& rows)> store;
    };

    explicit RowSheet(Content content) : m_content(std::move(content)) {}

    QStringList titles() const { return titlesOf(m_content.fields); }
    int rowCount() const { return m_content.owner() ? begunRow() + 1 : 0; }

    QString text(const project::Project& project, int row, int column) const {
        const std::vector<Row> rows = m_content.rows();
        const auto at = static_cast<std::size_t>(row);
        return m_content.fields[static_cast<std::size_t>(column)].text(project,
                                                                       at < rows.size() ? rows[at] : begun());
    }

    /// Whether there is anything in a row.
    bool holds(const project::Project& project, int row) const {
        const auto count = static_cast<int>(m_content.fields.size());
        for (int column = 0; column < count; ++column) {
            if (!text(project, row, column).isEmpty()) {
                return true;
            }
        }
        return false;
    }

    /// The row that was begun.
    int begunRow() const { return static_cast<int>(m_content.rows().size()); }

    /// The first field that the row begun lacks to be whole; -1 where it lacks none, or nothing is begun.
    int missing(const project::Project& project) const {
        return holds(project, begunRow()) ? missingIn(project, begun()) : -1;
    }

    /// What is to be said of a row that was begun and left; nothing where none was.
    std::optional<base::Fault> faultOfBegun(const project::Project& project) const {
        const int lacks = missing(project);
        if (lacks < 0) {
            return {};
        }
        QString stands;
        for (int column = 0; stands.isEmpty(); ++column) {
            const QString value = text(project, begunRow(), column);
            stands = value.isEmpty() ? QString() : titles()[column] + QStringLiteral(" ") + value;
        }
        return base::Fault{&kRowBegun, {}, {stands.toStdString(), titles()[lacks].toStdString()}};
    }

    base::Outcome take(const project::Project& project, int row, int column, const QString& typed) {
        std::vector<Row> rows = m_content.rows();
        const auto at = static_cast<std::size_t>(row);
        const bool isNew = at >= rows.size();
        Row changed = isNew ? begun() : rows[at];
        const RecordField<Row>& field = m_content.fields[static_cast<std::size_t>(column)];
        if (auto refusal = field.take(project, changed, typed.trimmed())) {
            return *refusal;
        }
        if (missingIn(project, changed) >= 0) {
            if (!isNew) {
                return base::Fault{&kRowIncomplete, {}, {m_content.needs.toStdString()}};
            }
            m_begun[ownerText()] = std::move(changed);
            return base::Done{};
        }
        if (isNew) {
            rows.push_back(std::move(changed));
        } else {
            rows[at] = std::move(changed);
        }
        const base::Outcome done = m_content.store(rows);
        if (done && isNew) {
            m_begun.erase(ownerText());
        }
        return done;
    }

    /// Takes a stored row out, or empties the one that was begun.
    base::Outcome remove(int row) {
        std::vector<Row> rows = m_content.rows();
        const auto at = static_cast<std::size_t>(row);
        if (at >= rows.size()) {
            m_begun.erase(ownerText());
            return base::Done{};
        }
        rows.erase(rows.begin() + row);
        return m_content.store(rows);
    }

  private:
    std::string ownerText() const {
        const auto owner = m_content.owner();
        return owner ? owner->text() : std::string();
    }
    Row begun() const {
        const auto found = m_begun.find(ownerText());
        return found != m_begun.end() ? found->second : Row{};
    }
    int missingIn(const project::Project& project, const Row& row) const {
        for (const int column : m_content.needed) {
            if (m_content.fields[static_cast<std::size_t>(column)].text(project, row).isEmpty()) {
                return column;
            }
        }
        return -1;
    }

    Content m_content;
    std::map<std::string, Row> m_begun;  ///< by owner: what is begun stays with it
};

}  // namespace ww::ui
