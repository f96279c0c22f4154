#include "core/hydraulics/detail/pure_fold.h"

#include <cmath>

namespace ww::hydraulics::detail {

PureFold::PureFold(const Program& program, std::span<const double> linkResistances)
    : m_program(program), m_resistances(linkResistances), m_values(program.size()) {
    for (std::size_t item = 0; item < program.size(); ++item) {
        double sum = 0;
        if (program.isParallel[item] != 0) {
            for (const Code child : program.childrenOf(item)) {
                sum += conductanceOf(child);
            }
        } else {
            for (const Code child : program.childrenOf(item)) {
                sum += resistanceOf(child);
            }
        }
        m_values[item] = sum;
    }
}

double PureFold::resistanceOf(Code code) const {
    switch (code.kind()) {
        case Code::Kind::Leaf:
            return m_resistances[code.index()];
        case Code::Kind::Series:
            return m_values[code.index()];
        default:
            return 1 / (m_values[code.index()] * m_values[code.index()]);
    }
}

double PureFold::conductanceOf(Code code) const {
    if (code.kind() == Code::Kind::Parallel) {
        return m_values[code.index()];
    }
    return 1 / std::sqrt(resistanceOf(code));
}

void PureFold::seed(Code code, double flow_m3s, std::span<double> linkFlows) {
    const double flow = code.sign() * flow_m3s;
    switch (code.kind()) {
        case Code::Kind::Leaf:
            linkFlows[code.index()] = flow;
            break;
        case Code::Kind::Series:
            m_values[code.index()] = flow;
            break;
        default:
            m_values[code.index()] = flow / m_values[code.index()];
    }
}

void PureFold::unfold(std::span<double> linkFlows) {
    for (std::size_t item = m_program.size(); item-- > 0;) {
        const double value = m_values[item];
        if (m_program.isParallel[item] == 0) {
            for (const Code child : m_program.childrenOf(item)) {
                seed(child, value, linkFlows);
            }
            continue;
        }
        for (const Code child : m_program.childrenOf(item)) {
            if (child.kind() == Code::Kind::Parallel) {
                m_values[child.index()] = child.sign() * value;
            } else {
                seed(child, value * conductanceOf(child), linkFlows);
            }
        }
    }
}

}  // namespace ww::hydraulics::detail
