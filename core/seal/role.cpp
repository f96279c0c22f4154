#include "core/seal/role.h"

#include "core/base/term.h"

namespace ww::seal {
namespace {

constexpr base::MessageForm kReadingsTaken{"seal_readings_taken", "Readings taken"};
constexpr base::MessageForm kReviewedAndAccepted{"seal_reviewed_and_accepted", "Reviewed and accepted"};

}  // namespace

std::string_view name(Role role) {
    return role == Role::Technician ? base::term("technician") : base::term("supervisor");
}

std::optional<Role> roleNamed(std::string_view text) {
    for (const Role role : {Role::Technician, Role::Supervisor}) {
        if (text == name(role)) {
            return role;
        }
    }
    return std::nullopt;
}

const base::MessageForm& meaning(Role role) {
    return role == Role::Technician ? kReadingsTaken : kReviewedAndAccepted;
}

}  // namespace ww::seal
