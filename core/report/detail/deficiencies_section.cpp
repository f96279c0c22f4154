#include <algorithm>

#include "core/project/names.h"
#include "core/report/detail/record_words.h"
#include "core/report/detail/sections.h"

namespace ww::report::detail {
namespace {

using project::Deficiency;
using project::DeficiencyStatus;

std::string placeOf(const Source& source, const Deficiency& deficiency) {
    std::string place;
    const auto add = [&place](const std::string& part) {
        place += part.empty() ? "" : (place.empty() ? "" : ", ") + part;
    };
    const auto* branch = deficiency.branch ? source.project.branches().find(*deficiency.branch) : nullptr;
    const auto* pump = deficiency.pump ? source.project.pumps().find(*deficiency.pump) : nullptr;
    add(branch != nullptr ? branch->tag : "");
    add(pump != nullptr ? pump->tag : "");
    add(deficiency.location);
    return place;
}

/// What a reading says and its round, where there is one.
void addReading(const Source& source, const std::optional<base::Id>& id, std::vector<base::Fault>& parts) {
    const project::Reading* reading = id ? source.project.readings().find(*id) : nullptr;
    if (reading != nullptr) {
        parts.push_back(
            say(kReadingInRound, {valueOf(*reading), std::to_string(source.roundNumber(reading->round))}));
    }
}

Cell evidenceOf(const Source& source, const Deficiency& deficiency) {
    std::vector<base::Fault> parts;
    addReading(source, deficiency.reading, parts);
    const auto photos =
        std::count_if(source.project.attachments().begin(), source.project.attachments().end(),
                      [&](const project::Attachment& file) { return file.deficiency == deficiency.id; });
    if (photos > 0) {
        parts.push_back(say(photos == 1 ? kOneFile : kSeveralFiles, {std::to_string(photos)}));
    }
    return cell(std::move(parts), "; ");
}

Cell statusOf(const Source& source, const Deficiency& deficiency) {
    std::vector<base::Fault> parts{word(std::string(project::name(deficiency.status)))};
    if (deficiency.retested) {
        parts.push_back(say(kTestedAgain, {deficiency.retested->date()}));
    }
    addReading(source, deficiency.retestReading, parts);
    if (!deficiency.retestResult.empty()) {
        parts.push_back(plain(deficiency.retestResult));
    }
    return cell(std::move(parts), "; ");
}

Table tableOf(const Source& source, const std::vector<const Deficiency*>& all) {
    Table table;
    table.isLandscape = true;
    table.title = say(kDeficienciesTable);
    table.columns = {column(kNumberColumn, 10, Alignment::Right),
                     column(kSubjectColumn, 34),
                     column(kWrongColumn, 72),
                     column(kTradeColumn, 26),
                     column(kRemedyColumn, 50),
                     column(kEvidenceColumn, 34),
                     column(kStatusColumn, 40)};
    for (const Deficiency* one : all) {
        std::string wrong = one->description;
        wrong += one->consequence.empty() ? "" : (wrong.empty() ? "" : ". ") + one->consequence;
        if (!one->raisedBy.empty() || one->raised) {
            wrong += " (" + one->raisedBy + (one->raisedBy.empty() || !one->raised ? "" : ", ") +
                     (one->raised ? one->raised->date() : "") + ")";
        }
        table.rows.push_back({cell(std::to_string(one->number)), cell(placeOf(source, *one)), cell(wrong),
                              cell(one->trade), cell(one->remedy), evidenceOf(source, *one),
                              statusOf(source, *one)});
    }
    return table;
}

/// Photos, those of deficiencies first, in the order of their numbers.
void addPhotos(const Source& source, const std::vector<const Deficiency*>& all, Section& section) {
    std::vector<const project::Attachment*> files;
    const auto take = [&](const auto& isWanted) {
        for (const project::Attachment& file : source.project.attachments()) {
            if (isWanted(file)) {
                files.push_back(&file);
            }
        }
    };
    for (const Deficiency* one : all) {
        take([&](const project::Attachment& file) { return file.deficiency == one->id; });
    }
    take([](const project::Attachment& file) { return !file.deficiency; });
    if (files.empty()) {
        return;
    }
    section.statements.push_back(say(kPhotosKept, {std::to_string(files.size())}));
    for (const project::Attachment* file : files) {
        if (!file->mediaType.starts_with("image/")) {
            continue;
        }
        const Deficiency* deficiency =
            file->deficiency ? source.project.deficiencies().find(*file->deficiency) : nullptr;
        const project::Branch* branch =
            file->branch ? source.project.branches().find(*file->branch) : nullptr;
        const std::string caption = file->caption.empty() ? file->name : file->caption;
        const base::Fault title = deficiency != nullptr
                                      ? say(kPhotoOfDeficiency, {std::to_string(deficiency->number), caption})
                                  : branch != nullptr ? say(kPhotoOfBranch, {branch->tag, caption})
                                                      : plain(caption);
        section.figures.push_back({FigureKind::Photo, title,
                                   say(kPhotoTaken, {file->name, file->person.empty() ? "-" : file->person,
                                                     file->time ? timeText(file->time) : "-"}),
                                   file->id});
    }
}

}  // namespace

Section deficienciesSection(const Source& source) {
    Section section;
    section.number = kDeficiencies;
    section.title = say(kDeficienciesTitle);
    std::vector<const Deficiency*> all;
    std::size_t open = 0;
    for (const Deficiency& deficiency : source.project.deficiencies()) {
        all.push_back(&deficiency);
        open += deficiency.status == DeficiencyStatus::Open || deficiency.status == DeficiencyStatus::Remedied
                    ? 1U
                    : 0U;
    }
    std::stable_sort(all.begin(), all.end(),
                     [](const Deficiency* a, const Deficiency* b) { return a->number < b->number; });
    if (all.empty()) {
        section.statements.push_back(say(kNoDeficiencies));
    } else {
        section.statements.push_back(
            say(kDeficiencyCount, {std::to_string(all.size()), std::to_string(open)}));
        section.tables.push_back(tableOf(source, all));
    }
    addPhotos(source, all, section);
    return section;
}

}  // namespace ww::report::detail
