#include "core/estimation/detail/linearisation.h"

#include <algorithm>

namespace ww::estimation::detail {

std::vector<std::vector<std::size_t>> readingsByCase(const Learning& learning) {
    std::vector<std::vector<std::size_t>> out(learning.cases.size());
    for (std::size_t reading = 0; reading < learning.observations.size(); ++reading) {
        out[learning.observations[reading].caseIndex].push_back(reading);
    }
    return out;
}

std::vector<std::size_t> sparseCases(const std::vector<std::vector<std::size_t>>& readingsOf,
                                     const LearnOptions& options) {
    std::vector<std::size_t> large;
    for (std::size_t one = 0; one < readingsOf.size(); ++one) {
        if (readingsOf[one].size() >= options.leastSparseReadings) {
            large.push_back(one);
        }
    }
    std::stable_sort(large.begin(), large.end(), [&](std::size_t one, std::size_t other) {
        return readingsOf[one].size() > readingsOf[other].size();
    });
    large.resize(std::min(large.size(), options.maxSparseCases));
    return large;
}

std::shared_ptr<const Factorisation> linearisation(const Learning& learning, const FreeUnknowns& unknowns,
                                                   std::span<const std::optional<CaseState>> states,
                                                   std::span<const std::size_t> sparse,
                                                   std::span<const double> weightOfReadings,
                                                   std::span<const FlowProbe> probes) {
    const auto readingsOf = readingsByCase(learning);
    std::vector<bool> isSparse(readingsOf.size(), false);
    std::unique_ptr<const FlowSystem> base;
    if (!sparse.empty()) {
        std::vector<const CaseState*> sparseStates;
        std::vector<std::size_t> readings;
        std::vector<double> weights;
        for (const std::size_t one : sparse) {
            isSparse[one] = true;
            sparseStates.push_back(&*states[one]);
            for (const std::size_t reading : readingsOf[one]) {
                readings.push_back(reading);
                weights.push_back(weightOfReadings[reading]);
            }
        }
        base = std::make_unique<const FlowSystem>(learning, unknowns, sparse, sparseStates,
                                                  std::move(readings), std::move(weights), probes);
    }
    DenseReadings dense;
    std::vector<Eigen::MatrixXd> blocks;
    for (std::size_t one = 0; one < readingsOf.size(); ++one) {
        if (readingsOf[one].empty() || isSparse[one]) {
            continue;
        }
        blocks.push_back(readingRows(learning, unknowns, *states[one], readingsOf[one]));
        for (const std::size_t reading : readingsOf[one]) {
            dense.readings.push_back(reading);
            dense.weightOfReadings.push_back(weightOfReadings[reading]);
        }
    }
    dense.rows.resize(static_cast<Eigen::Index>(dense.readings.size()), unknowns.count());
    Eigen::Index row = 0;
    for (const Eigen::MatrixXd& block : blocks) {
        dense.rows.middleRows(row, block.rows()) = block;
        row += block.rows();
    }
    return std::make_shared<const Factorisation>(unknowns, std::move(base), std::move(dense));
}

}  // namespace ww::estimation::detail
