#include "core/estimation/detail/flow_system.h"

#include <algorithm>

namespace ww::estimation::detail {

namespace {

/// Columns solved at once: enough to use the caches, few enough to stay small.
constexpr Eigen::Index kBatch = 32;

template <class Column>
double times(const SparseRow& row, const Column& column) {
    double sum = 0;
    for (std::size_t i = 0; i < row.variables.size(); ++i) {
        sum += row.weights[i] * column[row.variables[i]];
    }
    return sum;
}

template <class Column>
void addTo(Column& column, const SparseRow& row, double factor) {
    for (std::size_t i = 0; i < row.variables.size(); ++i) {
        column[row.variables[i]] += row.weights[i] * factor;
    }
}

double variance(const SparseRow& row, const FrontalFactor::Block& block) {
    double sum = 0;
    for (std::size_t i = 0; i < row.variables.size(); ++i) {
        for (std::size_t j = 0; j < row.variables.size(); ++j) {
            sum += row.weights[i] * row.weights[j] * block.at(row.variables[i], row.variables[j]);
        }
    }
    return sum;
}

}  // namespace

FlowSystem::FlowSystem(const Learning& learning, const FreeUnknowns& unknowns,
                       std::span<const std::size_t> cases, std::span<const CaseState* const> states,
                       std::vector<std::size_t> readings, std::vector<double> weightOfReadings,
                       std::span<const FlowProbe> probes)
    : m_unknownCount(unknowns.count()), m_readings(std::move(readings)) {
    FlowAssembly assembly(learning, unknowns, cases, states);
    for (std::size_t i = 0; i < m_readings.size(); ++i) {
        m_rows.push_back(assembly.addReading(learning.observations[m_readings[i]], weightOfReadings[i]));
    }
    for (const FlowProbe& probe : probes) {
        m_probes.push_back(assembly.addProbe(probe));
    }
    m_variableCount = assembly.variableCount();
    m_factor = std::make_unique<const FrontalFactor>(assembly.groups(), assembly.terms());
    for (std::uint32_t unknown = 0; unknown < m_unknownCount; ++unknown) {
        m_positionOfUnknown.push_back(m_factor->positionOf(unknown));
    }
    for (auto* rows : {&m_rows, &m_probes}) {
        for (SparseRow& row : *rows) {
            for (std::uint32_t& variable : row.variables) {
                variable = m_factor->positionOf(variable);
            }
        }
    }
}

/// Solves many columns a few at a time in the same memory.
class FlowSystem::Batches {
  public:
    explicit Batches(const FlowSystem& system) : m_system(system) {}

    /// fill(column, into) sets up one right side in zeros, `into` a column of the variables by position;
    /// take(column, solved) gets the answer.
    template <class Fill, class Take>
    void run(Eigen::Index count, const Fill& fill, const Take& take) {
        for (Eigen::Index first = 0; first < count; first += kBatch) {
            const Eigen::Index many = std::min(kBatch, count - first);
            m_columns.setZero(m_system.m_variableCount, many);
            for (Eigen::Index column = 0; column < many; ++column) {
                fill(first + column, m_columns.col(column));
            }
            m_system.m_factor->solve(m_columns);
            for (Eigen::Index column = 0; column < many; ++column) {
                take(first + column, m_columns.col(column));
            }
        }
    }
    /// Right sides over the free unknowns.
    template <class Take>
    void run(const Eigen::MatrixXd& columns, const Take& take) {
        const auto fill = [&](Eigen::Index column, auto into) {
            for (std::size_t unknown = 0; unknown < m_system.m_positionOfUnknown.size(); ++unknown) {
                into[m_system.m_positionOfUnknown[unknown]] =
                    columns(static_cast<Eigen::Index>(unknown), column);
            }
        };
        run(columns.cols(), fill, take);
    }

