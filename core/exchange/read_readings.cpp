// readings.csv: what was read at the branches, in which round, by whom.
#include "core/exchange/read_cells.h"
#include "core/exchange/reading_rows.h"
#include "core/exchange/table_columns.h"
#include "core/project/equipment_curves.h"

namespace ww::exchange {

namespace {

inline constexpr base::MessageForm kReadingTagUnknown{
    "reading_tag_unknown", "the tag \"{1}\" is not among the branches; did you mean \"{2}\"?"};
inline constexpr base::MessageForm kReadingSettingOff{
    "reading_setting_off", "{1} is off this valve's scale, {2} to {3}; correct the setting"};
inline constexpr base::MessageForm kReadingEmpty{
    "reading_empty",
    "the row has neither setting, dp, flow nor a note; give what was read or take the row out"};
inline constexpr base::MessageForm kReadingNoTable{
    "reading_no_table",
    "a dp is given for a branch whose valve has no table; give its valve in branches.csv"};

class ReadingReader {
  public:
    ReadingReader(ImportContext& context, bool isRequired)
        : m_context(context),
          m_table(context.source, "readings.csv", columnsOfTable("readings.csv"), isRequired, context.faults),
          m_rounds(context) {
        for (const project::ValveModel& valve : context.valves) {
            auto made = curve::ValveCharacteristic::make(project::valvePoints(valve));
            if (made) {
                m_curves.emplace(valve.id, std::move(*made));
            }
        }
    }

    void run() {
        std::vector<ReadingRow<project::Reading>> rows;
        while (m_table.next()) {
            if (m_table.hasColumn(kWalkSheetColumn) && isLeftBlank()) {
                continue;
            }
            if (auto row = takeRow()) {
                rows.push_back(std::move(*row));
            }
        }
        finishRows(rows, m_table, m_context, m_context.readings);
    }

  private:
    /// A walk sheet comes back with every valve of the route, also those that nobody read.
    bool isLeftBlank() {
        for (const std::string_view column : filledInColumns()) {
            if (!m_table.text(column).empty()) {
                return false;
            }
        }
        return true;
    }

    /// "x" in place of a value, as it is typed on the walk: the valve cannot be read.
    bool saysUnread(std::string_view column) {
        const std::string text = m_table.text(column);
        return text == "x" || text == "X";
    }

    /// A walk sheet is filled in with the time of day alone: its date is that of the round.
    std::optional<base::Instant> timeOf(const project::Round* round) {
        const std::string written(m_table.text("time"));
        const std::string digits = written.size() == 4 ? "0" + written : written;
        const bool isTimeOfDay = m_table.hasColumn("setting_now") && digits.size() == 5 && digits[2] == ':';
        if (!isTimeOfDay || round == nullptr || !round->opened) {
            return m_table.instant("time");
        }
        const std::string whole = round->opened->text();  // date, T, time of day, zone
        constexpr std::size_t kDate = 11;
        constexpr std::size_t kBeforeZone = 19;
        const auto moment =
            base::Instant::fromText(whole.substr(0, kDate) + digits + ":00" + whole.substr(kBeforeZone));
        return moment ? moment : m_table.instant("time");
    }

    std::optional<ReadingRow<project::Reading>> takeRow() {
        const project::Round* round =
            m_rounds.roundOf(m_table, nameCell<project::RoundKind>(m_table, "kind"));
        ReadingRow<project::Reading> row;
        project::Reading& reading = row.reading;
        row.row = m_table.row();
        row.corrects = m_table.wholeNumber("corrects", 9'999'999);
        reading.id = m_context.ids.next();
        reading.time = timeOf(round);
        const std::string tag = m_table.requiredText("tag");
        reading.setting = m_table.decimal("setting", Sign::NotNegative);
        const bool isUnread = saysUnread("dp") || saysUnread("flow");
        if (!isUnread) {
            if (const auto dp = m_table.entered("dp", Sign::Any)) {
                reading.dp = quantity::measuredDifference(dp->digits, dp->unit, m_context.density);
            }
            reading.flow = m_table.measured<quantity::VolumeFlow>("flow", Sign::NotNegative);
        }
        reading.instrument = instrumentOf(m_context, m_table);
        reading.person = personOf(m_context, m_table);
        reading.note = m_table.text("note");
        reading.status =
            nameCell<project::ReadingStatus>(m_table, "status").value_or(project::ReadingStatus::Standing);
        reading.isRepeat = m_table.yesNo("repeat", false);
        reading.cannotBeRead = m_table.yesNo("cannot_read", false) || isUnread;
        reading.isDoubtful = m_table.yesNo("doubtful", false);
        reading.reason = m_table.text("reason");
        ReadCells io(m_table, m_context);
        columns(io, reading);
        const bool hasAnything = !m_table.text("setting").empty() || !m_table.text("dp").empty() ||
                                 !m_table.text("flow").empty() || reading.cannotBeRead ||
                                 !reading.note.empty();
        if (!hasAnything) {
            m_table.fault("dp", kReadingEmpty);
        }
        const project::Branch* branch = branchOf(tag);
        if (round == nullptr || branch == nullptr) {
            return std::nullopt;
        }
        row.round = round->number;
        reading.round = round->id;
        reading.branch = branch->id;
        checkValve(*branch, reading);
        return row;
    }

    const project::Branch* branchOf(const std::string& tag) {
        const auto found = m_context.branchByTag.find(folded(tag));
        if (found != m_context.branchByTag.end()) {
            return &m_context.branches[found->second];
        }
        if (!tag.empty()) {
            m_table.unknown(m_table.row(), "tag", kReadingTagUnknown, {tag}, tag, "branches.csv",
                            [&] { return tagsOf(m_context.branches); });
        }
        return nullptr;
    }

    void checkValve(const project::Branch& branch, const project::Reading& reading) {
        const auto found = branch.valve ? m_curves.find(*branch.valve) : m_curves.end();
        if (found == m_curves.end()) {
            // A table with faults of its own is reported where it stands.
            if (!branch.valve && reading.dp && !m_context.branchesOfUnknownValve.contains(branch.id)) {
                m_table.fault("dp", kReadingNoTable);
            }
            return;
        }
        const curve::ValveCharacteristic& curve = found->second;
        if (reading.setting && !curve.covers(quantity::Setting::si(reading.setting->value()))) {
            m_table.fault("setting", kReadingSettingOff,
                          {reading.setting->text(), quantity::concise(curve.lowest().si(), 6),
                           quantity::concise(curve.fullyOpen().si(), 6)});
        }
    }

    ImportContext& m_context;
    TableReader m_table;
    RoundCells m_rounds;
    std::map<base::Id, curve::ValveCharacteristic> m_curves;
};

}  // namespace

void readReadingTable(ImportContext& context, bool isRequired) {
    ReadingReader(context, isRequired).run();
}

}  // namespace ww::exchange
