// waterwright check: one round judged, as a table with a verdict or as JSON.
#include <CLI/CLI.hpp>
#include <cmath>
#include <ostream>

#include "app/commands/check_json.h"
#include "app/commands/open_workbook.h"
#include "app/commands/text_table.h"
#include "core/balancing/assess.h"
#include "core/balancing/design_changes.h"
#include "core/balancing/learning/model_findings.h"
#include "core/balancing/share_count.h"
#include "core/project/names.h"
#include "core/project/review.h"
#include "core/quantity/measured.h"

namespace ww::app {

namespace {

using balancing::Assessment;
using quantity::Unit;

std::string percentCell(const std::optional<quantity::Ratio>& ratio) {
    return ratio ? base::Decimal::fromNumber(100 * ratio->si(), 1).text() : "-";
}

std::string word(balancing::State state) {
    std::string text(jsonName(state));
    std::replace(text.begin(), text.end(), '_', ' ');
    return text;
}

/// The reading's digits as typed where they are what was judged, in the unit of the column; else the value.
std::string dpCell(const balancing::BranchResult& result, const project::Reading* reading, Unit unit) {
    if (!result.dp) {
        return "-";
    }
    const bool isAsTyped =
        reading != nullptr && reading->dp && reading->dp->unit == unit && reading->dp->value == *result.dp;
    return isAsTyped ? reading->dp->digits.text() : quantity::significant(result.dp->in(unit), 3);
}

std::string settingCell(const balancing::BranchResult& result, const project::Reading* reading) {
    if (!result.setting) {
        return "-";
    }
    const bool isAsTyped =
        reading != nullptr && reading->setting && reading->setting->value() == result.setting->si();
    return isAsTyped ? reading->setting->text() : quantity::concise(result.setting->si(), 5);
}

/// The table of branches for a person.
std::string branchTable(const project::Project& project, const Assessment& assessment) {
    const bool isUs = project.job().units == project::UnitSystem::US;
    const Unit flowUnit = project.shownFlowUnit();
    const Unit dpUnit = isUs ? Unit::Psi : Unit::Kilopascal;
    const auto symbol = [](Unit unit) { return std::string(quantity::symbol(unit)); };
    std::vector<std::vector<std::string>> rows{{"tag", "setting", "dp " + symbol(dpUnit),
                                                "flow " + symbol(flowUnit), "share %", "target %",
                                                "of target %", "of design %", "state"}};
    for (const std::size_t index : project.tree().walkingOrder()) {
        const balancing::BranchResult& result = assessment.branches[index];
        const bool isIndex = assessment.index.terminal == index;
        std::string flow = result.flow ? quantity::significant(result.flow->in(flowUnit), 3) : "-";
        if (!result.flow && result.flowLow && result.flowHigh) {
            flow = quantity::significant(result.flowLow->in(flowUnit), 2) + ".." +
                   quantity::significant(result.flowHigh->in(flowUnit), 2);
        }
        const project::Reading* reading = result.reading ? project.readings().find(*result.reading) : nullptr;
        rows.push_back({project.branches()[index].tag + (isIndex ? " *" : ""), settingCell(result, reading),
                        dpCell(result, reading, dpUnit), flow, percentCell(result.share),
                        percentCell(result.targetShare), percentCell(result.ofTarget),
                        percentCell(result.ofDesign), result.isInLoop ? word(result.state) : "added later"});
    }
    return textTable(rows, {0, 8});
}

std::string indexSentence(const project::Project& project, const balancing::IndexCircuit& index) {
    if (!index.terminal) {
        return "Index circuit: not known from these readings.";
    }
    std::string path;
    for (const std::size_t branch : index.path) {
        path += (path.empty() ? "" : " > ") + project.branches()[branch].tag;
    }
    std::string out = "Index circuit " + path + ": the valve of " + project.branches()[*index.terminal].tag +
                      (index.isValveFullyOpen ? " is fully open" : " is NOT fully open");
    if (index.path.size() > 1) {
        out += index.isPathFullyOpen ? ", and so is every valve on its path"
                                     : ", and not every valve on its path is";
    }
    return out + ".";
}

class CheckCommand : public Command {
  public:
    void describe(CLI::App& app) override {
        app.add_option("FILE", m_file, "the workbook, FILE.wwj")->required();
        app.add_option("--round", m_round,
                       "number of the round; without it the last one that is no witness round");
        app.add_flag("--json", m_isJson, "print one JSON document");
    }

