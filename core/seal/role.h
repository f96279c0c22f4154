// Who signs a report, and what the signature means. Not for who may sign (the workbook's people).
#pragma once

#include <optional>
#include <string_view>

#include "core/base/fault.h"

namespace ww::seal {

enum class Role { Technician, Supervisor };

/// "technician" or "supervisor": in commands, JSON and the names of the PDF's signature fields.
std::string_view name(Role role);
/// The role of such a name; nothing for any other text.
std::optional<Role> roleNamed(std::string_view name);
/// What the signature says: "Readings taken" or "Reviewed and accepted".
const base::MessageForm& meaning(Role role);

}  // namespace ww::seal
