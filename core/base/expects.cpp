#include "core/base/expects.h"

#include <string>

namespace ww::base {

void breach(const char* condition, const char* file, int line) {
    throw ContractBreach(std::string("broken contract: ") + condition + " at " + file + ":" + std::to_string(line));
}

}  // namespace ww::base