    int run(Surroundings& surroundings) override {
        const auto workbook = openWorkbook(surroundings, m_file, workbook::OpenMode::ReadOnly);
        if (workbook == nullptr) {
            return kFileTrouble;
        }
        const project::Project& project = workbook->project();
        const project::Round* round =
            m_round ? project.roundNumbered(*m_round) : project::lastOwnRound(project);
        if (m_round && round == nullptr) {
            return badInput(surroundings, roundUnknown(m_file, project, *m_round));
        }
        Assessment assessment =
            round != nullptr ? balancing::assess(project, round->id) : balancing::assessLast(project);
        balancing::addModelFindings(project, assessment);
        if (m_isJson) {
            surroundings.out << checkJson(project, assessment);
        } else {
            print(surroundings, project, assessment);
        }
        return assessment.verdict == balancing::Verdict::Accepted ? kDone : kNotAccepted;
    }

  private:
    static void print(Surroundings& surroundings, const project::Project& project,
                      const Assessment& assessment) {
        std::ostream& out = surroundings.out;
        out << project.job().name;
        if (assessment.round) {
            out << ", round " << assessment.roundNumber << " (" << project::name(assessment.kind) << ")";
        }
        out << "\n\n" << branchTable(project, assessment) << "\n";
        const balancing::ShareCount count = balancing::shareCount(assessment);
        if (count.onShare) {
            out << "On share " << *count.onShare << " of " << count.all << " terminals";
        } else {
            out << "Shares not known: read " << count.read << " of " << count.all << " terminals";
        }
        if (assessment.spread) {
            out << ", largest spread in a group " << percentCell(assessment.spread) << " %";
        }
        if (assessment.totalFlow) {
            out << ", total "
                << percentCell(quantity::Ratio::si(*assessment.totalFlow / assessment.totalDesign))
                << " % of design";
        }
        if (const std::size_t doubtful = balancing::doubtfulInTotal(assessment); doubtful > 0) {
            out << ", with " << doubtful << " doubtful";
        }
        out << ".\n" << indexSentence(project, assessment.index) << "\n";
        const auto changes = balancing::changesSince(project, assessment.roundNumber);
        out << (changes.empty() ? "" : "\nChanged since\n");
        for (const base::Fault& change : changes) {
            out << "  " << base::english(change) << "\n";
        }
        if (!assessment.findings.empty()) {
            out << "\nFindings\n";
            for (const balancing::Finding& finding : assessment.findings) {
                out << "  " << jsonName(finding.severity) << "  " << base::englishWithSubject(finding.fault)
                    << "\n";
            }
        }
        out << "\nVerdict: " << verdictWords(assessment.verdict) << "\n";
        for (const base::Fault& reason : assessment.reasons) {
            out << "  " << base::englishWithSubject(reason) << "\n";
        }
    }

    static const char* verdictWords(balancing::Verdict verdict) {
        switch (verdict) {
            case balancing::Verdict::Accepted:
                return "accepted";
            case balancing::Verdict::NotAccepted:
                return "not accepted";
            case balancing::Verdict::Undecidable:
                return "undecidable within the measuring uncertainty";
        }
        return "";
    }

    std::string m_file;
    std::optional<int> m_round;
    bool m_isJson = false;
};

}  // namespace

std::unique_ptr<Command> checkCommand() {
    return std::make_unique<CheckCommand>();
}

}  // namespace ww::app
