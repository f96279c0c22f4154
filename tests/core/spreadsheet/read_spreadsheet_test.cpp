// Cells of every kind as ISO/IEC 29500-1, 18.3.1.4 writes them, and as another program wrote them
// (tests/data/spreadsheets/README.md).
#include "core/spreadsheet/read_spreadsheet.h"

#include <gtest/gtest.h>

#include <random>

#include "core/spreadsheet/cell_name.h"
#include "core/spreadsheet/spreadsheet_messages.h"
#include "tests/support/detail/packed_parts.h"
#include "tests/support/temporary_folder.h"

namespace ww::spreadsheet {
namespace {

using support::SmallBook;

/// The texts of the cells of the first sheet by name; a fault by its code, a suffix behind a bar.
std::map<std::string, std::string> cellsOf(const std::string& file) {
    std::map<std::string, std::string> out;
    const auto sheets = readSpreadsheet(file);
    if (!sheets) {
        ADD_FAILURE() << base::english(sheets.fault());
        return out;
    }
    for (const ReadRow& row : sheets->front().rows) {
        for (const ReadCell& cell : row.cells) {
            std::string text = cell.text;
            if (cell.remark) {
                text +=
                    cell.remark->fault ? std::string(cell.remark->fault->code()) : "|" + cell.remark->suffix;
            }
            out[cellName({row.number, cell.column})] = text;
        }
    }
    return out;
}

std::map<std::string, std::string> cellsOf(const SmallBook& book) {
    const support::TemporaryFolder folder;
    return cellsOf(book.writeTo(folder.file("book.xlsx")));
}

using Cells = std::map<std::string, std::string>;

TEST(ReadSpreadsheet, ReadsWhatAnotherProgramWrote) {
    const Cells cells = cellsOf(std::string(WW_SOURCE_DIR) + "/tests/data/spreadsheets/cells.xlsx");
    EXPECT_EQ(cells.at("B2"), "0.3");
    EXPECT_EQ(cells.at("B3"), "12.50");
    EXPECT_EQ(cells.at("B4"), "7.0|%");
    EXPECT_EQ(cells.at("B5"), "2026-03-04");
    EXPECT_EQ(cells.at("B6"), "2026-03-04T14:02:07");
    EXPECT_EQ(cells.at("B7"), "1.8|psi");
    EXPECT_EQ(cells.at("B8"), "TRUE");
    EXPECT_EQ(cells.at("B9"), "north wing, 2nd");
    EXPECT_EQ(cells.at("B10"), "T1");
    EXPECT_EQ(cells.at("B11"), "cell_broken");
    EXPECT_EQ(cells.at("B12"), "0.000012");
    EXPECT_FALSE(cells.contains("A13"));
    EXPECT_EQ(cells.at("B16"), "=SUM(1)");
}

TEST(ReadSpreadsheet, TakesStringsOfEveryForm) {
    const Cells cells = cellsOf(SmallBook{
        .rows = "<row r=\"2\"><c r=\"B2\" t=\"s\"><v>0</v></c><c r=\"C2\" t=\"s\"><v>1</v></c>"
                "<c t=\"inlineStr\"><is><r><t>in</t></r><r><t> line</t></r><rPh><t>no</t></rPh></is></c>"
                "<c t=\"str\"><f>X</f><v>result</v></c><c t=\"s\"><v>9</v></c></row>"
                "<row><c t=\"str\"><v>_x0041_b_x000a_c_x005F_x0041_</v></c></row>",
        .strings = "<si><t xml:space=\"preserve\"> plain </t></si><si><r><rPr/><t>ri</t></r><r><t>ch</t></r>"
                   "<rPh><t>spoken</t></rPh></si>"});
    EXPECT_EQ(cells, (Cells{{"B2", " plain "},
                            {"C2", "rich"},
                            {"D2", "in line"},
                            {"E2", "result"},
                            {"F2", "cell_broken"},
                            {"A3", "Ab\nc_x0041_"}}));
}

TEST(ReadSpreadsheet, TakesNumbersTruthsDatesAndErrors) {
    const Cells cells = cellsOf(SmallBook{
        .rows = "<row r=\"1\"><c><v>0.30000000000000004</v></c><c s=\"1\"><v>44623.584803240738</v></c>"
                "<c t=\"b\"><v>0</v></c><c t=\"e\"><f>A1</f><v>#REF!</v></c>"
                "<c t=\"d\"><v>2026-03-04T14:02:07.250Z</v></c><c><f>A1</f></c><c><v>1e400</v></c>"
                "<c s=\"99\"><v>5</v></c><c s=\"2\"><v>-3</v></c><c s=\"1\"/><c><v>nan</v></c></row>",
        .numberFormats = "<numFmt numFmtId=\"170\" formatCode=\"yyyy\\-mm\\-dd hh:mm&quot;Z&quot;\"/>",
        .cellStyles = "<xf numFmtId=\"0\"/><xf numFmtId=\"170\"/><xf numFmtId=\"14\"/>",
        .bookSettings = "date1904=\"1\""});
    EXPECT_EQ(cells, (Cells{{"A1", "0.3"},
                            {"B1", "2026-03-04T14:02:07Z"},
                            {"C1", "FALSE"},
                            {"D1", "cell_broken"},
                            {"E1", "2026-03-04T14:02:07Z"},
                            {"F1", "cell_without_result"},
                            {"G1", "cell_broken"},
                            {"H1", "5"},
                            {"I1", "cell_broken"},
                            {"K1", "cell_broken"}}));
}

std::string codeOf(const std::string& file) {
    const auto sheets = readSpreadsheet(file);
    return sheets ? "read" : std::string(sheets.fault().code());
}

std::string codeOf(const SmallBook& book) {
    const support::TemporaryFolder folder;
    return codeOf(book.writeTo(folder.file("book.xlsx")));
}

TEST(ReadSpreadsheet, RefusesWhatIsNoSpreadsheet) {
    const support::TemporaryFolder folder;
    EXPECT_EQ(codeOf(folder.file("none.xlsx")), "spreadsheet_missing");
    EXPECT_EQ(codeOf(folder.path().string()), "spreadsheet_missing");
    EXPECT_EQ(codeOf(folder.write("text.xlsx", "tag,dp\n")), "no_spreadsheet");
    EXPECT_EQ(codeOf(folder.write("old.xlsx", "\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1 and more")),
              "spreadsheet_old_or_locked");
    support::writePacked(folder.file("other.xlsx"), {{"hello.txt", "hello"}});
    EXPECT_EQ(codeOf(folder.file("other.xlsx")), "spreadsheet_part_missing");
    support::Parts parts = SmallBook{}.parts();
    parts.pop_back();
    support::writePacked(folder.file("half.xlsx"), parts);
    EXPECT_EQ(codeOf(folder.file("half.xlsx")), "spreadsheet_part_missing");
    SmallBook{.rows = "<row r=\"1\"><c><v>1</v></c></row>"}.writeTo(folder.file("whole.xlsx"));
    const std::string bytes = folder.read("whole.xlsx");
    for (std::size_t length = 0; length < bytes.size(); length += 7) {
        EXPECT_NE(codeOf(folder.write("cut.xlsx", bytes.substr(0, length))), "read") << length;
    }
}

TEST(ReadSpreadsheet, RefusesADocumentTypeAndSoEveryEntityOfItsOwn) {
    EXPECT_EQ(codeOf(SmallBook{.rows = "<row><c t=\"str\"><v>&a;</v></c></row>",
                               .sheetHead = "<!DOCTYPE worksheet [<!ENTITY a \"aaaa\">]>"}),
              "spreadsheet_doctype");
    EXPECT_EQ(codeOf(SmallBook{.rows = "<row><c t=\"str\"><v>x</v></c></row>",
                               .sheetHead = "<!DOCTYPE worksheet SYSTEM \"file:///etc/hostname\">"}),
              "spreadsheet_doctype");
    EXPECT_EQ(codeOf(SmallBook{.rows = "<row><c t=\"str\"><v>&a;</v></c></row>"}), "spreadsheet_part_broken");
}

TEST(ReadSpreadsheet, RefusesWhatUnpacksBeyondMeasure) {
    // Blanks between elements: 40 MB that pack to some ten thousand bytes.
    EXPECT_EQ(codeOf(SmallBook{.rows = std::string(40'000'000, ' ')}), "spreadsheet_unpacks_too_large");
}

TEST(ReadSpreadsheet, RefusesAbsurdPlaces) {
    for (const char* rows :
         {"<row r=\"1048577\"/>", "<row r=\"-1\"/>", "<row r=\"0\"/>", "<row r=\"99999999999\"/>",
          "<row r=\"2\"/><row r=\"2\"/>", "<row r=\"1\"><c r=\"A2\"><v>1</v></c></row>",
          "<row r=\"1\"><c r=\"B1\"><v>1</v></c><c r=\"A1\"><v>1</v></c></row>",
          "<row r=\"1\"><c r=\"XFE1\"><v>1</v></c></row>"}) {
        EXPECT_EQ(codeOf(SmallBook{.rows = rows}), "spreadsheet_part_broken") << rows;
    }
    EXPECT_EQ(codeOf(SmallBook{.rows = "<row r=\"1\"><c r=\"XFD1\"><v>1</v></c></row>"}), "sheet_too_wide");
    EXPECT_EQ(codeOf(SmallBook{.rows = "<row r=\"1\"><c r=\"XFD1\"/></row>"}), "read");
}

TEST(ReadSpreadsheet, RefusesTextRepeatedBeyondMeasure) {
    std::string rows;
    for (int row = 1; row <= 300; ++row) {
        rows += "<row><c t=\"s\"><v>0</v></c></row>";
    }
    EXPECT_EQ(
        codeOf(SmallBook{.rows = rows, .strings = "<si><t>" + std::string(1'000'000, 'x') + "</t></si>"}),
        "sheet_too_much");
}

TEST(ReadSpreadsheet, IsReadOrRefusedWhateverABadPartHolds) {
    const support::TemporaryFolder folder;
    const SmallBook book{
        .rows =
            "<row r=\"1\"><c r=\"A1\" t=\"s\"><v>0</v></c><c s=\"1\"><v>44623.5</v></c>"
            "<c t=\"b\"><v>1</v></c></row><row r=\"9\"><c t=\"e\"><v>#N/A</v></c></row>",
        .strings = "<si><r><t>a</t></r></si>",
        .numberFormats = "<numFmt numFmtId=\"170\" formatCode=\"[h]:mm;@&quot;x&quot;\\y\"/>",
        .cellStyles = "<xf numFmtId=\"0\"/><xf numFmtId=\"170\"/>"};
    std::mt19937 random(7);
    for (int round = 0; round < 400; ++round) {
        support::Parts parts = book.parts();
        std::string& text = parts[random() % parts.size()].second;
        for (int change = 0; change < 3; ++change) {
            text[random() % text.size()] = static_cast<char>(random() % 256);
        }
        support::writePacked(folder.file("bad.xlsx"), parts);
        const auto sheets = readSpreadsheet(folder.file("bad.xlsx"));
        EXPECT_TRUE(sheets || !sheets.fault().code().empty());
    }
}

TEST(ReadSpreadsheet, WritesNoPartToDiskWhateverItsName) {
    const support::TemporaryFolder folder;
    support::Parts parts = SmallBook{.rows = "<row><c><v>1</v></c></row>"}.parts();
    parts.emplace_back("../escaped.txt", "out");
    parts.emplace_back("xl/vbaProject.bin", "macros");
    std::filesystem::create_directories(folder.path() / "in");
    support::writePacked(folder.file("in/book.xlsx"), parts);
    EXPECT_EQ(codeOf(folder.file("in/book.xlsx")), "read");
    EXPECT_FALSE(std::filesystem::exists(folder.path() / "escaped.txt"));
    EXPECT_EQ(std::distance(std::filesystem::recursive_directory_iterator(folder.path()), {}), 2);
}

}  // namespace
}  // namespace ww::spreadsheet
