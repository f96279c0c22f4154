// The cells of a report's table for a view, made into words when they are asked for; upright, or a line for
// each value. Not for typing, nor for widths and heights (section_table.h).
#pragma once

#include <QAbstractTableModel>
#include <QFontMetrics>
#include <vector>

#include "core/report/report.h"

namespace ww::ui {

class SectionTableModel : public QAbstractTableModel {
    Q_OBJECT

  public:
    using QAbstractTableModel::QAbstractTableModel;

    /// Shows another table, upright.
    void show(ww::report::Table table);
    /// Lays each row out as a block of lines, a head and its value in each; or upright again.
    void setAsLines(bool isAsLines);
    bool isAsLines() const { return m_isAsLines; }
    const ww::report::Table& table() const { return m_table; }

    /// The widest word of each column of the upright table, px; heads are written with `ofHeads`, cells with
    /// `ofCells`. Of a long table only the cells that are longest by the widths of their letters are
    /// measured.
    std::vector<int> widestWords(const QFontMetrics& ofHeads, const QFontMetrics& ofCells) const;
    /// The widest word of all heads, px.
    int widestHead(const QFontMetrics& ofHeads) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

  private:
    QString headOf(std::size_t column, QChar between) const;
    QString wordsOf(std::size_t row, std::size_t column) const;
    /// What a screen reader says of a cell: its row, its column, its words.
    QString spoken(std::size_t row, std::size_t column) const;
    QVariant uprightData(std::size_t row, std::size_t column, int role) const;
    QVariant lineData(std::size_t line, bool isHead, int role) const;
    Qt::Alignment sideOf(std::size_t column) const;

    ww::report::Table m_table;
    bool m_isAsLines = false;
};

}  // namespace ww::ui