  private:
    const FlowSystem& m_system;
    FrontalFactor::Rows m_columns;
};

Eigen::MatrixXd FlowSystem::solve(const Eigen::MatrixXd& columns) const {
    Eigen::MatrixXd out(m_unknownCount, columns.cols());
    Batches(*this).run(columns, [&](Eigen::Index column, const auto& solved) {
        for (std::size_t unknown = 0; unknown < m_positionOfUnknown.size(); ++unknown) {
            out(static_cast<Eigen::Index>(unknown), column) = solved[m_positionOfUnknown[unknown]];
        }
    });
    return out;
}

Eigen::MatrixXd FlowSystem::rowsOf(const std::vector<SparseRow>& rows, const Eigen::MatrixXd& columns) const {
    Eigen::MatrixXd out(static_cast<Eigen::Index>(rows.size()), columns.cols());
    Batches(*this).run(columns, [&](Eigen::Index column, const auto& solved) {
        for (std::size_t row = 0; row < rows.size(); ++row) {
            out(static_cast<Eigen::Index>(row), column) = times(rows[row], solved);
        }
    });
    return out;
}

Eigen::MatrixXd FlowSystem::readingsOf(const Eigen::MatrixXd& columns) const {
    return rowsOf(m_rows, columns);
}

Eigen::MatrixXd FlowSystem::probesOf(const Eigen::MatrixXd& columns) const {
    return rowsOf(m_probes, columns);
}

Eigen::VectorXd FlowSystem::probesWithSum(const Eigen::VectorXd& weightOfProbes) const {
    Eigen::VectorXd out(weightOfProbes.size());
    const auto fill = [&](Eigen::Index, auto into) {
        for (std::size_t probe = 0; probe < m_probes.size(); ++probe) {
            addTo(into, m_probes[probe], weightOfProbes[static_cast<Eigen::Index>(probe)]);
        }
    };
    Batches(*this).run(1, fill, [&](Eigen::Index, const auto& solved) {
        for (std::size_t probe = 0; probe < m_probes.size(); ++probe) {
            out[static_cast<Eigen::Index>(probe)] = times(m_probes[probe], solved);
        }
    });
    return out;
}

Eigen::VectorXd FlowSystem::step(const Eigen::VectorXd& byReading, const Eigen::VectorXd& byUnknown) const {
    Eigen::VectorXd out(m_unknownCount);
    const auto fill = [&](Eigen::Index, auto into) {
        for (std::size_t unknown = 0; unknown < m_positionOfUnknown.size(); ++unknown) {
            into[m_positionOfUnknown[unknown]] = byUnknown[static_cast<Eigen::Index>(unknown)];
        }
        for (std::size_t reading = 0; reading < m_rows.size(); ++reading) {
            addTo(into, m_rows[reading], byReading[static_cast<Eigen::Index>(reading)]);
        }
    };
    Batches(*this).run(1, fill, [&](Eigen::Index, const auto& solved) {
        for (std::size_t unknown = 0; unknown < m_positionOfUnknown.size(); ++unknown) {
            out[static_cast<Eigen::Index>(unknown)] = solved[m_positionOfUnknown[unknown]];
        }
    });
    return out;
}

FlowSystem::Variances FlowSystem::variances() const {
    Variances out{Eigen::VectorXd(m_unknownCount), std::vector<double>(m_rows.size(), 0),
                  std::vector<double>(m_probes.size(), 0)};
    std::vector<std::vector<std::uint32_t>> unknownsOf(m_factor->frontCount());
    for (std::uint32_t unknown = 0; unknown < m_positionOfUnknown.size(); ++unknown) {
        unknownsOf[m_factor->frontOf(m_positionOfUnknown[unknown])].push_back(unknown);
    }
    const auto byFront = [&](const std::vector<SparseRow>& rows) {
        std::vector<std::vector<std::uint32_t>> found(m_factor->frontCount());
        for (std::uint32_t row = 0; row < rows.size(); ++row) {
            const auto& variables = rows[row].variables;
            if (!variables.empty()) {
                const auto first = std::min_element(variables.begin(), variables.end());
                found[m_factor->frontOf(*first)].push_back(row);
            }
        }
        return found;
    };
    const auto rowsAt = byFront(m_rows);
    const auto probesAt = byFront(m_probes);
    m_factor->eachBlock([&](std::uint32_t front, const FrontalFactor::Block& block) {
        for (const std::uint32_t unknown : unknownsOf[front]) {
            const std::uint32_t position = m_positionOfUnknown[unknown];
            out.ofUnknowns[unknown] = block.at(position, position);
        }
        for (const std::uint32_t reading : rowsAt[front]) {
            out.ofReadings[reading] = variance(m_rows[reading], block);
        }
        for (const std::uint32_t probe : probesAt[front]) {
            out.ofProbes[probe] = variance(m_probes[probe], block);
        }
    });
    return out;
}

}  // namespace ww::estimation::detail
