// A packed file made of the texts of its parts, for tests of reading spreadsheets.
#pragma once

#include <zip.h>

#include <stdexcept>
#include <string>
#include <utility>
#include <vector>

namespace ww::support {

using Parts = std::vector<std::pair<std::string, std::string>>;

/// Writes the parts in their order.
inline void writePacked(const std::string& file, const Parts& parts) {
    int code = 0;
    zip_t* archive = zip_open(file.c_str(), ZIP_CREATE | ZIP_TRUNCATE, &code);
    if (archive == nullptr) {
        throw std::runtime_error("cannot write " + file);
    }
    for (const auto& [name, text] : parts) {
        zip_source_t* source = zip_source_buffer(archive, text.data(), text.size(), 0);
        zip_file_add(archive, name.c_str(), source, ZIP_FL_OVERWRITE);
    }
    if (zip_close(archive) != 0) {
        throw std::runtime_error("cannot write " + file);
    }
}

/// The parts of a spreadsheet with one sheet "cells": the rows of its sheetData, the strings' <si> elements,
/// the number formats as <numFmt> and <xf> elements, and what stands in <workbookPr>.
struct SmallBook {
    std::string rows;
    std::string strings = {};
    std::string numberFormats = {};
    std::string cellStyles = "<xf numFmtId=\"0\"/>";
    std::string bookSettings = {};
    std::string sheetHead = {};  ///< before the root element of the sheet

    Parts parts() const {
        const std::string office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
        const std::string main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
        const std::string relations = "http://schemas.openxmlformats.org/package/2006/relationships";
        const auto relation = [&](const char* id, const char* type, const char* target) {
            return "<Relationship Id=\"" + std::string(id) + "\" Type=\"" + office + "/" + type +
                   "\" Target=\"" + target + "\"/>";
        };
        return {
            {"_rels/.rels", "<Relationships xmlns=\"" + relations + "\">" +
                                relation("rId1", "officeDocument", "xl/workbook.xml") + "</Relationships>"},
            {"xl/_rels/workbook.xml.rels", "<Relationships xmlns=\"" + relations + "\">" +
                                               relation("rId1", "worksheet", "worksheets/sheet1.xml") +
                                               relation("rId2", "sharedStrings", "/xl/sharedStrings.xml") +
                                               relation("rId3", "styles", "styles.xml") + "</Relationships>"},
            {"xl/workbook.xml", "<workbook xmlns=\"" + main + "\" xmlns:r=\"" + office + "\"><workbookPr " +
                                    bookSettings +
                                    "/><sheets><sheet name=\"cells\" sheetId=\"1\" r:id=\"rId1\"/></sheets>"
                                    "</workbook>"},
            {"xl/sharedStrings.xml", "<sst xmlns=\"" + main + "\">" + strings + "</sst>"},
            {"xl/styles.xml", "<styleSheet xmlns=\"" + main + "\"><numFmts>" + numberFormats +
                                  "</numFmts><cellStyleXfs><xf numFmtId=\"14\"/></cellStyleXfs><cellXfs>" +
                                  cellStyles + "</cellXfs></styleSheet>"},
            {"xl/worksheets/sheet1.xml",
             sheetHead + "<worksheet xmlns=\"" + main + "\"><sheetData>" + rows + "</sheetData></worksheet>"},
        };
    }
    std::string writeTo(const std::string& file) const {
        writePacked(file, parts());
        return file;
    }
};

}  // namespace ww::support
