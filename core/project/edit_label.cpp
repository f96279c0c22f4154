#include "core/project/edit_label.h"

#include <array>
#include <cctype>

namespace ww::project {

namespace {

constexpr auto kLabelForms = std::to_array<const base::MessageForm*>({&labels::kDp,
                                                                      &labels::kDpAgain,
                                                                      &labels::kDpAt,
                                                                      &labels::kDpAtReference,
                                                                      &labels::kDpShut,
                                                                      &labels::kDpInPlace,
                                                                      &labels::kSetting,
                                                                      &labels::kSettingInPlace,
                                                                      &labels::kFlow,
                                                                      &labels::kCannotBeRead,
                                                                      &labels::kNotTurned,
                                                                      &labels::kReason,
                                                                      &labels::kNoReason,
                                                                      &labels::kDoubtful,
                                                                      &labels::kNotDoubtful,
                                                                      &labels::kNote,
                                                                      &labels::kNoNote,
                                                                      &labels::kHold,
                                                                      &labels::kPastedReading,
                                                                      &labels::kPastedReadings,
                                                                      &labels::kGaugeRise,
                                                                      &labels::kPumpTest,
                                                                      &labels::kPumpTestEmptied,
                                                                      &labels::kOpenRound,
                                                                      &labels::kOpenWitness,
                                                                      &labels::kCloseRound,
                                                                      &labels::kSendRound,
                                                                      &labels::kAcceptRound,
                                                                      &labels::kSendBackRound,
                                                                      &labels::kWithdrawRound,
                                                                      &labels::kComment,
                                                                      &labels::kAnswer,
                                                                      &labels::kResolve,
                                                                      &labels::kReopen,
                                                                      &labels::kWithdrawReport,
                                                                      &labels::kFindingReason,
                                                                      &labels::kNoFindingReason,
                                                                      &labels::kSigningReason,
                                                                      &labels::kNoSigningReason,
                                                                      &labels::kSign,
                                                                      &labels::kDeficiency,
                                                                      &labels::kUsualReadiness,
                                                                      &labels::kReadiness,
                                                                      &labels::kRemoveReadiness,
                                                                      &labels::kNewJob,
                                                                      &labels::kNewJobNamed,
                                                                      &labels::kPracticeJob,
                                                                      &labels::kRecord,
                                                                      &labels::kImport,
                                                                      &labels::kCheckpoint,
                                                                      &labels::kMergeOne,
                                                                      &labels::kMerge,
                                                                      &labels::kChoice,
                                                                      &labels::kChoiceBoth,
                                                                      &labels::kUnits,
                                                                      &labels::kFluid,
                                                                      &labels::kJobField,
                                                                      &labels::kCodeForm,
                                                                      &labels::kLoad,
                                                                      &labels::kZones,
                                                                      &labels::kBranch,
                                                                      &labels::kNewBranch,
                                                                      &labels::kRoute,
                                                                      &labels::kNotes,
                                                                      &labels::kNoNotes,
                                                                      &labels::kPhoto,
                                                                      &labels::kRemovePhoto,
                                                                      &labels::kDevice,
                                                                      &labels::kField,
                                                                      &labels::kNewValve,
                                                                      &labels::kRemoveValve,
                                                                      &labels::kValveTable,
                                                                      &labels::kPastedTable,
                                                                      &labels::kNewPump,
                                                                      &labels::kCurve,
                                                                      &labels::kSetPoint,
                                                                      &labels::kNewSetPoint,
                                                                      &labels::kRemoveSetPoint,
                                                                      &labels::kInstrument,
                                                                      &labels::kNewInstrument,
                                                                      &labels::kRemoveInstrument,
                                                                      &labels::kPerson,
                                                                      &labels::kNewPerson,
                                                                      &labels::kRemovePerson,
                                                                      &labels::kClock,
                                                                      &labels::kClockOwn});

/// How many letters each form has beside its arguments.
const std::array<std::size_t, kLabelForms.size()>& lettersOfForms() {
    static const auto kLetters = [] {
        constexpr std::size_t kMostArguments = 9;
        const std::vector<std::string> nothing(kMostArguments);
        std::array<std::size_t, kLabelForms.size()> letters{};
        for (std::size_t i = 0; i < letters.size(); ++i) {
            letters[i] = base::filledIn(kLabelForms[i]->text, nothing).size();
        }
        return letters;
    }();
    return kLetters;
}

}  // namespace

std::span<const base::MessageForm* const> labelForms() {
    return kLabelForms;
}

std::string label(const base::MessageForm& form, const std::vector<std::string>& arguments) {
    return base::filledIn(form.text, arguments);
}

std::optional<base::Fault> readLabel(std::string_view label) {
    std::optional<base::Fault> best;
    std::size_t most = 0;
    for (std::size_t i = 0; i < kLabelForms.size(); ++i) {
        const std::size_t letters = lettersOfForms()[i];
        if (letters <= most) {
            continue;
        }
        if (auto arguments = base::argumentsIn(kLabelForms[i]->text, label)) {
            best = base::Fault{kLabelForms[i], {}, std::move(*arguments)};
            most = letters;
        }
    }
    return best;
}

std::string fieldInLabel(std::string title) {
    const auto isSmall = [&](std::size_t at) {
        return std::islower(static_cast<unsigned char>(title[at])) != 0;
    };
    if (title.size() > 1 && isSmall(1)) {
        title[0] = static_cast<char>(std::tolower(static_cast<unsigned char>(title[0])));
    }
    return title;
}

}  // namespace ww::project
