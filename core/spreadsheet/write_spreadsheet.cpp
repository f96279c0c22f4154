#include "core/spreadsheet/write_spreadsheet.h"

#include <xlsxwriter.h>

#include <algorithm>
#include <fstream>
#include <map>

#include "core/base/term.h"
#include "core/spreadsheet/cell_name.h"
#include "core/spreadsheet/number_format.h"
#include "core/spreadsheet/spreadsheet_messages.h"

namespace ww::spreadsheet {

namespace {

constexpr double kWidestColumn_signs = 48;
/// Seconds from 1899-12-30, from which a sheet counts its days, to 1970-01-01.
constexpr std::int64_t kEpoch_s = 25'569LL * 86'400;
/// Day 61 is 1 March 1900; before it the count has a day that never was.
constexpr std::int64_t kFirstSafeDay = 61;

/// Signs, not bytes, of UTF-8 text up to its first line end.
double signsOf(const std::string& text) {
    double signs = 0;
    for (const char c : text) {
        if (c == '\n') {
            break;
        }
        signs += (static_cast<unsigned char>(c) & 0xC0) != 0x80 ? 1 : 0;
    }
    return signs;
}

class Writer {
  public:
    explicit Writer(const std::string& file) : m_book(workbook_new(file.c_str())) {
        m_bold = workbook_add_format(m_book);
        format_set_bold(m_bold);
        m_head = workbook_add_format(m_book);
        format_set_bold(m_head);
        format_set_bottom(m_head, LXW_BORDER_THIN);
    }
    ~Writer() {
        if (m_book != nullptr) {
            workbook_close(m_book);
        }
    }
    Writer(const Writer&) = delete;
    Writer& operator=(const Writer&) = delete;

    void add(const WrittenSheet& sheet) {
        lxw_worksheet* page = workbook_add_worksheet(m_book, sheet.name.c_str());
        if (page == nullptr) {
            note(LXW_ERROR_PARAMETER_VALIDATION);
            return;
        }
        std::vector<double> widths;
        for (std::size_t row = 0; row < sheet.rows.size(); ++row) {
            const bool isBold =
                std::find(sheet.boldRows.begin(), sheet.boldRows.end(), row) != sheet.boldRows.end();
            lxw_format* look = sheet.headRow == row ? m_head : isBold ? m_bold : nullptr;
            widths.resize(std::max(widths.size(), sheet.rows[row].size()));
            for (std::size_t column = 0; column < sheet.rows[row].size(); ++column) {
                const WrittenCell& cell = sheet.rows[row][column];
                put(page, static_cast<lxw_row_t>(row), static_cast<lxw_col_t>(column), cell, look);
                // What stands above a table may run over its neighbors.
                if (!sheet.headRow || row >= *sheet.headRow) {
                    widths[column] = std::max(widths[column], signsOf(plainText(cell)));
                }
            }
        }
        for (std::size_t column = 0; column < widths.size(); ++column) {
            const auto at = static_cast<lxw_col_t>(column);
            // Room for the filter's mark beside the heading.
            note(worksheet_set_column(page, at, at, std::min(widths[column], kWidestColumn_signs) + 3,
                                      nullptr));
        }
        frame(page, sheet);
        for (const LineChart& chart : sheet.charts) {
            addChart(page, sheet, chart);
        }
    }

    /// Writes the file; what went wrong first, else LXW_NO_ERROR.
    lxw_error close() {
        const lxw_error closed = workbook_close(m_book);
        m_book = nullptr;
        return m_error != LXW_NO_ERROR ? m_error : closed;
    }

  private:
    void note(lxw_error error) { m_error = m_error == LXW_NO_ERROR ? error : m_error; }

    void put(lxw_worksheet* page, lxw_row_t row, lxw_col_t column, const WrittenCell& cell,
             lxw_format* look) {
        if (const auto* number = std::get_if<base::Decimal>(&cell)) {
            const std::string code =
                number->decimals() == 0
                    ? "0"
                    : "0." + std::string(static_cast<std::size_t>(number->decimals()), '0');
            // Digits that a sheet's number would not give back are kept as a text.
            if (plainDigits(number->value(), numberFormat(code)) == number->text()) {
                note(worksheet_write_number(page, row, column, number->value(), formatOf(code)));
                return;
            }
        } else if (const auto* moment = std::get_if<base::Instant>(&cell)) {
            const std::string zone = moment->text().substr(19);
            if (putMoment(page, row, column, *moment,
                          "yyyy-mm-dd\"T\"hh:mm:ss" + (zone.empty() ? "" : "\"" + zone + "\""))) {
                return;
            }
        } else if (const auto* day = std::get_if<Day>(&cell)) {
            if (putMoment(page, row, column, day->moment, "yyyy-mm-dd")) {
                return;
            }
        }
        const std::string text = plainText(cell);
        if (!text.empty()) {
            note(worksheet_write_string(page, row, column, text.c_str(), look));
        }
    }

