// waterwright merge: two copies of one workbook into a third.
#include <CLI/CLI.hpp>
#include <nlohmann/json.hpp>
#include <ostream>

#include "app/commands/command.h"
#include "core/project/names.h"
#include "core/workbook/merge_files.h"
#include "core/workbook/sound_copy.h"

namespace ww::app {

namespace {

using nlohmann::ordered_json;
using project::MergeConflict;

ordered_json sideJson(const std::string& value, const std::string& person,
                      const std::optional<base::Instant>& time, const std::string& instrument) {
    return {{"value", value},
            {"person", person},
            {"time", time ? ordered_json(time->text()) : ordered_json(nullptr)},
            {"instrument", instrument}};
}

ordered_json conflictJson(const MergeConflict& conflict) {
    return {{"id", conflict.id.text()},
            {"place", conflict.place},
            {"record", std::string(project::name(conflict.recordKind))},
            {"field", conflict.field},
            {"ours", sideJson(conflict.ours, conflict.ourPerson, conflict.ourTime, conflict.ourInstrument)},
            {"theirs",
             sideJson(conflict.theirs, conflict.theirPerson, conflict.theirTime, conflict.theirInstrument)}};
}

std::string sideText(const std::string& value, const std::string& person,
                     const std::optional<base::Instant>& time) {
    std::string out = value.empty() ? "nothing" : value;
    out += person.empty() ? "" : ", " + person;
    return out + (time ? ", " + time->text() : "");
}

class MergeCommand : public Command {
  public:
    void describe(CLI::App& app) override {
        app.add_option("FIRST", m_first, "the workbook, A.wwj; its values stand until someone chooses")
            ->required();
        app.add_option("SECOND", m_second, "the copy that another laptop worked in, B.wwj")->required();
        app.add_option("--out", m_out, "the merged workbook, C.wwj; must not exist")->required();
        app.add_flag("--json", m_isJson, "print one JSON document");
    }

    int run(Surroundings& surroundings) override {
        const workbook::Session session{surroundings.clock, surroundings.ids, surroundings.person,
                                        surroundings.machine};
        const auto merged = workbook::mergeFiles(m_first, m_second, m_out, session);
        if (!merged) {
            return refuse(surroundings, merged.fault());
        }
        m_isJson ? printJson(surroundings, *merged) : printText(surroundings, *merged);
        return merged->open.empty() ? kDone : kNotAccepted;
    }

  private:
    int refuse(Surroundings& surroundings, const base::Fault& fault) const {
        if (m_isJson) {
            const ordered_json line{{"file", fault.subject.empty() ? m_second : fault.subject},
                                    {"row", 0},
                                    {"column", ""},
                                    {"text", base::englishWithSubject(fault)}};
            print(surroundings, {{"written", nullptr},
                                 {"faults", ordered_json::array({line})},
                                 {"conflicts", ordered_json::array()}});
        }
        if (workbook::isDamage(fault)) {
            surroundings.err << base::englishWithSubject(workbook::adviceFor(fault.subject)) << "\n";
        }
        const bool isBadInput = fault.is(workbook::kNotACopy) || fault.is(workbook::kMergeWithItself);
        return isBadInput ? badInput(surroundings, fault) : fileTrouble(surroundings, fault);
    }

    void printJson(Surroundings& surroundings, const workbook::MergedFiles& merged) const {
        ordered_json conflicts = ordered_json::array();
        for (const MergeConflict& conflict : merged.open) {
            conflicts.push_back(conflictJson(conflict));
        }
        print(surroundings, {{"written", m_out},
                             {"faults", ordered_json::array()},
                             {"conflicts", std::move(conflicts)},
                             {"actions", merged.report.actions},
                             {"readings_added", merged.report.readingsAdded},
                             {"readings_identical", merged.report.readingsIdentical}});
    }

    static void print(Surroundings& surroundings, const ordered_json& document) {
        surroundings.out << document.dump(2, ' ', false, ordered_json::error_handler_t::replace) << "\n";
    }

    void printText(Surroundings& surroundings, const workbook::MergedFiles& merged) const {
        const workbook::MergeReport& report = merged.report;
        surroundings.out << m_out << ": ";
        if (report.actions == 0) {
            surroundings.out << "the second copy had nothing new";
        } else {
            surroundings.out << report.actions << (report.actions == 1 ? " action" : " actions") << " of "
                             << report.machine << " taken over, " << report.readingsAdded
                             << (report.readingsAdded == 1 ? " reading" : " readings") << " added, "
                             << report.readingsIdentical << " read alike on both";
        }
        surroundings.out << "; " << merged.open.size()
                         << (merged.open.size() == 1 ? " conflict" : " conflicts") << " to decide\n";
        for (const MergeConflict& conflict : merged.open) {
            surroundings.out << "  " << conflict.place << ": "
                             << sideText(conflict.ours, conflict.ourPerson, conflict.ourTime) << " | "
                             << sideText(conflict.theirs, conflict.theirPerson, conflict.theirTime) << "\n";
        }
    }

    std::string m_first;
    std::string m_second;
    std::string m_out;
    bool m_isJson = false;
};

}  // namespace

std::unique_ptr<Command> mergeCommand() {
    return std::make_unique<MergeCommand>();
}

}  // namespace ww::app
