// branches.csv: how the loop branches, and what stands where.
#include <algorithm>
#include <set>

#include "core/exchange/read_cells.h"
#include "core/exchange/table_columns.h"
#include "core/project/equipment_curves.h"

namespace ww::exchange {

namespace {

inline constexpr base::MessageForm kTagRepeated{
    "tag_repeated", "the tag \"{1}\" stands already in row {2}; give every one its own"};
inline constexpr base::MessageForm kNoBranches{"no_branches",
                                               "the table has no branches; give at least one row"};
inline constexpr base::MessageForm kParentUnknown{
    "parent_unknown", "the parent \"{1}\" is not among the branches; did you mean \"{2}\"?"};
inline constexpr base::MessageForm kParentCircle{
    "parent_circle",
    "this branch is fed through itself: {1}; correct one parent, the first is fed at the pump"};
inline constexpr base::MessageForm kValveUnknown{
    "valve_unknown", "the valve \"{1}\" of size \"{2}\" is not in valves.csv; did you mean \"{3}\"?"};
inline constexpr base::MessageForm kValveWithoutTable{
    "valve_without_table",
    "the valve \"{1}\" has a range of dp and no table, which only a limiter or a picv can do with; give its "
    "table in valves.csv or correct the kind"};
inline constexpr base::MessageForm kDesignFlowMissing{
    "design_flow_missing", "a branch without branches of its own needs its design flow; give it"};
inline constexpr base::MessageForm kSettingOffScale{
    "setting_off_scale", "{1} is off the valve's scale, {2} to {3}; correct the setting or the valve"};
inline constexpr base::MessageForm kSettingWithoutValve{
    "setting_without_valve", "a setting is given but no valve with a table; give valve_model and valve_size"};

/// The rows of branches.csv, then what must be true of them together.
class BranchReader {
  public:
    explicit BranchReader(ImportContext& context)
        : m_context(context),
          m_table(context.source, "branches.csv", columnsOfTable("branches.csv"), !context.isAdding,
                  context.faults),
          m_known(context.branches.size()),
          m_rows(m_known),
          m_parents(m_known),
          m_hasFlowFault(m_known) {
        for (const project::Branch& branch : context.branches) {
            m_nextPosition = std::max(m_nextPosition, branch.position + 1);
        }
    }

    void run() {
        while (m_table.next()) {
            takeRow();
        }
        if (m_table.isUsable() && m_context.branches.empty()) {
            m_table.faultAt(0, "tag", {&kNoBranches, "", {}});
        }
        joinParents();
        for (std::size_t i = m_known; i < m_context.branches.size(); ++i) {
            checkCircle(i);
            if (!m_isParent[i] && !m_context.branches[i].designFlow && !m_hasFlowFault[i]) {
                m_table.faultAt(m_rows[i], "design_flow", {&kDesignFlowMissing, "", {}});
            }
        }
    }

  private:
    void takeRow() {
        project::Branch branch;
        branch.id = m_context.ids.next();
        branch.position = m_nextPosition++;
        branch.tag = m_table.requiredText("tag");
        const std::size_t index = m_context.branches.size();
        const auto [found, isNew] = m_context.branchByTag.try_emplace(folded(branch.tag), index);
        if (!isNew && found->second < m_known) {
            m_table.fault("tag", kInJobAlready, {branch.tag});
        } else if (!isNew && !branch.tag.empty()) {
            m_table.fault("tag", kTagRepeated, {branch.tag, std::to_string(m_rows[found->second])});
        }
        branch.serves = m_table.text("serves");
        branch.designFlow = m_table.measured<quantity::VolumeFlow>("design_flow", Sign::Positive);
        branch.runLoss = m_table.difference("run_loss", Sign::NotNegative, m_context.density);
        branch.circuitLoss = m_table.difference("circuit_loss", Sign::NotNegative, m_context.density);
        branch.side = nameCell<project::Side>(m_table, "side").value_or(project::Side::Unknown);
        branch.upstreamDiameters = m_table.decimal("upstream_diameters", Sign::NotNegative);
        branch.downstreamDiameters = m_table.decimal("downstream_diameters", Sign::NotNegative);
        branch.returns =
            nameCell<project::ReturnKind>(m_table, "return").value_or(project::ReturnKind::Direct);
        ReadCells io(m_table, m_context);
        columns(io, branch);
        takeValve(branch);
        const auto kind = nameCell<project::BranchKind>(m_table, "kind");
        branch.kind = kind.value_or(branch.valve ? project::BranchKind::Manual : project::BranchKind::None);
        checkTable(branch);
        m_hasFlowFault.push_back(!branch.designFlow && !m_table.text("design_flow").empty());
        m_rows.push_back(m_table.row());
        m_parents.push_back(m_table.text("parent"));
        m_context.branches.push_back(std::move(branch));
    }

