// Who works at this computer, as the system knows them. Not for the people of a job (core/project/records.h).
#pragma once

#include <string>

namespace ww::base {

/// What the system says of an account; all of it may be empty.
struct Account {
    std::string fullName;  ///< the comment field of the account: a name, then fields behind commas
    std::string login;
};

/// The account that this program runs under; a login from USER or LOGNAME where the system has no entry for
/// it.
Account currentAccount();

/// The name under which an account's actions are recorded: its full name, else its login, else `unknown`.
std::string personOf(const Account& account, const std::string& unknown);

/// personOf() the current account.
std::string personAtTheDesk(const std::string& unknown);

}  // namespace ww::base
