// valves.csv: the tables of valves, one point a row.
#include "core/exchange/import_context.h"
#include "core/exchange/name_cell.h"
#include "core/exchange/table_columns.h"
#include "core/project/equipment_curves.h"

namespace ww::exchange {

namespace {

inline constexpr base::MessageForm kValveCoefficientColumns{
    "valve_coefficient_columns",
    "the row needs one coefficient; give it in the column Cv or Kv, not in both"};
inline constexpr base::MessageForm kValveChangesWithin{
    "valve_changes_within",
    "\"{1}\" differs from the first row of this valve, which says \"{2}\"; make them alike"};
inline constexpr base::MessageForm kValveDpOrder{
    "valve_dp_order", "maximum_dp {1} is not above minimum_dp {2}; correct one of them"};
inline constexpr base::MessageForm kValveRangeRow{"valve_range_row",
                                                  "a row without setting stands for a valve that has a range "
                                                  "of dp and no table, and this valve has more rows; "
                                                  "give setting and coefficient in each or take the row out"};

class ValveReader {
  public:
    explicit ValveReader(ImportContext& context)
        : m_context(context),
          m_table(context.source, "valves.csv", columnsOfTable("valves.csv"), !context.isAdding,
                  context.faults),
          m_known(context.valves.size()),
          m_places(context.valves.size()) {}

    void run() {
        while (m_table.next()) {
            takeRow();
        }
        for (std::size_t i = m_known; i < m_context.valves.size(); ++i) {
            checkValve(m_context.valves[i], m_places[i]);
        }
    }

  private:
    /// Where the rows of a valve stand.
    struct Place {
        int first = 0;
        int withoutSetting = 0;  ///< the last row that gives a range alone; 0: none
        bool hasPoints = false;
    };

    void takeRow() {
        const bool isCv = !m_table.text("Cv").empty();
        const std::string model = m_table.requiredText("model");
        const std::string size = m_table.text("size");
        const auto scale = nameCell<project::Scale>(m_table, "scale");
        const std::string key = valveKey(model, size);
        const auto [found, isNew] = m_context.valveByName.try_emplace(key, m_context.valves.size());
        if (found->second < m_known) {
            m_table.fault("model", kInJobAlready, {model + " " + size});
            return;
        }
        if (isNew) {
            project::ValveModel valve;
            valve.id = m_context.ids.next();
            valve.model = model;
            valve.size = size;
            valve.scale = scale.value_or(project::Scale::Turns);
            m_context.valves.push_back(std::move(valve));
            m_places.push_back({m_table.row(), 0, false});
        }
        project::ValveModel& valve = m_context.valves[found->second];
        if (scale && *scale != valve.scale) {
            m_table.fault("scale", kValveChangesWithin,
                          {std::string(project::name(*scale)), std::string(project::name(valve.scale))});
        }
        takeRange(valve);
        if (isRangeAlone()) {
            m_places[found->second].withoutSetting = m_table.row();
            return;
        }
        if (!m_places[found->second].hasPoints) {
            m_places[found->second].hasPoints = true;
            valve.coefficientUnit = isCv ? Unit::Cv : Unit::Kv;
        }
        if (!scale && m_table.text("scale").empty()) {
            m_table.fault("scale", kCellMissing);
        }
        takePoint(valve, isCv);
    }

    bool isRangeAlone() {
        return m_table.text("setting").empty() && m_table.text("Cv").empty() && m_table.text("Kv").empty() &&
               !m_table.text("minimum_dp").empty();
    }

    void takeRange(project::ValveModel& valve) {
        if (auto minimum = m_table.difference("minimum_dp", Sign::Positive, m_context.density)) {
            valve.minimumDp = minimum;
        }
        if (auto maximum = m_table.difference("maximum_dp", Sign::Positive, m_context.density)) {
            valve.maximumDp = maximum;
        }
        if (auto accuracy = m_table.measured<quantity::Ratio>("accuracy", Sign::NotNegative)) {
            valve.accuracy = accuracy;
        }
        if (auto accuracy = m_table.measured<quantity::Ratio>("accuracy_shut", Sign::NotNegative)) {
            valve.accuracyShut = accuracy;
        }
    }

    void takePoint(project::ValveModel& valve, bool isCv) {
        const char* column = isCv || !m_table.hasColumn("Kv") ? "Cv" : "Kv";
        const auto setting = m_table.decimal("setting", Sign::NotNegative);
        const auto coefficient = m_table.decimal(column, Sign::NotNegative);
        if (!setting && m_table.text("setting").empty()) {
            m_table.fault("setting", kCellMissing);
        }
        if (isCv == !m_table.text("Kv").empty()) {
            m_table.fault(column, kValveCoefficientColumns);
        }
        if ((isCv ? Unit::Cv : Unit::Kv) != valve.coefficientUnit) {
            m_table.fault(column, kValveChangesWithin, {column, isCv ? "Kv" : "Cv"});
        }
        if (setting && coefficient) {
            valve.rows.push_back({*setting, *coefficient});
        }
    }

    void checkValve(const project::ValveModel& valve, const Place& place) {
        if (place.withoutSetting != 0 && place.hasPoints) {
            m_table.faultAt(place.withoutSetting, "setting", {&kValveRangeRow, "", {}});
        } else if (place.hasPoints) {
            const auto made = curve::ValveCharacteristic::make(project::valvePoints(valve));
            if (!made) {
                m_table.faultAt(place.first, "setting", made.fault());
            }
        }
        if (valve.minimumDp && valve.maximumDp && valve.maximumDp->value <= valve.minimumDp->value) {
            m_table.faultAt(place.first, "maximum_dp",
                            {&kValveDpOrder, "", {valve.maximumDp->text(), valve.minimumDp->text()}});
        }
    }

    ImportContext& m_context;
    TableReader m_table;
    std::size_t m_known;          ///< so many of m_context.valves are in the job already
    std::vector<Place> m_places;  ///< as m_context.valves
};

}  // namespace

std::string valveKey(const std::string& model, const std::string& size) {
    return folded(model) + "\n" + folded(size);
}

void readValves(ImportContext& context) {
    ValveReader(context).run();
}

}  // namespace ww::exchange
