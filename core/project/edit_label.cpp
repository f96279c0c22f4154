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
                                                                      &labels::kReason,
                                                                      &labels::kNoReason,
                                                                      &labels::kDoubtful,
                                                                      &labels::kNotDoubtful,
                                                                      &labels::kNote,
                                                                      &labels::kHold,
                                                                      &labels::kPastedReading,
                                                                      &labels::kPastedReadings,
                                                                      &labels::kGaugeRise,
                                                                      &labels::kPumpTest,
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

/// One step through a form: letters that stand there, then the place behind them.
struct LabelPiece {
    std::string_view letters;
    std::optional<std::size_t> argument;  ///< nothing: the form ends with its letters
};

/// "DP {1}, {2}" as "DP " with place 0 and ", " with place 1.
std::vector<LabelPiece> labelPieces(std::string_view form) {
    std::vector<LabelPiece> pieces;
    std::size_t from = 0;
    for (std::size_t open = form.find('{'); open != std::string_view::npos; open = form.find('{', from)) {
        pieces.push_back({form.substr(from, open - from), static_cast<std::size_t>(form[open + 1] - '1')});
        from = form.find('}', open) + 1;
    }
    pieces.push_back({form.substr(from), {}});
    return pieces;
}

/// The arguments of a label of this form; nothing where it is of another.
std::optional<std::vector<std::string>> labelArguments(std::string_view form, std::string_view label) {
    const std::vector<LabelPiece> pieces = labelPieces(form);
    if (!label.starts_with(pieces.front().letters)) {
        return {};
    }
    std::vector<std::string> arguments(pieces.size() - 1);
    std::string_view rest = label.substr(pieces.front().letters.size());
    for (std::size_t i = 0; i + 1 < pieces.size(); ++i) {
        const std::string_view behind = pieces[i + 1].letters;
        const bool isLast = i + 2 == pieces.size();
        const std::size_t end = !isLast                  ? rest.find(behind)
                                : rest.ends_with(behind) ? rest.size() - behind.size()
                                                         : std::string_view::npos;
        if (end == std::string_view::npos) {
            return {};
        }
        arguments[*pieces[i].argument] = std::string(rest.substr(0, end));
        rest.remove_prefix(end + behind.size());
    }
    return rest.empty() ? std::optional(arguments) : std::nullopt;
}

std::size_t lettersOf(std::string_view form) {
    std::size_t count = 0;
    for (const LabelPiece& piece : labelPieces(form)) {
        count += piece.letters.size();
    }
    return count;
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
    for (const base::MessageForm* form : kLabelForms) {
        const std::size_t letters = lettersOf(form->text);
        if (letters <= most) {
            continue;
        }
        if (auto arguments = labelArguments(form->text, label)) {
            best = base::Fault{form, {}, std::move(*arguments)};
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
