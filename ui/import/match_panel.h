// Our columns beside those of a person's table: which is which, and in which unit. Not for the rows.
#pragma once

#include <QComboBox>
#include <QGridLayout>
#include <QWidget>
#include <vector>

#include "core/exchange/table_mapping.h"

namespace ww::ui {

class MatchPanel : public QWidget {
    Q_OBJECT

  public:
    explicit MatchPanel(QWidget* parent = nullptr);

    /// Columns and headings anew, set as the mapping says. `constants` are texts that a column may have in
    /// every row without a column of theirs, by our name: numbers or words of the program, which are shown
    /// translated.
    void show(const exchange::SourceTable& table, const exchange::TableMapping& mapping,
              const std::map<std::string, std::string>& constants);
    const exchange::TableMapping& mapping() const { return m_mapping; }
    QComboBox* sourceOf(const std::string& column) const;
    QComboBox* unitOf(const std::string& column) const;

  signals:
    void matched();

  private:
    void take();

    struct Line {
        std::string name;
        QComboBox* source;
        QComboBox* unit;  ///< null: the column has none
        std::string constant;
    };
    QWidget* m_inside = nullptr;
    exchange::SourceTable m_table;
    exchange::TableMapping m_mapping;
    std::vector<Line> m_lines;
};

}  // namespace ww::ui
