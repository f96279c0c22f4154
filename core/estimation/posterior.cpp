#include "core/estimation/posterior.h"

#include <algorithm>

#include "core/estimation/detail/factorisation.h"
#include "core/estimation/detail/reading_gain.h"

namespace ww::estimation {

namespace {

CovarianceTable tableOf(const Eigen::MatrixXd& matrix) {
    CovarianceTable out;
    out.size = static_cast<std::size_t>(matrix.rows());
    out.weightOfPairs.resize(out.size * out.size);
    for (std::size_t row = 0; row < out.size; ++row) {
        for (std::size_t column = 0; column < out.size; ++column) {
            // The mean of both halves: symmetric to the last digit.
            const auto i = static_cast<Eigen::Index>(row);
            const auto j = static_cast<Eigen::Index>(column);
            out.weightOfPairs[row * out.size + column] = (matrix(i, j) + matrix(j, i)) / 2;
        }
    }
    return out;
}

}  // namespace

double Posterior::varianceFactor(const Functional& functional) const {
    return varianceFactorOfEach({&functional, 1}).front();
}

std::vector<double> Posterior::varianceFactorOfEach(std::span<const Functional> functionals) const {
    const Eigen::MatrixXd columns = m_factorisation->unknowns().gathered(functionals);
    const Eigen::VectorXd variances =
        columns.cwiseProduct(m_factorisation->solve(columns)).colwise().sum().transpose();
    return {variances.begin(), variances.end()};
}

CovarianceTable Posterior::covariance(std::span<const Functional> functionals) const {
    const Eigen::MatrixXd columns = m_factorisation->unknowns().gathered(functionals);
    return tableOf(columns.transpose() * m_factorisation->solve(columns));
}

CovarianceTable Posterior::covariance() const {
    const detail::FreeUnknowns& unknowns = m_factorisation->unknowns();
    const Eigen::Index free = unknowns.count();
    const Eigen::MatrixXd inside = m_factorisation->solve(Eigen::MatrixXd::Identity(free, free));
    const auto all = static_cast<Eigen::Index>(unknowns.priors.size());
    Eigen::MatrixXd out = Eigen::MatrixXd::Zero(all, all);
    for (Eigen::Index row = 0; row < free; ++row) {
        for (Eigen::Index column = 0; column < free; ++column) {
            const std::size_t one = unknowns.unknownOf[static_cast<std::size_t>(row)];
            const std::size_t other = unknowns.unknownOf[static_cast<std::size_t>(column)];
            out(static_cast<Eigen::Index>(one), static_cast<Eigen::Index>(other)) =
                inside(row, column) * unknowns.priorSds[one] * unknowns.priorSds[other];
        }
    }
    return tableOf(out);
}

std::vector<ReadingGain> Posterior::gains(std::span<const Functional> aims,
                                          std::span<const CandidateReading> candidates) const {
    const Eigen::MatrixXd aimed = m_factorisation->unknowns().gathered(aims);
    const Eigen::MatrixXd covered = m_factorisation->solve(aimed);
    const Eigen::VectorXd before = aimed.cwiseProduct(covered).colwise().sum().transpose();
    const std::vector<Functional> functionals = detail::functionalsOf(candidates);
    const std::vector<double> own = varianceFactorOfEach(functionals);
    const Eigen::MatrixXd across = covered.transpose() * m_factorisation->unknowns().gathered(functionals);
    std::vector<ReadingGain> out;
    for (std::size_t i = 0; i < candidates.size(); ++i) {
        const double noise = candidates[i].relativeSd * candidates[i].relativeSd + own[i];
        const Eigen::VectorXd taken = across.col(static_cast<Eigen::Index>(i)).array().square() / noise;
        out.push_back(detail::gainOf(before, taken));
    }
    return out;
}

}  // namespace ww::estimation
