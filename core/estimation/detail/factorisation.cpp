#include "core/estimation/detail/factorisation.h"

#include <cmath>

#include "core/base/expects.h"

namespace ww::estimation::detail {

Factorisation::Factorisation(FreeUnknowns unknowns, std::unique_ptr<const FlowSystem> base,
                             DenseReadings dense)
    : m_unknowns(std::move(unknowns)), m_base(std::move(base)), m_dense(std::move(dense)) {
    m_weighted = m_dense.rows;
    for (Eigen::Index row = 0; row < m_weighted.rows(); ++row) {
        m_weighted.row(row) *= std::sqrt(m_dense.weightOfReadings[static_cast<std::size_t>(row)]);
    }
    m_isByUnknowns = !m_base && m_unknowns.count() <= m_weighted.rows();
    Eigen::MatrixXd small;
    if (m_isByUnknowns) {
        small = Eigen::MatrixXd::Identity(m_unknowns.count(), m_unknowns.count());
        small.selfadjointView<Eigen::Lower>().rankUpdate(m_weighted.transpose());
    } else {
        small = Eigen::MatrixXd::Identity(m_weighted.rows(), m_weighted.rows());
        if (m_base) {
            m_baseWeighted = m_base->solve(m_weighted.transpose());
            small.noalias() += m_weighted * m_baseWeighted;
        } else {
            small.selfadjointView<Eigen::Lower>().rankUpdate(m_weighted);
        }
    }
    m_small.compute(small);
}

Eigen::MatrixXd Factorisation::solve(const Eigen::MatrixXd& columns) const {
    if (m_isByUnknowns) {
        return m_small.solve(columns);
    }
    Eigen::MatrixXd out = baseTimes(columns);
    if (m_weighted.rows() == 0) {
        return out;
    }
    const Eigen::MatrixXd corrections = m_small.solve(m_weighted * out);
    if (m_base) {
        out.noalias() -= m_baseWeighted * corrections;
    } else {
        out.noalias() -= m_weighted.transpose() * corrections;
    }
    return out;
}

Eigen::VectorXd Factorisation::step(const Eigen::VectorXd& byReading,
                                    const Eigen::VectorXd& byUnknown) const {
    Eigen::VectorXd right = byUnknown;
    for (std::size_t i = 0; i < m_dense.readings.size(); ++i) {
        right += byReading[static_cast<Eigen::Index>(m_dense.readings[i])] *
                 m_dense.rows.row(static_cast<Eigen::Index>(i)).transpose();
    }
    if (!m_base) {
        return solve(right);
    }
    Eigen::VectorXd inBase(static_cast<Eigen::Index>(m_base->readings().size()));
    for (Eigen::Index i = 0; i < inBase.size(); ++i) {
        inBase[i] = byReading[static_cast<Eigen::Index>(m_base->readings()[static_cast<std::size_t>(i)])];
    }
    Eigen::VectorXd out = m_base->step(inBase, right);
    if (m_weighted.rows() > 0) {
        out -= m_baseWeighted * m_small.solve(m_weighted * out);
    }
    return out;
}

FlowSystem::Variances Factorisation::variances(std::size_t observationCount) const {
    FlowSystem::Variances out =
        m_base ? variancesByBase(observationCount)
               : FlowSystem::Variances{variancesOfUnknowns(), std::vector<double>(observationCount, 0), {}};
    if (m_weighted.rows() > 0) {
        const Eigen::MatrixXd columns = m_dense.rows.transpose();
        const Eigen::MatrixXd covered = solve(columns);
        for (std::size_t i = 0; i < m_dense.readings.size(); ++i) {
            const auto column = static_cast<Eigen::Index>(i);
            out.ofReadings[m_dense.readings[i]] = columns.col(column).dot(covered.col(column));
        }
    }
    return out;
}

/// Those of the base less what the dense readings take away.
FlowSystem::Variances Factorisation::variancesByBase(std::size_t observationCount) const {
    FlowSystem::Variances base = m_base->variances();
    FlowSystem::Variances out{std::move(base.ofUnknowns), std::vector<double>(observationCount, 0), {}};
    Eigen::MatrixXd taken;
    if (m_weighted.rows() > 0) {
        taken = m_small.matrixL().solve(m_baseWeighted.transpose());
        out.ofUnknowns -= taken.colwise().squaredNorm().transpose();
        taken = m_small.matrixL().solve(m_base->readingsOf(m_weighted.transpose()).transpose());
    }
    for (std::size_t i = 0; i < base.ofReadings.size(); ++i) {
        const double less = m_weighted.rows() > 0 ? taken.col(static_cast<Eigen::Index>(i)).squaredNorm() : 0;
        out.ofReadings[m_base->readings()[i]] = base.ofReadings[i] - less;
    }
    return out;
}

std::vector<double> Factorisation::variancesOfShares(const Eigen::VectorXd& weightOfProbes) const {
    EXPECTS(m_base != nullptr);
    const std::vector<double> own = m_base->variances().ofProbes;
    Eigen::VectorXd across = m_base->probesWithSum(weightOfProbes);
    Eigen::VectorXd taken = Eigen::VectorXd::Zero(across.size());
    if (m_weighted.rows() > 0) {
        const Eigen::MatrixXd halves =
            m_small.matrixL().solve(m_base->probesOf(m_weighted.transpose()).transpose());
        across -= halves.transpose() * (halves * weightOfProbes);
        taken = halves.colwise().squaredNorm().transpose();
    }
    const double ofSum = weightOfProbes.dot(across);
    std::vector<double> out;
    for (std::size_t probe = 0; probe < own.size(); ++probe) {
        const auto at = static_cast<Eigen::Index>(probe);
        out.push_back(own[probe] - taken[at] - 2 * across[at] + ofSum);
    }
    return out;
}

Eigen::MatrixXd Factorisation::sharesWith(const Eigen::MatrixXd& columns,
                                          const Eigen::VectorXd& weightOfProbes) const {
    EXPECTS(m_base != nullptr);
    Eigen::MatrixXd out = m_base->probesOf(columns);
    if (m_weighted.rows() > 0) {
        const Eigen::MatrixXd corrections = m_small.solve(m_weighted * m_base->solve(columns));
        out -= m_base->probesOf(m_weighted.transpose()) * corrections;
    }
    const Eigen::RowVectorXd ofSum = weightOfProbes.transpose() * out;
    out.rowwise() -= ofSum;
    return out;
}

Eigen::VectorXd Factorisation::variancesOfUnknowns() const {
    const Eigen::Index count = m_unknowns.count();
    if (m_isByUnknowns) {
        return m_small.solve(Eigen::MatrixXd::Identity(count, count)).diagonal();
    }
    // C = I - J' S^-1 J; with S = L L' the part taken away is |L^-1 J|^2 column by column.
    const Eigen::MatrixXd halves = m_small.matrixL().solve(m_weighted);
    return Eigen::VectorXd::Ones(count) - halves.colwise().squaredNorm().transpose();
}

}  // namespace ww::estimation::detail