    void takeValve(project::Branch& branch) {
        const std::string model = m_table.text("valve_model");
        const std::string size = m_table.text("valve_size");
        branch.setting = m_table.decimal("setting", Sign::NotNegative);
        if (model.empty()) {
            if (branch.setting) {
                m_table.fault("setting", kSettingWithoutValve);
            }
            return;
        }
        const auto found = m_context.valveByName.find(valveKey(model, size));
        if (found == m_context.valveByName.end()) {
            m_context.branchesOfUnknownValve.insert(branch.id);
            m_table.unknown(m_table.row(), "valve_model", kValveUnknown, {model, size}, model + " " + size,
                            "valves.csv", [&] {
                                std::vector<std::string> known;
                                for (const project::ValveModel& valve : m_context.valves) {
                                    known.push_back(valve.model + " " + valve.size);
                                }
                                return known;
                            });
            return;
        }
        const project::ValveModel& valve = m_context.valves[found->second];
        branch.valve = valve.id;
        const auto curve = curve::ValveCharacteristic::make(project::valvePoints(valve));
        if (branch.setting && curve && !curve->covers(quantity::Setting::si(branch.setting->value()))) {
            m_table.fault("setting", kSettingOffScale,
                          {branch.setting->text(), quantity::concise(curve->lowest().si(), 6),
                           quantity::concise(curve->fullyOpen().si(), 6)});
        }
    }

    /// Flow is told from dp by a table; a valve that holds its flow by itself is told by its range.
    void checkTable(const project::Branch& branch) {
        const auto valve =
            std::find_if(m_context.valves.begin(), m_context.valves.end(),
                         [&](const project::ValveModel& candidate) { return candidate.id == branch.valve; });
        if (valve != m_context.valves.end() && valve->rows.empty() && valve->minimumDp &&
            !project::isSelfActing(branch)) {
            m_table.fault("kind", kValveWithoutTable, {valve->model});
        }
    }

    void joinParents() {
        m_parentIndex.assign(m_context.branches.size(), kNone);
        m_isParent.assign(m_context.branches.size(), false);
        for (std::size_t i = 0; i < m_context.branches.size(); ++i) {
            if (m_parents[i].empty()) {
                continue;
            }
            const auto found = m_context.branchByTag.find(folded(m_parents[i]));
            if (found == m_context.branchByTag.end()) {
                m_table.unknown(m_rows[i], "parent", kParentUnknown, {m_parents[i]}, m_parents[i],
                                "branches.csv", [&] { return tagsOf(m_context.branches); });
                continue;
            }
            m_parentIndex[i] = found->second;
            m_isParent[found->second] = true;
            m_context.branches[i].parent = m_context.branches[found->second].id;
        }
    }

    void checkCircle(std::size_t start) {
        std::string path = m_context.branches[start].tag;
        std::size_t at = m_parentIndex[start];
        for (std::size_t steps = 0; at != kNone && steps <= m_parentIndex.size(); ++steps) {
            if (path.size() < 200) {
                path += " <- " + m_context.branches[at].tag;
            }
            if (at == start) {
                m_table.faultAt(m_rows[start], "parent", {&kParentCircle, "", {path}});
                return;
            }
            // A circle further out is reported at its own members.
            if (steps == m_parentIndex.size()) {
                return;
            }
            at = m_parentIndex[at];
        }
    }

    static constexpr std::size_t kNone = static_cast<std::size_t>(-1);
    ImportContext& m_context;
    TableReader m_table;
    std::size_t m_known;  ///< so many of m_context.branches are in the job already
    int m_nextPosition = 0;
    std::vector<int> m_rows;
    std::vector<std::string> m_parents;
    std::vector<std::size_t> m_parentIndex;
    std::vector<bool> m_isParent;
    std::vector<bool> m_hasFlowFault;
};

}  // namespace

void readBranches(ImportContext& context) {
    BranchReader(context).run();
}

}  // namespace ww::exchange
