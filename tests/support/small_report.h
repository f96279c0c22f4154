// A small report as it would be drawn for signing. Not signed (signed_report.h).
#pragma once

#include "core/seal/prepare_report.h"
#include "tests/support/small_pdf.h"

namespace ww::support {

/// A square, in place of letters.
inline seal::BlockDrawing squareDrawing(int gray) {
    using Step = seal::OutlineStep;
    seal::FilledShape shape;
    shape.gray = gray;
    shape.steps = {Step{Step::Kind::Move, {{{1000, 1000}}}}, Step{Step::Kind::Line, {{{9000, 1000}}}},
                   Step{Step::Kind::Line, {{{9000, 9000}}}},
                   Step{Step::Kind::Curve, {{{7000, 9000}, {3000, 9000}, {1000, 9000}}}}};
    return {{shape}};
}

inline seal::Preparation smallPreparation(bool withSupervisor = true) {
    seal::Preparation preparation;
    const auto add = [&](seal::Role role, int x) {
        preparation.fields.push_back(
            {role, seal::PaperPlace{0, {x, 60000}, {200000, 50000}}, squareDrawing(200)});
    };
    add(seal::Role::Technician, 60000);
    if (withSupervisor) {
        add(seal::Role::Supervisor, 300000);
    }
    preparation.attachments = {{"readings.csv", "text/csv", "Readings as typed", "round,tag\n1,T1\n"},
                               {"job.json", "application/json", "The whole job", "{}"}};
    preparation.binding = {std::string(32, 'a'), std::string(64, 'b')};
    preparation.made = *base::Instant::fromText("2026-03-04T14:02:07Z");
    return preparation;
}

}  // namespace ww::support
