#include "core/estimation/detail/frontal_factor.h"

#include <algorithm>

#include "core/base/expects.h"

namespace ww::estimation::detail {

FrontalFactor::FrontalFactor(const std::vector<std::vector<std::uint32_t>>& groups,
                             const std::vector<MatrixTerm>& terms) {
    analyse(groups, terms);
    eliminate(terms);
}

void FrontalFactor::analyse(const std::vector<std::vector<std::uint32_t>>& groups,
                            const std::vector<MatrixTerm>& terms) {
    std::size_t count = 0;
    for (const auto& group : groups) {
        count += group.size();
    }
    m_positionOf.assign(count, 0);
    m_fronts.resize(groups.size());
    for (std::uint32_t front = 0; front < groups.size(); ++front) {
        for (const std::uint32_t variable : groups[front]) {
            m_positionOf[variable] = static_cast<std::uint32_t>(m_frontOf.size());
            m_fronts[front].own.push_back(m_positionOf[variable]);
            m_frontOf.push_back(front);
        }
    }
    m_termsOf.resize(groups.size());
    m_childrenOf.resize(groups.size());
    const auto couple = [this](std::uint32_t front, std::uint32_t position) {
        if (m_frontOf[position] > front) {
            m_fronts[front].rows.push_back(position);
        }
    };
    for (std::uint32_t term = 0; term < terms.size(); ++term) {
        std::uint32_t first = static_cast<std::uint32_t>(groups.size());
        for (const std::uint32_t variable : terms[term].variables) {
            first = std::min(first, m_frontOf[m_positionOf[variable]]);
        }
        if (first == groups.size()) {
            continue;
        }
        m_termsOf[first].push_back(term);
        for (const std::uint32_t variable : terms[term].variables) {
            couple(first, m_positionOf[variable]);
        }
    }
    for (std::uint32_t front = 0; front < groups.size(); ++front) {
        for (const std::uint32_t child : m_childrenOf[front]) {
            for (const std::uint32_t position : m_fronts[child].rows) {
                couple(front, position);
            }
        }
        auto& rows = m_fronts[front].rows;
        std::sort(rows.begin(), rows.end());
        rows.erase(std::unique(rows.begin(), rows.end()), rows.end());
        if (!rows.empty()) {
            m_childrenOf[m_frontOf[rows.front()]].push_back(front);
        }
    }
}

void FrontalFactor::eliminate(const std::vector<MatrixTerm>& terms) {
    std::vector<Eigen::MatrixXd> updates(m_fronts.size());
    std::vector<Eigen::Index> placeOf(m_positionOf.size(), 0);
    std::vector<Eigen::Index> places;
    for (std::size_t index = 0; index < m_fronts.size(); ++index) {
        Front& front = m_fronts[index];
        const auto own = static_cast<Eigen::Index>(front.own.size());
        const auto rest = static_cast<Eigen::Index>(front.rows.size());
        for (Eigen::Index i = 0; i < own; ++i) {
            placeOf[front.own[static_cast<std::size_t>(i)]] = i;
        }
        for (Eigen::Index i = 0; i < rest; ++i) {
            placeOf[front.rows[static_cast<std::size_t>(i)]] = own + i;
        }
        Eigen::MatrixXd matrix = Eigen::MatrixXd::Zero(own + rest, own + rest);
        for (const std::uint32_t number : m_termsOf[index]) {
            const MatrixTerm& term = terms[number];
            const std::size_t size = term.variables.size();
            for (std::size_t row = 0; row < size; ++row) {
                for (std::size_t column = 0; column < size; ++column) {
                    matrix(placeOf[m_positionOf[term.variables[row]]],
                           placeOf[m_positionOf[term.variables[column]]]) +=
                        term.entries[row * size + column];
                }
            }
        }
        for (const std::uint32_t child : m_childrenOf[index]) {
            places.clear();
            for (const std::uint32_t position : m_fronts[child].rows) {
                places.push_back(placeOf[position]);
            }
            matrix(places, places) += updates[child];
            updates[child].resize(0, 0);
        }
        front.below = matrix.bottomLeftCorner(rest, own);
        updates[index] = matrix.bottomRightCorner(rest, rest);
        if (own > 0) {
            front.pivot.compute(matrix.topLeftCorner(own, own));
        }
        if (own > 0 && rest > 0) {
            updates[index].noalias() -= front.below * front.pivot.solve(front.below.transpose());
        }
    }
}

void FrontalFactor::solve(Rows& columns) const {
    EXPECTS(columns.rows() == static_cast<Eigen::Index>(m_positionOf.size()));
    if (columns.cols() == 0) {
        return;
    }
    Rows part;
    Rows later;
    for (const Front& front : m_fronts) {
        if (front.own.empty()) {
            continue;
        }
        auto own = columns.middleRows(front.own.front(), static_cast<Eigen::Index>(front.own.size()));
        own = front.pivot.solve(own).eval();
        if (front.rows.empty()) {
            continue;
        }
        part.noalias() = front.below * own;
        for (std::size_t i = 0; i < front.rows.size(); ++i) {
            columns.row(front.rows[i]) -= part.row(static_cast<Eigen::Index>(i));
        }
    }
    for (auto front = m_fronts.rbegin(); front != m_fronts.rend(); ++front) {
        if (front->own.empty() || front->rows.empty()) {
            continue;
        }
        later.resize(static_cast<Eigen::Index>(front->rows.size()), columns.cols());
        for (std::size_t i = 0; i < front->rows.size(); ++i) {
            later.row(static_cast<Eigen::Index>(i)) = columns.row(front->rows[i]);
        }
        part.noalias() = front->below.transpose() * later;
        columns.middleRows(front->own.front(), static_cast<Eigen::Index>(front->own.size())) -=
            front->pivot.solve(part);
    }
}

Eigen::MatrixXd FrontalFactor::inverseOf(const Front& front, const Eigen::MatrixXd& later) const {
    const auto own = static_cast<Eigen::Index>(front.own.size());
    const auto rest = static_cast<Eigen::Index>(front.rows.size());
    Eigen::MatrixXd out(own + rest, own + rest);
    out.topLeftCorner(own, own) = front.pivot.solve(Eigen::MatrixXd::Identity(own, own));
    if (rest > 0) {
        const Eigen::MatrixXd taken = front.pivot.solve(front.below.transpose());
        out.bottomRightCorner(rest, rest) = later;
        out.topRightCorner(own, rest).noalias() = -taken * later;
        out.bottomLeftCorner(rest, own) = out.topRightCorner(own, rest).transpose();
        out.topLeftCorner(own, own).noalias() -= out.topRightCorner(own, rest) * taken.transpose();
    }
    return out;
}

std::vector<std::vector<std::uint32_t>> FrontalFactor::childrenBySize() const {
    std::vector<std::vector<std::uint32_t>> out = m_childrenOf;
    std::vector<std::size_t> sizes(m_fronts.size(), 1);
    for (std::size_t front = 0; front < out.size(); ++front) {
        // Children stand before their parent, so their sizes are known.
        for (const std::uint32_t child : out[front]) {
            sizes[front] += sizes[child];
        }
        std::stable_sort(
            out[front].begin(), out[front].end(),
            [&sizes](std::uint32_t one, std::uint32_t other) { return sizes[one] < sizes[other]; });
    }
    return out;
}

void FrontalFactor::eachBlock(const std::function<void(std::uint32_t, const Block&)>& take) const {
    const auto children = childrenBySize();
    std::vector<Eigen::Index> placeOf(m_positionOf.size(), 0);
    const auto place = [&](const Front& front) {
        Eigen::Index at = 0;
        for (const auto* positions : {&front.own, &front.rows}) {
            for (const std::uint32_t position : *positions) {
                placeOf[position] = at++;
            }
        }
    };
    // Blocks are kept while a front behind them is still to come; with the largest part last few are.
    struct Open {
        std::uint32_t front;
        std::size_t nextChild;
        Eigen::MatrixXd inverse;
    };
    std::vector<Open> open;
    const auto enter = [&](std::uint32_t front, const Eigen::MatrixXd& later) {
        open.push_back({front, 0, inverseOf(m_fronts[front], later)});
        place(m_fronts[front]);
        take(front, Block(open.back().inverse, placeOf));
    };
    for (std::uint32_t root = 0; root < m_fronts.size(); ++root) {
        if (m_fronts[root].own.empty() || !m_fronts[root].rows.empty()) {
            continue;
        }
        enter(root, {});
        while (!open.empty()) {
            Open& last = open.back();
            if (last.nextChild == children[last.front].size()) {
                open.pop_back();
                continue;
            }
            const std::uint32_t child = children[last.front][last.nextChild++];
            place(m_fronts[last.front]);
            std::vector<Eigen::Index> places;
            for (const std::uint32_t position : m_fronts[child].rows) {
                places.push_back(placeOf[position]);
            }
            const Eigen::MatrixXd later = last.inverse(places, places);
            if (last.nextChild == children[last.front].size()) {
                open.pop_back();
            }
            enter(child, later);
        }
    }
}

std::size_t FrontalFactor::bytes() const {
    std::size_t sum = m_positionOf.size() * 2 * sizeof(std::uint32_t);
    for (const Front& front : m_fronts) {
        sum += sizeof(Front) + (front.own.size() + front.rows.size()) * sizeof(std::uint32_t);
        sum += static_cast<std::size_t>(front.below.size() + front.pivot.rows() * front.pivot.cols()) *
               sizeof(double);
    }
    return sum;
}

}  // namespace ww::estimation::detail
