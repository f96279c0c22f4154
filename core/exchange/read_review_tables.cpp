// The tables of review, pump set-points and merging, and the files that belong to them.
#include <algorithm>
#include <fstream>

#include "core/exchange/read_cells.h"

namespace ww::exchange {

namespace {

inline constexpr base::MessageForm kReferenceUnknown{
    "table_reference_unknown", "\"{1}\" names no {2w} of this folder; correct it or leave the cell empty"};
inline constexpr base::MessageForm kRowReferenceUnknown{
    "row_reference_unknown",
    "row {1} is named, but its table has {2} rows; give the number of one, the first is 1"};
inline constexpr base::MessageForm kNumberRepeated{
    "deficiency_number_repeated", "the number {1} stands twice; give every deficiency its own"};
inline constexpr base::MessageForm kAttachmentMissing{
    "attachment_missing",
    "there is no plain file \"{1}\" in the folder attachments; put it there or take the row out"};
inline constexpr base::MessageForm kAttachmentTooLarge{
    "attachment_too_large", "the file \"{1}\" has more than {2} MB; make it smaller"};

constexpr std::uintmax_t kLargestAttachment_MB = 32;
constexpr std::uintmax_t kBytesInMegabyte = 1024 * 1024;
constexpr int kMostRows = 1'000'000;

std::optional<int> wholeFrom(std::string_view text) {
    const auto number = base::Decimal::parse(text, base::CommaMeaning::Refused);
    const bool isGood =
        number && number->decimals() == 0 && number->value() >= 1 && number->value() <= kMostRows;
    return isGood ? std::optional(static_cast<int>(number->value())) : std::nullopt;
}

template <class Records>
std::optional<base::Id> tagged(const Records& records, const std::map<std::string, std::size_t>& byTag,
                               const std::string& tag) {
    const auto found = byTag.find(folded(tag));
    return found == byTag.end() ? std::nullopt : std::optional(records[found->second].id);
}

/// "round:row", the row counted within the round in order of sequence.
template <class Reading>
std::optional<base::Id> readingNamed(const ImportContext& context, const std::vector<Reading>& readings,
                                     const std::string& text) {
    const std::size_t colon = text.find(':');
    if (colon == std::string::npos) {
        return std::nullopt;
    }
    const auto number = wholeFrom(std::string_view(text).substr(0, colon));
    const auto row = wholeFrom(std::string_view(text).substr(colon + 1));
    const auto round = number ? context.rounds.find(*number) : context.rounds.end();
    if (!row || round == context.rounds.end()) {
        return std::nullopt;
    }
    const auto found = std::find_if(readings.begin(), readings.end(), [&](const Reading& reading) {
        return reading.round == round->second.id && reading.sequence == *row;
    });
    return found == readings.end() ? std::nullopt : std::optional(found->id);
}

std::optional<base::Id> valveNamed(const ImportContext& context, const std::string& text) {
    const auto found =
        std::find_if(context.valves.begin(), context.valves.end(), [&](const project::ValveModel& valve) {
            return text == (valve.size.empty() ? valve.model : valve.model + " / " + valve.size);
        });
    return found == context.valves.end() ? std::nullopt : std::optional(found->id);
}

std::optional<base::Id> found(ImportContext& context, RecordKind kind, const std::string& text) {
    switch (kind) {
        case RecordKind::Job:
            return context.job.id;
        case RecordKind::ValveModel:
            return valveNamed(context, text);
        case RecordKind::Branch:
            return tagged(context.branches, context.branchByTag, text);
        case RecordKind::Pump:
            return tagged(context.pumps, context.pumpByTag, text);
        case RecordKind::Instrument:
            return tagged(context.instruments, context.instrumentByTag, text);
        case RecordKind::Person: {
            const auto person = context.personByName.find(text);
            return person == context.personByName.end() ? std::nullopt
                                                        : std::optional(context.people[person->second].id);
        }
        case RecordKind::Round: {
            const auto number = wholeFrom(text);
            const auto round = number ? context.rounds.find(*number) : context.rounds.end();
            return round == context.rounds.end() ? std::nullopt : std::optional(round->second.id);
        }
        case RecordKind::Reading:
            return readingNamed(context, context.readings, text);
        case RecordKind::PumpReading:
            return readingNamed(context, context.pumpReadings, text);
        case RecordKind::Deficiency: {
            const auto number = wholeFrom(text);
            const auto deficiency =
                number ? context.deficiencyByNumber.find(*number) : context.deficiencyByNumber.end();
            return deficiency == context.deficiencyByNumber.end() ? std::nullopt
                                                                  : std::optional(deficiency->second);
        }
        default: {
            const auto row = wholeFrom(text);
            return row ? std::optional(context.idOfRow(kind, *row)) : std::nullopt;
        }
    }
}

void readLoad(ImportContext& context) {
    TableReader table(context.source, "load.csv", {{"hours", {}, true}, {"flow", Dimension::Fraction, true}},
                      false, context.faults);
    while (table.next()) {
        const auto hours = table.decimal("hours", Sign::NotNegative);
        const auto flow = table.measured<quantity::Ratio>("flow", Sign::NotNegative);
        for (const char* column : {"hours", "flow"}) {
            if (table.text(column).empty()) {
                table.fault(column, kCellMissing);
            }
        }
        if (hours && flow) {
            context.job.loadRows.push_back({*hours, *flow});
        }
    }
}

void readSample(ImportContext& context) {
    TableReader table(context.source, "witness_sample.csv", {{"round", {}, true}, {"tag", {}, true}}, false,
                      context.faults);
    ReadCells io(table, context);
    while (table.next()) {
        const auto number = table.wholeNumber("round", 9999);
        std::optional<base::Id> branch;
        io.refers("tag", RecordKind::Branch, branch);
        const auto round = number ? context.rounds.find(*number) : context.rounds.end();
        if (number && round == context.rounds.end()) {
            table.fault("round", kReferenceUnknown, {std::to_string(*number), "round"});
        } else if (number && branch) {
            round->second.sample.push_back({*branch});
        }
    }
}

void readEarlierDesigns(ImportContext& context) {
    TableReader table(context.source, "earlier_designs.csv",
                      {{"round", {}, true},
                       {"tag", {}, true},
                       {"in_loop", {}, false},
                       {"design_flow", Dimension::Flow, false}},
                      false, context.faults);
    ReadCells io(table, context);
    while (table.next()) {
        std::optional<base::Id> round;
        std::optional<base::Id> branch;
        io.refers("round", RecordKind::Round, round);
        io.refers("tag", RecordKind::Branch, branch);
        for (const char* column : {"round", "tag"}) {
            if (table.text(column).empty()) {
                table.fault(column, kCellMissing);
            }
        }
        project::EarlierDesign design;
        design.isInLoop = table.yesNo("in_loop", true);
        design.designFlow = table.measured<quantity::VolumeFlow>("design_flow", Sign::Positive);
        if (round && branch) {
            design.round = *round;
            const std::size_t at = context.branchByTag.find(folded(table.text("tag")))->second;
            context.branches[at].earlierDesigns.push_back(std::move(design));
        }
    }
}

void takeRow(project::ReadinessLine& line, int row, TableReader&, ImportContext&) {
    line.position = row;
}
void takeRow(project::Deficiency& deficiency, int, TableReader& table, ImportContext& context) {
    if (deficiency.number > 0 &&
        !context.deficiencyByNumber.try_emplace(deficiency.number, deficiency.id).second) {
        table.fault("number", kNumberRepeated, {std::to_string(deficiency.number)});
    }
}
template <class Record>
void takeRow(Record&, int, TableReader&, ImportContext&) {}

template <class Record>
void readTable(const char* file, ImportContext& context) {
    TableReader table(context.source, file, columnsOf<Record>(), false, context.faults);
    ReadCells io(table, context);
    Record record;
    const RecordKind kind = project::kindOf(project::AnyRecord(record));
    int row = 0;
    while (table.next()) {
        record = Record();
        record.id = context.idOfRow(kind, ++row);
        columns(io, record);
        takeRow(record, row, table, context);
        context.reviewRecords.emplace_back(record);
    }
    // Rows may name later rows of their own table, so this is asked at its end.
    const auto ids = context.idsByRow.find(kind);
    if (table.isUsable() && ids != context.idsByRow.end() && ids->second.rbegin()->first > row) {
        table.faultAt(
            1, "",
            {&kRowReferenceUnknown, "", {std::to_string(ids->second.rbegin()->first), std::to_string(row)}});
    }
}

}  // namespace

void ReadCells::cell(const char* column, int& number) {
    number = m_table.wholeNumber(column, kMostRows).value_or(number);
    if (m_table.text(column).empty()) {
        m_table.fault(column, kCellMissing);
    }
}

void ReadCells::cell(const char* column, base::Decimal& number) {
    if (auto got = m_table.decimal(column, Sign::Any)) {
        number = std::move(*got);
    }
}

void ReadCells::refers(const char* column, RecordKind kind, std::optional<base::Id>& id) {
    const std::string text = m_table.text(column);
    if (text.empty()) {
        return;
    }
    id = found(m_context, kind, text);
    if (!id) {
        m_table.fault(column, kReferenceUnknown, {text, std::string(project::name(kind))});
    }
}

void ReadCells::record(const char* column, RecordKind kind, base::Id& id) {
    std::optional<base::Id> named;
    refers(column, kind, named);
    id = named.value_or(id);
}

void ReadCells::file(const char* column, base::SharedBytes& bytes, const std::string&) {
    const std::string name = m_table.requiredText(column);
    if (name.empty()) {
        return;
    }
    // A name with a folder in it, or a link, could lead out of the job folder.
    const std::filesystem::path file = m_context.source.attachments() / name;
    std::error_code error;
    const bool isPlain = name.find_first_of("/\\") == std::string::npos &&
                         std::filesystem::is_regular_file(std::filesystem::symlink_status(file, error));
    const std::uintmax_t size = isPlain ? std::filesystem::file_size(file, error) : 0;
    if (!isPlain || error) {
        m_table.fault(column, kAttachmentMissing, {name});
        return;
    }
    if (size > kLargestAttachment_MB * kBytesInMegabyte) {
        m_table.fault(column, kAttachmentTooLarge, {name, std::to_string(kLargestAttachment_MB)});
        return;
    }
    std::vector<std::uint8_t> content(static_cast<std::size_t>(size));
    std::ifstream stream(file, std::ios::binary);
    stream.read(reinterpret_cast<char*>(content.data()), static_cast<std::streamsize>(content.size()));
    if (!stream && size > 0) {
        m_table.fault(column, kAttachmentMissing, {name});
        return;
    }
    bytes = base::SharedBytes(std::move(content));
}

void readReviewTables(ImportContext& context) {
    readLoad(context);
    readSample(context);
    readEarlierDesigns(context);
    eachReviewTable([&](const char* file, auto records) {
        using Records = decltype((std::declval<const project::Project&>().*records)());
        using Record = std::remove_cvref_t<decltype(*std::declval<Records>().begin())>;
        readTable<Record>(file, context);
    });
}

}  // namespace ww::exchange
