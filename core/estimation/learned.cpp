#include "core/estimation/learned.h"

namespace ww::estimation {

std::vector<double> Learned::lnFactorOfUnknowns() const {
    std::vector<double> out;
    for (const LearnedUnknown& unknown : unknowns) {
        out.push_back(unknown.lnFactor);
    }
    return out;
}

}  // namespace ww::estimation
