// A balance report as data: sections with statements, tables and figures. Not for drawing (ui/report).
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/balancing/assessment.h"
#include "core/project/project.h"

namespace ww::report {

/// A sentence of the report: text with its arguments, translated where it is drawn.
using Statement = base::Fault;

enum class Alignment { Left, Right, Center };
struct Column {
    base::Fault heading;  ///< words and, below them, the unit
    std::string unit;
    Alignment alignment = Alignment::Left;
    double widthShare = 1.0;  ///< share of the page width
};
struct Cell {
    std::string text;
    std::optional<balancing::State> state;  ///< drawn as shape and word
    bool isStruck = false;
};
struct Table {
    base::Fault title;
    std::vector<Column> columns;
    std::vector<std::vector<Cell>> rows;
    std::vector<Cell> totals;  ///< empty: no last line
    bool isLandscape = false;
};
/// What a figure shows; the numbers are taken from the report's project and assessments.
enum class FigureKind { PumpAndSystem, Convergence };
struct Figure {
    FigureKind kind{};
    base::Fault title;
    base::Fault reading;  ///< one sentence that says what it shows
};
struct Section {
    int number = 0;
    base::Fault title;
    std::vector<Statement> statements;
    std::vector<Figure> figures;
    std::vector<Table> tables;
};

struct ReportOptions {
    std::optional<int> round;  ///< the round reported as the last; nothing: the highest number
    std::string journalDigest;  ///< of the workbook's newest record, hexadecimal
    std::string workbookId;
    base::Instant printed;
};

struct Report {
    std::string jobName;
    std::vector<std::string> titleLines;  ///< system, site, client, dates, people
    bool isDraft = true;
    std::vector<Section> sections;
    std::string digest;  ///< first 12 digits of the journal digest, for the footer
    int roundNumber = 0;
    std::vector<balancing::Assessment> rounds;  ///< every round up to the reported one, for the figures
};

/// Builds the report. Pure; equal input gives an equal report.
Report build(const project::Project& project, const ReportOptions& options);

}  // namespace ww::report
