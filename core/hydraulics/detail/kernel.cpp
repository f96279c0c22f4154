#include "core/hydraulics/detail/kernel.h"

#include <Eigen/Cholesky>
#include <Eigen/SparseCholesky>
#include <Eigen/SparseCore>
#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>

#include "core/hydraulics/detail/node_sets.h"

namespace ww::hydraulics::detail {

namespace {

constexpr std::uint32_t kNoEdge = 0xFFFFFFFFU;

/// Edges by the binary exponent of their slope: near enough to sorted, in linear time.
std::vector<std::uint32_t> byExponent(std::span<const double> slopes) {
    constexpr int kLowest = -200;
    constexpr int kHighest = 300;
    std::array<std::uint32_t, kHighest - kLowest + 2> first{};
    const auto bucket = [&](double slope) {
        int exponent = kLowest;
        std::frexp(slope, &exponent);
        return static_cast<std::size_t>(std::clamp(exponent, kLowest, kHighest) - kLowest);
    };
    for (const double slope : slopes) {
        ++first[bucket(slope) + 1];
    }
    std::partial_sum(first.begin(), first.end(), first.begin());
    std::vector<std::uint32_t> order(slopes.size());
    for (std::size_t edge = 0; edge < slopes.size(); ++edge) {
        order[first[bucket(slopes[edge])]++] = static_cast<std::uint32_t>(edge);
    }
    return order;
}

}  // namespace

/// The loop matrix. Row and column: chords.
struct Kernel::Dense {
    struct Crossing {
        std::uint32_t chord;
        double sign;
    };
    std::vector<std::vector<Crossing>> crossings;  ///< of each tree edge: the loops through it
    Eigen::MatrixXd matrix;
    Eigen::LDLT<Eigen::MatrixXd> factor;
    Eigen::VectorXd right;
};

/// The nodal matrix of conductances without the root, its pattern analysed once.
struct Kernel::Sparse {
    struct Place {
        int start = -1;  ///< positions in the value array; -1: at the root
        int end = -1;
        int between = -1;
    };
    Eigen::SparseMatrix<double> matrix;
    std::vector<Place> places;  ///< of each edge
    Eigen::SimplicialLDLT<Eigen::SparseMatrix<double>, Eigen::Lower, Eigen::AMDOrdering<int>> factor;
    Eigen::VectorXd right;
    Eigen::VectorXd potentials;
};

Kernel::Kernel(const BlockPlan& block, std::size_t maxDenseLoops)
    : m_block(block), m_maxDense(maxDenseLoops) {}

Kernel::~Kernel() = default;
Kernel::Kernel(Kernel&&) noexcept = default;

void Kernel::chooseTree(std::span<const double> slopes) {
    m_parentEdge.resize(m_block.nodeCount, kNoEdge);
    m_depth.resize(m_block.nodeCount, 0);
    m_nodeValues.resize(m_block.nodeCount, 0);
    m_nodeRests.resize(m_block.nodeCount, 0);
    m_sums.resize(m_block.nodeCount, 0);
    NodeSets sets(m_block.nodeCount);
    std::vector<std::uint8_t> isTree(m_block.edges.size(), 0);
    for (const std::uint32_t edge : byExponent(slopes)) {
        isTree[edge] = sets.join(m_block.edges[edge].from, m_block.edges[edge].to) ? 1 : 0;
    }
    if (isTree == m_isTree) {
        return;
    }
    m_isTree = std::move(isTree);
    m_chords.clear();
    for (std::uint32_t edge = 0; edge < m_block.edges.size(); ++edge) {
        if (m_isTree[edge] == 0) {
            m_chords.push_back(edge);
        }
    }
    m_chordMismatch.assign(m_chords.size(), 0);
    rootTree();
    m_dense.reset();
}

void Kernel::rootTree() {
    std::vector<std::uint32_t> first(m_block.nodeCount + 1, 0);
    for (std::size_t edge = 0; edge < m_block.edges.size(); ++edge) {
        if (m_isTree[edge] != 0) {
            ++first[m_block.edges[edge].from + 1];
            ++first[m_block.edges[edge].to + 1];
        }
    }
    std::partial_sum(first.begin(), first.end(), first.begin());
    std::vector<std::uint32_t> next(first.begin(), first.end() - 1);
    std::vector<std::uint32_t> at(first.back());
    for (std::uint32_t edge = 0; edge < m_block.edges.size(); ++edge) {
        if (m_isTree[edge] != 0) {
            at[next[m_block.edges[edge].from]++] = edge;
            at[next[m_block.edges[edge].to]++] = edge;
        }
    }
    m_order.assign(1, 0);
    m_parentEdge[0] = kNoEdge;
    m_depth[0] = 0;
    for (std::size_t done = 0; done < m_order.size(); ++done) {
        const std::uint32_t node = m_order[done];
        for (std::uint32_t i = first[node]; i < first[node + 1]; ++i) {
            const KernelEdge& edge = m_block.edges[at[i]];
            if (at[i] == m_parentEdge[node]) {
                continue;
            }
            const std::uint32_t other = edge.from == node ? edge.to : edge.from;
            m_parentEdge[other] = at[i];
            m_depth[other] = m_depth[node] + 1;
            m_order.push_back(other);
        }
    }
}

bool Kernel::isTreeStale(std::span<const double> slopes) const {
    // The loss of digits that a better tree would save goes with the ratio of the steepest tree edge to the
    // steepest chord.
    double tree = 0;
    double chord = 0;
    for (std::size_t edge = 0; edge < slopes.size(); ++edge) {
        (m_isTree[edge] != 0 ? tree : chord) = std::max(m_isTree[edge] != 0 ? tree : chord, slopes[edge]);
    }
    return tree > 10 * chord;
}

void Kernel::balance(std::span<double> values) const {
    std::fill(m_sums.begin(), m_sums.end(), 0);
    for (const std::uint32_t chord : m_chords) {
        m_sums[m_block.edges[chord].from] -= values[chord];
        m_sums[m_block.edges[chord].to] += values[chord];
    }
    for (std::size_t i = m_order.size(); i-- > 1;) {
        const std::uint32_t node = m_order[i];
        const KernelEdge& edge = m_block.edges[m_parentEdge[node]];
        // What arrives at the node leaves through its parent edge.
        const bool leads = edge.from == node;
        values[m_parentEdge[node]] = leads ? m_sums[node] : -m_sums[node];
        m_sums[leads ? edge.to : edge.from] += m_sums[node];
    }
}

double Kernel::mismatch(std::span<const double> drops) {
    if (isDense()) {
        return loopMismatch(drops);
    }
    m_nodeValues[0] = 0;
    m_nodeRests[0] = 0;
    for (std::size_t i = 1; i < m_order.size(); ++i) {
        const std::uint32_t node = m_order[i];
        const std::uint32_t edge = m_parentEdge[node];
        const bool leads = m_block.edges[edge].from == node;
        const std::uint32_t parent = leads ? m_block.edges[edge].to : m_block.edges[edge].from;
        const double drop = leads ? drops[edge] : -drops[edge];
        // Sums keep their rounding errors (D. Knuth's two-sum): two nodes at nearly the same pressure far
        // from the root would otherwise lose the small drop between them.
        const double sum = m_nodeValues[parent] + drop;
        const double taken = sum - m_nodeValues[parent];
        m_nodeRests[node] = m_nodeRests[parent] + ((m_nodeValues[parent] - (sum - taken)) + (drop - taken));
        m_nodeValues[node] = sum;
    }
    double largest = 0;
    for (std::size_t i = 0; i < m_chords.size(); ++i) {
        const KernelEdge& edge = m_block.edges[m_chords[i]];
        const double between = (m_nodeValues[edge.from] - m_nodeValues[edge.to]) +
                               (m_nodeRests[edge.from] - m_nodeRests[edge.to]);
        m_chordMismatch[i] = drops[m_chords[i]] - between;
        largest = std::max(largest, std::abs(m_chordMismatch[i]));
    }
    return largest;
}

void Kernel::factor(std::span<const double> slopes) {
    if (isDense()) {
        factorDense(slopes);
    } else {
        factorSparse(slopes);
    }
}

void Kernel::step(std::span<const double> slopes, std::span<double> steps) {
    if (isDense()) {
        solveDense(steps);
    } else {
        solveSparse(slopes, steps);
    }
    balance(steps);
}

/// Summed round each loop by itself, so that a loop of small drops keeps its digits.
double Kernel::loopMismatch(std::span<const double> drops) {
    prepareDense();
    for (std::size_t i = 0; i < m_chords.size(); ++i) {
        m_chordMismatch[i] = drops[m_chords[i]];
    }
    for (std::size_t edge = 0; edge < drops.size(); ++edge) {
        for (const Dense::Crossing& crossing : m_dense->crossings[edge]) {
            m_chordMismatch[crossing.chord] += crossing.sign * drops[edge];
        }
    }
    double largest = 0;
    for (const double one : m_chordMismatch) {
        largest = std::max(largest, std::abs(one));
    }
    return largest;
}

void Kernel::prepareDense() {
    if (!m_dense) {
        m_dense = std::make_unique<Dense>();
        m_dense->crossings.resize(m_block.edges.size());
        for (std::uint32_t i = 0; i < m_chords.size(); ++i) {
            // The loop runs along the chord, and back from its end to its start through the tree.
            std::uint32_t up = m_block.edges[m_chords[i]].to;
            std::uint32_t down = m_block.edges[m_chords[i]].from;
            while (up != down) {
                const bool fromUp = m_depth[up] >= m_depth[down];
                std::uint32_t& node = fromUp ? up : down;
                const std::uint32_t edge = m_parentEdge[node];
                const bool leads = m_block.edges[edge].from == node;
                m_dense->crossings[edge].push_back({i, leads == fromUp ? 1.0 : -1.0});
                node = leads ? m_block.edges[edge].to : m_block.edges[edge].from;
            }
        }
    }
}

void Kernel::factorDense(std::span<const double> slopes) {
    const auto count = static_cast<Eigen::Index>(m_chords.size());
    m_dense->matrix.setZero(count, count);
    for (std::size_t edge = 0; edge < m_block.edges.size(); ++edge) {
        for (const Dense::Crossing& one : m_dense->crossings[edge]) {
            for (const Dense::Crossing& other : m_dense->crossings[edge]) {
                m_dense->matrix(one.chord, other.chord) += one.sign * other.sign * slopes[edge];
            }
        }
    }
    for (Eigen::Index i = 0; i < count; ++i) {
        const auto chord = static_cast<std::size_t>(i);
        m_dense->matrix(i, i) += slopes[m_chords[chord]];
    }
    m_dense->factor.compute(m_dense->matrix);
}

void Kernel::solveDense(std::span<double> steps) {
    const auto count = static_cast<Eigen::Index>(m_chords.size());
    m_dense->right = -Eigen::Map<const Eigen::VectorXd>(m_chordMismatch.data(), count);
    m_dense->right = m_dense->factor.solve(m_dense->right);
    for (std::size_t i = 0; i < m_chords.size(); ++i) {
        steps[m_chords[i]] = m_dense->right(static_cast<Eigen::Index>(i));
    }
}

void Kernel::prepareSparse() {
    m_sparse = std::make_unique<Sparse>();
    const int size = static_cast<int>(m_block.nodeCount) - 1;
    std::vector<Eigen::Triplet<double>> entries;
    entries.reserve(m_block.edges.size() + m_block.nodeCount);
    for (int node = 0; node < size; ++node) {
        entries.emplace_back(node, node, 1.0);
    }
    const auto row = [](std::uint32_t node) { return static_cast<int>(node) - 1; };
    for (const KernelEdge& edge : m_block.edges) {
        const int a = row(edge.from);
        const int b = row(edge.to);
        if (a >= 0 && b >= 0) {
            entries.emplace_back(std::max(a, b), std::min(a, b), 0.0);
        }
    }
    auto& matrix = m_sparse->matrix;
    matrix.resize(size, size);
    matrix.setFromTriplets(entries.begin(), entries.end());
    matrix.makeCompressed();
    const auto place = [&](int rowIndex, int column) {
        const int* begin = matrix.innerIndexPtr() + matrix.outerIndexPtr()[column];
        const int* end = matrix.innerIndexPtr() + matrix.outerIndexPtr()[column + 1];
        return static_cast<int>(std::lower_bound(begin, end, rowIndex) - matrix.innerIndexPtr());
    };
    for (const KernelEdge& edge : m_block.edges) {
        const int a = row(edge.from);
        const int b = row(edge.to);
        m_sparse->places.push_back({a < 0 ? -1 : place(a, a), b < 0 ? -1 : place(b, b),
                                    a < 0 || b < 0 ? -1 : place(std::max(a, b), std::min(a, b))});
    }
    m_sparse->factor.analyzePattern(matrix);
    m_sparse->right.resize(size);
}

void Kernel::factorSparse(std::span<const double> slopes) {
    if (!m_sparse) {
        prepareSparse();
    }
    auto& matrix = m_sparse->matrix;
    double* values = matrix.valuePtr();
    std::fill(values, values + matrix.nonZeros(), 0.0);
    for (std::size_t edge = 0; edge < m_block.edges.size(); ++edge) {
        const double conductance = 1 / slopes[edge];
        const Sparse::Place& place = m_sparse->places[edge];
        if (place.start >= 0) {
            values[place.start] += conductance;
        }
        if (place.end >= 0) {
            values[place.end] += conductance;
        }
        if (place.between >= 0) {
            values[place.between] -= conductance;
        }
    }
    m_sparse->factor.factorize(matrix);
}

void Kernel::solveSparse(std::span<const double> slopes, std::span<double> steps) {
    m_sparse->right.setZero();
    for (std::size_t i = 0; i < m_chords.size(); ++i) {
        const KernelEdge& edge = m_block.edges[m_chords[i]];
        const double flow = m_chordMismatch[i] / slopes[m_chords[i]];
        if (edge.from > 0) {
            m_sparse->right(edge.from - 1) += flow;
        }
        if (edge.to > 0) {
            m_sparse->right(edge.to - 1) -= flow;
        }
    }
    m_sparse->potentials = m_sparse->factor.solve(m_sparse->right);
    const auto potential = [&](std::uint32_t node) {
        return node == 0 ? 0.0 : m_sparse->potentials(node - 1);
    };
    for (std::size_t i = 0; i < m_chords.size(); ++i) {
        const KernelEdge& edge = m_block.edges[m_chords[i]];
        steps[m_chords[i]] =
            (potential(edge.from) - potential(edge.to) - m_chordMismatch[i]) / slopes[m_chords[i]];
    }
}

std::size_t Kernel::bytes() const {
    std::size_t total = m_block.edges.size() * 9 + m_block.nodeCount * 44 + m_chordMismatch.size() * 8;
    if (m_dense) {
        total += static_cast<std::size_t>(m_dense->matrix.size()) * sizeof(double);
    }
    if (m_sparse) {
        total += static_cast<std::size_t>(m_sparse->matrix.nonZeros()) * 12 +
                 static_cast<std::size_t>(m_sparse->factor.matrixL().nestedExpression().nonZeros()) * 12 +
                 m_sparse->places.size() * sizeof(Sparse::Place);
    }
    return total;
}

}  // namespace ww::hydraulics::detail
