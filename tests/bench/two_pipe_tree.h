// A two-pipe tree of any number of terminals, for measuring the solver.
#pragma once

#include <cmath>
#include <string>
#include <vector>

#include "core/hydraulics/network_builder.h"

namespace ww::hydraulics {

inline constexpr double kShutoff_Pa = 2e5;

/// What the links are made of: square laws fold exactly; the same behind non-return flaps, and an exponent of
/// 1.9, are iterated link by link.
enum class Laws { Square, Flaps, Exponent };

inline Element elementOf(Laws laws, int carried, double drop_Pa) {
    const double design_m3s = 1e-4 * carried;
    const auto square = Resistance::si(drop_Pa / (design_m3s * design_m3s));
    switch (laws) {
        case Laws::Square:
            return Element::resistance(square);
        case Laws::Flaps:
            return Element::checkValve(square);
        default:
            return Element::exponentLaw(PressureDifference::si(drop_Pa), VolumeFlow::si(design_m3s), 1.9);
    }
}

/// Ten terminals a branch, ten branches a riser, risers along a main; supply and return run of every take-off
/// and one link a circuit: three links and two nodes a terminal. Design flow 0.1 L/s a terminal.
class TwoPipeTree {
  public:
    TwoPipeTree(int terminals, Laws laws) : m_laws(laws), m_terminals(terminals) {
        const NodeIndex back = node();
        const NodeIndex supply = node();
        addPump(back, supply);
        run(supply, back, terminals / 100, [&](NodeIndex s, NodeIndex r) {
            run(s, r, 10, [&](NodeIndex bs, NodeIndex br) {
                run(bs, br, 10, [&](NodeIndex ts, NodeIndex tr) {
                    m_circuits.push_back(link(ts, tr, 1, 2e4 * (1 + 0.7 * std::sin(m_links))));
                });
            });
        });
        m_builder.setReference(m_firstNode, ww::quantity::GaugePressure());
    }
    Network build() { return *m_builder.build().network; }
    LinkIndex someCircuit() const { return m_circuits[m_circuits.size() / 2]; }

  private:
    NodeIndex node() { return m_builder.addNode("n" + std::to_string(m_nodes++)); }

    void addPump(NodeIndex from, NodeIndex to) {
        std::vector<PumpDuty> points;
        const double full_m3s = 1e-4 * m_terminals;
        for (const double part : {0.0, 1.0, 1.5}) {
            points.push_back({VolumeFlow::si(full_m3s * part),
                              PressureDifference::si(kShutoff_Pa * (1 - 0.3 * part * part))});
        }
        m_builder.addLink("pump", from, to, Element::pump(PumpModel::powerThroughThree(points).value()));
    }

    LinkIndex link(NodeIndex from, NodeIndex to, int carried, double drop_Pa) {
        return m_builder.addLink("l" + std::to_string(m_links++), from, to,
                                 elementOf(m_laws, carried, drop_Pa));
    }

    template <class TakeOff>
    void run(NodeIndex supply, NodeIndex back, int count, TakeOff&& takeOff) {
        const int carriedEach = m_share / count;
        const int outer = m_share;
        for (int i = 0; i < count; ++i) {
            // Losses of the runs along one line sum up to about 30 kPa at design flow.
            const int carried = outer - i * carriedEach;
            const double drop_Pa = 1.5e4 / count;
            const NodeIndex nextSupply = node();
            const NodeIndex nextBack = node();
            link(supply, nextSupply, carried, drop_Pa);
            link(nextBack, back, carried, drop_Pa);
            supply = nextSupply;
            back = nextBack;
            m_share = carriedEach;
            takeOff(supply, back);
        }
        m_share = outer;
    }

    NetworkBuilder m_builder;
    Laws m_laws;
    int m_terminals;
    int m_share = m_terminals;
    int m_nodes = 0;
    int m_links = 0;
    std::string m_firstNode = "n0";
    std::vector<LinkIndex> m_circuits;
};

}  // namespace ww::hydraulics
