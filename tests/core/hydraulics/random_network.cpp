#include "tests/core/hydraulics/random_network.h"

#include <cmath>
#include <random>
#include <string>

namespace ww::hydraulics {

namespace {

constexpr Density kColdWater = Density::si(998.2);
constexpr KinematicViscosity kWaterViscosity = KinematicViscosity::si(1.004e-6);

class Draw {
  public:
    explicit Draw(std::uint64_t seed) : m_engine(seed) {}
    double uniform(double low, double high) {
        return low + (high - low) * (static_cast<double>(m_engine() >> 11) * 0x1p-53);
    }
    int whole(int low, int high) {
        return low + static_cast<int>(m_engine() % static_cast<std::uint64_t>(high - low + 1));
    }
    bool chance(double part) { return uniform(0, 1) < part; }
    double decades(double centre, double span) {
        return centre * std::pow(10.0, uniform(-0.5 * span, 0.5 * span));
    }

  private:
    std::mt19937_64 m_engine;
};

Element randomPump(Draw& draw, bool isSquareOnly) {
    const double shutoff_Pa = draw.uniform(2e4, 3e5);
    // Over four decades of size, so that some stand at shutoff and others far beyond their last point.
    const double last_m3s = draw.decades(3e-3, 4);
    PumpOperation operation;
    operation.speedFraction = draw.chance(0.5) ? 1 : draw.uniform(0.3, 1.1);
    std::vector<PumpDuty> points;
    std::vector<curve::PumpPoint> rows;
    const double power = isSquareOnly ? 2 : draw.uniform(1.3, 2.8);
    for (const double part : {0.0, 0.6, 1.0}) {
        points.push_back({VolumeFlow::si(last_m3s * part),
                          PressureDifference::si(shutoff_Pa * (1 - 0.6 * std::pow(part, power)))});
        curve::PumpPoint row;
        row.flow = points.back().flow;
        row.head = quantity::headOf(points.back().rise, kColdWater);
        rows.push_back(row);
    }
    switch (draw.whole(0, 2)) {
        case 0:
            return Element::pump(PumpModel::powerThroughThree(points).value(), operation);
        case 1:
            return Element::pump(PumpModel::straightLines(points).value(), operation);
        default:
            return Element::pump(PumpModel::fromCurve(curve::PumpCurve::make(rows).value(), kColdWater),
                                 operation);
    }
}

Element randomPassive(Draw& draw, const RandomMix& mix) {
    const int kind = mix.hasOnlySquareLaws ? 0 : draw.whole(0, 9);
    switch (kind) {
        case 6:
            return Element::exponentLaw(PressureDifference::si(draw.decades(1e4, mix.resistanceDecades / 2)),
                                        VolumeFlow::si(1e-3), draw.uniform(1.2, 2));
        case 7: {
            Pipe pipe;
            pipe.length = Length::si(draw.uniform(1, 200));
            pipe.insideDiameter = Length::si(draw.uniform(0.01, 0.1));
            pipe.roughness = Length::si(draw.uniform(0, 2e-4));
            pipe.minorLossSum = draw.uniform(0, 10);
            pipe.friction = draw.chance(0.5) ? FrictionLaw::Colebrook : FrictionLaw::SwameeJain;
            return Element::pipe(pipe, kColdWater, kWaterViscosity);
        }
        case 8:
            if (!mix.hasCheckValves) {
                return Element::valve(FlowCoefficient::si(draw.decades(3, 2)), kColdWater);
            }
            return Element::checkValve(Resistance::si(draw.decades(1e10, mix.resistanceDecades / 2)));
        case 9:
            return Element::flowLimiter(VolumeFlow::si(draw.decades(3e-4, 2)), PressureDifference::si(1.5e4),
                                        PressureDifference::si(draw.uniform(1e5, 4e5)));
        default:
            return Element::resistance(Resistance::si(draw.decades(1e10, mix.resistanceDecades)));
    }
}

/// Grows take-offs along a pair of mains, some of which are risers with take-offs of their own.
class Tree {
  public:
    Tree(Draw& draw, const RandomMix& mix) : m_draw(draw), m_mix(mix) {}

    Network build() {
        const NodeIndex supply = node();
        const NodeIndex back = node();
        m_builder.addLink("pump", back, supply, randomPump(m_draw, m_mix.hasOnlySquareLaws));
        grow(supply, back, 0);
        return *m_builder.build().network;
    }

  private:
    NodeIndex node() { return m_builder.addNode("n" + std::to_string(m_nodes++)); }
    void link(NodeIndex from, NodeIndex to, bool mayClose) {
        m_builder.addLink("l" + std::to_string(m_links++), from, to, randomPassive(m_draw, m_mix),
                          mayClose && m_draw.chance(m_mix.closedFraction));
    }
    void grow(NodeIndex supply, NodeIndex back, int depth) {
        const int takeOffs = m_draw.whole(1, depth == 0 ? 8 : 5);
        for (int i = 0; i < takeOffs; ++i) {
            const NodeIndex nextSupply = node();
            const NodeIndex nextBack = node();
            link(supply, nextSupply, false);
            link(nextBack, back, false);
            supply = nextSupply;
            back = nextBack;
            if (depth < 3 && m_draw.chance(0.35)) {
                grow(supply, back, depth + 1);
                continue;
            }
            const NodeIndex middle = node();
            link(supply, middle, true);
            link(middle, back, true);
        }
    }

    Draw& m_draw;
    const RandomMix& m_mix;
    NetworkBuilder m_builder;
    int m_nodes = 0;
    int m_links = 0;
};

}  // namespace

Network randomTree(std::uint64_t seed, const RandomMix& mix) {
    Draw draw(seed);
    return Tree(draw, mix).build();
}

Network randomMesh(std::uint64_t seed, const RandomMix& mix) {
    Draw draw(seed);
    NetworkBuilder builder;
    const int nodes = draw.whole(3, 60);
    std::vector<NodeIndex> at;
    for (int i = 0; i < nodes; ++i) {
        at.push_back(builder.addNode("n" + std::to_string(i)));
    }
    int links = 0;
    const auto join = [&](NodeIndex a, NodeIndex b, bool isPump) {
        if (draw.chance(0.5)) {
            std::swap(a, b);
        }
        builder.addLink("l" + std::to_string(links++), a, b,
                        isPump ? randomPump(draw, mix.hasOnlySquareLaws) : randomPassive(draw, mix),
                        !isPump && draw.chance(mix.closedFraction));
    };
    for (int i = 1; i < nodes; ++i) {
        join(at[static_cast<std::size_t>(draw.whole(std::max(0, i - 6), i - 1))],
             at[static_cast<std::size_t>(i)], false);
    }
    const int chords = draw.whole(2, nodes + 5);
    const int pumps = draw.whole(1, 5);
    for (int i = 0; i < chords + pumps; ++i) {
        const int a = draw.whole(0, nodes - 1);
        const int b = draw.whole(0, nodes - 2);
        join(at[static_cast<std::size_t>(a)], at[static_cast<std::size_t>(b >= a ? b + 1 : b)], i < pumps);
    }
    return *builder.build().network;
}

}  // namespace ww::hydraulics
