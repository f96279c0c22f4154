#include "core/base/version.h"

namespace ww::base {

std::string_view version() {
    return WW_VERSION;
}

}  // namespace ww::base