    /// A moment as wall clock; false for days that sheets count differently.
    bool putMoment(lxw_worksheet* page, lxw_row_t row, lxw_col_t column, const base::Instant& moment,
                   const std::string& code) {
        const std::int64_t shown_s = moment.seconds + 60LL * moment.zoneMinutes.value_or(0) + kEpoch_s;
        if (shown_s < kFirstSafeDay * 86'400) {
            return false;
        }
        note(worksheet_write_number(page, row, column, static_cast<double>(shown_s) / 86'400.0,
                                    formatOf(code)));
        return true;
    }

    lxw_format* formatOf(const std::string& code) {
        const auto [found, isNew] = m_formats.try_emplace(code, nullptr);
        if (isNew) {
            found->second = workbook_add_format(m_book);
            format_set_num_format(found->second, code.c_str());
        }
        return found->second;
    }

    void frame(lxw_worksheet* page, const WrittenSheet& sheet) {
        if (!sheet.headRow || *sheet.headRow >= sheet.rows.size()) {
            return;
        }
        const auto head = static_cast<lxw_row_t>(*sheet.headRow);
        const std::size_t columns = sheet.rows[*sheet.headRow].size();
        worksheet_freeze_panes(page, head + 1, 0);
        worksheet_repeat_rows(page, head, head);
        worksheet_set_landscape(page);
        worksheet_fit_to_pages(page, 1, 0);
        if (columns > 0) {
            note(worksheet_autofilter(page, head, 0, static_cast<lxw_row_t>(sheet.rows.size() - 1),
                                      static_cast<lxw_col_t>(columns - 1)));
        }
    }

    void addChart(lxw_worksheet* page, const WrittenSheet& sheet, const LineChart& chart) {
        lxw_chart* drawn = workbook_add_chart(m_book, LXW_CHART_LINE);
        const auto place = [](std::size_t number) { return static_cast<lxw_row_t>(number); };
        const auto from = static_cast<lxw_col_t>(chart.firstColumn);
        const auto to = static_cast<lxw_col_t>(chart.firstColumn + chart.columnCount - 1);
        const auto name = static_cast<lxw_col_t>(chart.nameColumn);
        for (const std::size_t row : chart.lineRows) {
            lxw_chart_series* line = chart_add_series(drawn, nullptr, nullptr);
            chart_series_set_categories(line, sheet.name.c_str(), place(chart.headRow), from,
                                        place(chart.headRow), to);
            chart_series_set_values(line, sheet.name.c_str(), place(row), from, place(row), to);
            chart_series_set_name_range(line, sheet.name.c_str(), place(row), name);
            chart_series_set_marker_type(line, LXW_CHART_MARKER_CIRCLE);
        }
        chart_title_set_name(drawn, chart.title.c_str());
        chart_axis_set_name(drawn->x_axis, chart.acrossTitle.c_str());
        chart_axis_set_name(drawn->y_axis, chart.upTitle.c_str());
        chart_legend_set_position(drawn, LXW_CHART_LEGEND_RIGHT);
        lxw_chart_options size = {};
        size.x_scale = 1.6;
        size.y_scale = 1.6;
        note(worksheet_insert_chart_opt(page, place(chart.anchorRow),
                                        static_cast<lxw_col_t>(chart.anchorColumn), drawn, &size));
    }

    lxw_workbook* m_book;
    lxw_format* m_bold;
    lxw_format* m_head;
    std::map<std::string, lxw_format*> m_formats;
    lxw_error m_error = LXW_NO_ERROR;
};

}  // namespace

base::Outcome writeSpreadsheet(const std::vector<WrittenSheet>& sheets, const std::filesystem::path& file) {
    const std::string part = file.string() + ".part";
    std::error_code error;
    // The library tells of a place that cannot be written on standard error; here it is told once.
    if (!std::ofstream(part, std::ios::binary)) {
        return base::Fault{
            &kSpreadsheetNotWritten, file.string(), {base::term("no such folder, or no permission")}};
    }
    lxw_error failure = LXW_NO_ERROR;
    {
        Writer writer(part);
        for (const WrittenSheet& sheet : sheets) {
            writer.add(sheet);
        }
        failure = writer.close();
    }
    if (failure == LXW_NO_ERROR) {
        std::filesystem::rename(part, file, error);
    }
    if (failure != LXW_NO_ERROR || error) {
        const std::string reason = error ? error.message() : lxw_strerror(failure);
        std::filesystem::remove(part, error);
        return base::Fault{&kSpreadsheetNotWritten, file.string(), {reason}};
    }
    return base::Done{};
}

}  // namespace ww::spreadsheet
