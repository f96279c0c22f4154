// A branch found by what a person types of its tag. Not for sorting or filtering.
#pragma once

#include <QString>
#include <optional>
#include <span>

#include "core/project/project.h"

namespace ww::ui {

/// The place in `order` (indices into Project::branches()) of the branch whose tag is `text`, or ends in the
/// same number, or holds it, in this order of preference; nothing where there is none. Case does not matter.
std::optional<std::size_t> placeFound(const project::Project& project, std::span<const std::size_t> order,
                                      const QString& text);

}  // namespace ww::ui
