#include "core/base/account.h"

#include <pwd.h>
#include <unistd.h>

#include <cctype>
#include <cstdlib>

namespace ww::base {

namespace {

std::string withoutBlanks(const std::string& text) {
    const std::size_t first = text.find_first_not_of(" \t");
    return first == std::string::npos ? std::string()
                                      : text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

/// In the comment field "&" stands for the login with a capital letter (passwd(5) of the BSD systems).
std::string withLoginPutIn(std::string name, std::string login) {
    const std::size_t mark = name.find('&');
    if (mark == std::string::npos || login.empty()) {
        return name;
    }
    login[0] = static_cast<char>(std::toupper(static_cast<unsigned char>(login[0])));
    return name.replace(mark, 1, login);
}

}  // namespace

Account currentAccount() {
    Account account;
    if (const passwd* entry = getpwuid(geteuid())) {
        account.fullName = entry->pw_gecos == nullptr ? "" : entry->pw_gecos;
        account.login = entry->pw_name == nullptr ? "" : entry->pw_name;
    }
    for (const char* name : {"USER", "LOGNAME"}) {
        const char* value = std::getenv(name);
        account.login = account.login.empty() && value != nullptr ? value : account.login;
    }
    return account;
}

std::string personOf(const Account& account, const std::string& unknown) {
    const std::string login = withoutBlanks(account.login);
    const std::string name =
        withoutBlanks(withLoginPutIn(account.fullName.substr(0, account.fullName.find(',')), login));
    return !name.empty() ? name : !login.empty() ? login : unknown;
}

std::string personAtTheDesk(const std::string& unknown) {
    return personOf(currentAccount(), unknown);
}

}  // namespace ww::base
