// Contracts between pieces of code: EXPECTS(condition) stays on in release builds.
// Not for bad input from people or files: that is a Result (result.h).
#pragma once

#include <stdexcept>

namespace ww::base {

/// A broken contract between two pieces of this program: a defect, never the user's fault.
/// Caught only by the outermost frames (the desktop's bridge and the mains of app/).
class ContractBreach : public std::logic_error {
  public:
    using std::logic_error::logic_error;
};

[[noreturn]] void breach(const char* condition, const char* file, int line);

}  // namespace ww::base

#define EXPECTS(condition) ((condition) ? (void)0 : ::ww::base::breach(#condition, __FILE__, __LINE__))
