// The unknowns that a fit may move, counted from 0 and measured in their prior standard deviations.
// Inside estimation only.
#pragma once

#include <Eigen/Core>
#include <cstddef>
#include <span>
#include <vector>

#include "core/estimation/learn_options.h"
#include "core/estimation/learning.h"
#include "core/estimation/posterior.h"

namespace ww::estimation::detail {

struct FreeUnknowns {
    FreeUnknowns(const Learning& learning, const LearnOptions& options);
    /// As a fit used them; 0: held.
    FreeUnknowns(const Learning& learning, std::span<const double> priorSdOfUnknowns);

    static constexpr std::ptrdiff_t kHeld = -1;
    std::vector<std::size_t> unknownOf;  ///< by free position
    std::vector<std::ptrdiff_t> freeOf;  ///< by unknown, or kHeld
    std::vector<double> priorSds;        ///< by unknown; 0: held
    std::vector<double> priors;          ///< by unknown

    Eigen::Index count() const { return static_cast<Eigen::Index>(unknownOf.size()); }
    /// Column by column: weights by unknown as weights by free position, per prior standard deviation.
    Eigen::MatrixXd gathered(std::span<const Functional> functionals) const;

  private:
    void add(const Unknown& unknown, double sd);
};

}  // namespace ww::estimation::detail
