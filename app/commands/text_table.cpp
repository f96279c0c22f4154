#include "app/commands/text_table.h"

#include <algorithm>

namespace ww::app {

namespace {

std::size_t width(const std::string& text) {
    return static_cast<std::size_t>(
        std::count_if(text.begin(), text.end(), [](unsigned char c) { return (c & 0xC0) != 0x80; }));
}

}  // namespace

std::string textTable(const std::vector<std::vector<std::string>>& rows,
                      const std::vector<std::size_t>& leftAligned) {
    std::vector<std::size_t> widths;
    for (const auto& row : rows) {
        widths.resize(std::max(widths.size(), row.size()));
        for (std::size_t i = 0; i < row.size(); ++i) {
            widths[i] = std::max(widths[i], width(row[i]));
        }
    }
    std::string out;
    for (const auto& row : rows) {
        std::string line;
        for (std::size_t i = 0; i < row.size(); ++i) {
            const std::string padding(widths[i] - width(row[i]), ' ');
            const bool isLeft = std::find(leftAligned.begin(), leftAligned.end(), i) != leftAligned.end();
            line += (i == 0 ? "" : "  ") + (isLeft ? row[i] + padding : padding + row[i]);
        }
        line.erase(line.find_last_not_of(' ') + 1);
        out += line + "\n";
    }
    return out;
}

}  // namespace ww::app
