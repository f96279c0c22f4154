#include "core/balancing/checks/support.h"
#include "core/project/names.h"

namespace ww::balancing::checks {

/// Flows are corrected for the fluid's density; this asks whether the job says what the fluid is.
void fluidCorrection(const CheckContext& context, std::vector<Finding>& found) {
    const project::Job& job = context.project.job();
    const auto add = [&](const base::MessageForm& form, std::vector<std::string> arguments) {
        found.push_back(
            {base::Fault{&form, "", std::move(arguments)}, Severity::Error, std::nullopt, std::nullopt});
    };
    if (job.fluid != fluid::FluidKind::Water && job.concentration.value.si() <= 0) {
        add(kGlycolWithoutConcentration, {std::string(project::name(job.fluid))});
    } else if (!fluid::Fluid::make(job.fluid, job.concentration.value, job.temperature.value)) {
        add(kFluidUnusable, {});
    }
}

}  // namespace ww::balancing::checks
