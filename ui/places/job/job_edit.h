// The facts of a job as fields: what each shows, and a typed text as an edit. Not for showing them.
#pragma once

#include <QString>

#include "core/base/result.h"
#include "core/project/edit.h"
#include "core/project/project.h"

namespace ww::ui {

/// The facts that are typed. Units and fluid are chosen.
enum class JobField {
    Name,
    Site,
    Client,
    Concentration,
    Temperature,
    ToleranceLow,
    ToleranceHigh,
    MatchingBand,
    PowerPrice,
    Currency,
    HoursPerYear,
    Altitude,
    FillPressure,
    ReadingAgeLimit,
    CodeEdition,
    CodeClause,
    CodeException,
};

/// The name of a fact in English, a word of the program (core/base/term.h): for labels of the journal.
const char* jobFieldName(JobField field);
/// What stands in a field, as entered.
QString jobFieldText(const project::Job& job, JobField field);

/// The job with a typed text in a field. Refused: no number, a unit of another kind, limits the wrong way
/// round, a fluid outside its range.
base::Result<project::Job> withJobField(const project::Job& job, JobField field, const QString& text);

/// The job with another fluid; water takes the concentration back to zero. Refused where the fluid cannot be
/// at the job's temperature.
base::Result<project::Job> withFluid(const project::Job& job, fluid::FluidKind kind);

}  // namespace ww::ui
