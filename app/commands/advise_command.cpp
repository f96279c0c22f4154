// waterwright advise: every valve's setting for a proportional balance, from what the readings say. Nothing
// is stored.
#include <CLI/CLI.hpp>
#include <ostream>

#include "app/commands/advise_json.h"
#include "app/commands/open_workbook.h"
#include "app/commands/pump_text.h"
#include "app/commands/text_table.h"
#include "core/balancing/advice/advice_forms.h"
#include "core/project/setting_text.h"
#include "core/quantity/measured.h"

namespace ww::app {

namespace {

using balancing::Advice;
using balancing::LearnedLoop;
using balancing::SettingAdvice;
using quantity::Unit;

std::string percent(quantity::Ratio ratio) {
    return base::Decimal::fromNumber(100 * ratio.si(), 1).text();
}

/// A chance; never a certainty that nobody has. `isBound`: it is at least that.
std::string chance(quantity::Ratio ratio, bool isBound) {
    constexpr double kMost = 0.999;
    return ratio.si() > kMost ? "over " + percent(quantity::Ratio::si(kMost))
                              : (isBound ? "at least " : "") + percent(ratio);
}

std::string share(const balancing::ExpectedShare& expected) {
    return percent(expected.ofTarget) + " +- " + percent(expected.uncertainty);
}

class AdviseCommand : public Command {
  public:
    void describe(CLI::App& app) override {
        app.add_option("FILE", m_file, "the workbook, FILE.wwj")->required();
        app.add_flag("--json", m_isJson, "print one JSON document");
    }

    int run(Surroundings& surroundings) override {
        const auto workbook = openWorkbook(surroundings, m_file, workbook::OpenMode::ReadOnly);
        if (workbook == nullptr) {
            return kFileTrouble;
        }
        const project::Project& project = workbook->project();
        const LearnedLoop learned = balancing::learn(project);
        const Advice advice = balancing::advise(project, learned);
        const pump_room::PumpDecision decision = pump_room::decidePump(
            project, pump_room::decisionOptions(project, pump_room::usableResistances(project, learned)));
        if (m_isJson) {
            surroundings.out << adviseJson(project, learned, advice, decision);
        } else {
            print(surroundings.out, project, learned, advice, decision);
        }
        return kDone;
    }

  private:
    static void print(std::ostream& out, const project::Project& project, const LearnedLoop& learned,
                      const Advice& advice, const pump_room::PumpDecision& decision) {
        out << project.job().name << ", settings for a proportional balance (not a reading)\n\n";
        for (const base::Fault& fault : advice.whyNot) {
            out << "Not ready: " << base::englishWithSubject(fault) << "\n";
        }
        if (advice.status == balancing::AdviceStatus::Unverified) {
            out << base::english({&balancing::kAdviceUnverified, "", {}}) << "\n";
        } else if (advice.status == balancing::AdviceStatus::Verified) {
            const bool isProofOpen = !advice.indexSteps.empty();
            out << base::english(
                       {isProofOpen ? &balancing::kAdviceSharesVerified : &balancing::kAdviceVerified,
                        "",
                        {}})
                << "\n";
        }
        if (advice.settings.empty()) {
            return;
        }
        out << "\n" << settingsTable(project, advice) << "\n";
        printAfter(out, project, advice);
        if (advice.pump) {
            out << "\nPump, as decided (waterwright pump):\n" << pumpFiguresText(project, decision);
        }
        printNotes(out, learned, advice);
    }

    static std::string settingsTable(const project::Project& project, const Advice& advice) {
        const bool isUs = project.job().units == project::UnitSystem::US;
        const Unit dpUnit = isUs ? Unit::Psi : Unit::Kilopascal;
        std::vector<std::vector<std::string>> rows{{"tag", "stands", "set to", "+-",
                                                    "dp " + std::string(quantity::symbol(dpUnit)),
                                                    "indicated % of target", "true % of target", ""}};
        for (const SettingAdvice& setting : advice.settings) {
            std::string remark = setting.isReference ? "reference" : "";
            if (setting.isFullyOpen) {
                remark += remark.empty() ? "open" : ", open";
            }
            if (setting.isSet) {
                remark += remark.empty() ? "set" : ", set";
            }
            const project::Branch& branch = project.branches()[setting.branch];
            rows.push_back({branch.tag,
                            setting.present ? project::settingText(project, branch, *setting.present) : "-",
                            project::settingText(project, branch, setting.setting),
                            quantity::significant(setting.settingUncertainty.si(), 1),
                            quantity::significant(setting.dp.in(dpUnit), 3), share(setting.indicated),
                            share(setting.actual), remark});
        }
        return textTable(rows, {0, 7});
    }

    static void printAfter(std::ostream& out, const project::Project& project, const Advice& advice) {
        const bool isUs = project.job().units == project::UnitSystem::US;
        const Unit flowUnit = project.shownFlowUnit();
        const Unit headUnit = isUs ? Unit::Foot : Unit::Metre;
        const Unit dpUnit = isUs ? Unit::Psi : Unit::Kilopascal;
        const auto head = [&](quantity::PressureDifference rise) {
            return quantity::significant(project.fluid().head(rise).in(headUnit), 3) + " " +
                   std::string(quantity::symbol(headUnit));
        };
        out << "Afterwards: total " << quantity::significant(advice.totalFlow.in(flowUnit), 4) << " "
            << quantity::symbol(flowUnit) << " at " << head(advice.pumpRise) << ", spread "
            << percent(advice.spread) << " %.\n";
        out << "All terminals within the band: indicated "
            << chance(advice.indicatedProbability, advice.isProbabilityBound) << " %, in truth "
            << chance(advice.actualProbability, advice.isProbabilityBound) << " % likely.\n";
        if (advice.next) {
            out << "Next: " << base::englishWithSubject(advice.next->reason) << "; the dp to read then is "
                << quantity::significant(advice.next->dp.in(dpUnit), 3) << " " << quantity::symbol(dpUnit)
                << ".\n";
        }
        if (advice.helpful) {
            out << "Most helpful reading: " << base::englishWithSubject(advice.helpful->why) << "; about "
                << quantity::significant(advice.helpful->expectedDp.in(dpUnit), 3) << " "
                << quantity::symbol(dpUnit) << " is expected.\n";
        }
    }

    static void printNotes(std::ostream& out, const LearnedLoop& learned, const Advice& advice) {
        std::vector<std::string> lines;
        for (const balancing::DoubtfulReading& doubtful : learned.doubtful) {
            lines.push_back("doubtful  " + base::englishWithSubject(doubtful.why));
        }
        const auto take = [&](const std::vector<base::Fault>& faults) {
            for (const base::Fault& fault : faults) {
                lines.push_back("note  " + base::englishWithSubject(fault));
            }
        };
        take(learned.faults);
        take(advice.notes);
        for (const SettingAdvice& setting : advice.settings) {
            take(setting.notes);
        }
        if (advice.pump) {
            take(advice.pump->notes);
        }
        if (!lines.empty()) {
            out << "\n";
            for (const std::string& line : lines) {
                out << line << "\n";
            }
        }
    }

    std::string m_file;
    bool m_isJson = false;
};

}  // namespace

std::unique_ptr<Command> adviseCommand() {
    return std::make_unique<AdviseCommand>();
}

}  // namespace ww::app
