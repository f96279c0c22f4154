#include "ui/import/match_panel.h"

#include <QLabel>
#include <QVBoxLayout>

#include "ui/text/column_words.h"
#include "ui/text/words.h"
#include "ui/widgets/quiet_combo.h"

namespace ww::ui {

namespace {

constexpr int kNoColumn = -1;
constexpr int kNoUnit = -1;

QComboBox* unitChoice(const exchange::ColumnSpec& column, std::optional<quantity::Unit> chosen,
                      QWidget* parent) {
    auto* box = new QuietCombo(parent);
    box->addItem(MatchPanel::tr("choose a unit"), kNoUnit);
    for (const quantity::UnitRow& row : quantity::unitTable()) {
        if (exchange::unitFor(row.symbol, *column.dimension, column.name) == row.unit) {
            box->addItem(QString::fromUtf8(row.symbol.data(), static_cast<int>(row.symbol.size())),
                         static_cast<int>(row.unit));
        }
    }
    box->setCurrentIndex(std::max(0, chosen ? box->findData(static_cast<int>(*chosen)) : 0));
    return box;
}

}  // namespace

MatchPanel::MatchPanel(QWidget* parent) : QWidget(parent) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
}

void MatchPanel::show(const exchange::SourceTable& table, const exchange::TableMapping& mapping,
                      const std::map<std::string, std::string>& constants) {
    m_table = table;
    m_mapping = mapping;
    m_lines.clear();
    delete m_inside;
    m_inside = new QWidget(this);
    layout()->addWidget(m_inside);
    auto* grid = new QGridLayout(m_inside);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setColumnStretch(0, 1);
    grid->setColumnStretch(1, 2);
    const auto columns = exchange::columnsOfTable(mapping.file);
    const auto& rows = table.text.rows;
    const std::vector<std::string> headings =
        mapping.headRow < rows.size() ? rows[mapping.headRow].cells : std::vector<std::string>{};
    for (std::size_t i = 0; i < columns.size(); ++i) {
        const std::string name(columns[i].name);
        const QString shown = text::columnWords(name);
        auto* source = new QuietCombo(m_inside);
        const auto constant = constants.find(name);
        const bool hasConstant = constant != constants.end();
        source->addItem(hasConstant             ? text::term(constant->second)
                        : columns[i].isRequired ? tr("choose a column")
                                                : tr("not in this table"),
                        kNoColumn);
        for (std::size_t k = 0; k < headings.size(); ++k) {
            if (!headings[k].empty()) {
                source->addItem(QString::fromStdString(headings[k]), static_cast<int>(k));
            }
        }
        const auto& match = mapping.columns[i];
        source->setCurrentIndex(
            std::max(0, match.source ? source->findData(static_cast<int>(*match.source)) : 0));
        // A person's headings may be of any length.
        constexpr int kLettersOfHeading = 14;
        source->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        source->setMinimumContentsLength(kLettersOfHeading);
        source->setAccessibleName(tr("Column for %1").arg(shown));
        auto* label = new QLabel(columns[i].isRequired ? shown + QStringLiteral(" *") : shown, m_inside);
        label->setBuddy(source);
        label->setWordWrap(true);
        QComboBox* unit = columns[i].dimension ? unitChoice(columns[i], match.unit, m_inside) : nullptr;
        const int line = static_cast<int>(i);
        grid->addWidget(label, line, 0);
        grid->addWidget(source, line, 1);
        if (unit != nullptr) {
            unit->setAccessibleName(tr("Unit of %1").arg(shown));
            grid->addWidget(unit, line, 2);
            connect(unit, &QComboBox::currentIndexChanged, this, &MatchPanel::take);
        }
        if (m_lines.empty()) {
            setFocusProxy(source);
        }
        m_lines.push_back({name, source, unit, hasConstant ? constant->second : std::string()});
        connect(source, &QComboBox::currentIndexChanged, this, [this, i, column = columns[i]] {
            // A unit in the new heading is the one that is meant.
            const Line& changed = m_lines[i];
            const int at = changed.source->currentData().toInt();
            if (changed.unit != nullptr && at != kNoColumn) {
                const auto& names = m_table.text.rows[m_mapping.headRow].cells;
                const auto said = exchange::unitInHeading(names[static_cast<std::size_t>(at)], column);
                if (said) {
                    changed.unit->setCurrentIndex(changed.unit->findData(static_cast<int>(*said)));
                }
            }
            take();
        });
    }
    take();
}

void MatchPanel::take() {
    for (std::size_t i = 0; i < m_lines.size(); ++i) {
        const Line& line = m_lines[i];
        exchange::ColumnMatch match;
        const int at = line.source->currentData().toInt();
        if (at != kNoColumn) {
            match.source = static_cast<std::size_t>(at);
        } else {
            match.constant = line.constant;
        }
        if (line.unit != nullptr) {
            line.unit->setEnabled(at != kNoColumn);
            const int unit = line.unit->currentData().toInt();
            if (at != kNoColumn && unit != kNoUnit) {
                match.unit = static_cast<quantity::Unit>(unit);
            }
        }
        m_mapping.columns[i] = match;
    }
    emit matched();
}

QComboBox* MatchPanel::sourceOf(const std::string& column) const {
    for (const Line& line : m_lines) {
        if (line.name == column) {
            return line.source;
        }
    }
    return nullptr;
}

QComboBox* MatchPanel::unitOf(const std::string& column) const {
    for (const Line& line : m_lines) {
        if (line.name == column) {
            return line.unit;
        }
    }
    return nullptr;
}

}  // namespace ww::ui
