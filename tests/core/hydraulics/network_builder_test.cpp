// The builder reports everything that is wrong with a network, and the network answers for itself.

#include "core/hydraulics/network_builder.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace ww::hydraulics {
namespace {

Element resistorOf(double k) {
    return Element::resistance(Resistance::si(k));
}

Element pump(PumpOperation operation = {}) {
    const PumpDuty points[] = {{VolumeFlow::si(0), PressureDifference::si(6e4)},
                               {VolumeFlow::si(2e-3), PressureDifference::si(3e4)}};
    return Element::pump(PumpModel::straightLines(points).value(), operation);
}

int count(const std::vector<base::Fault>& faults, const base::MessageForm& form, std::string_view subject) {
    return static_cast<int>(std::count_if(faults.begin(), faults.end(), [&](const base::Fault& fault) {
        return fault.is(form) && fault.subject == subject;
    }));
}

NetworkBuilder loop() {
    NetworkBuilder builder;
    builder.addNode("in");
    builder.addNode("out");
    builder.addLink("pump", "in", "out", pump());
    builder.addLink("circuit", "out", "in", resistorOf(1e10));
    return builder;
}

TEST(NetworkBuilder, reportsEveryFaultAtOnce) {
    NetworkBuilder builder = loop();
    builder.addNode("in");
    builder.addNode("alone");
    builder.addNode("island a");
    builder.addNode("island b");
    builder.addLink("circuit", "out", "in", resistorOf(1e10));
    builder.addLink("bad k", "out", "in", resistorOf(-5));
    builder.addLink("nowhere", "out", "atlantis", resistorOf(1));
    builder.addLink("ring", "in", "in", resistorOf(1));
    builder.addLink("i", "island a", "island b", resistorOf(1));
    builder.addLink("j", "island b", "island a", resistorOf(1));
    builder.addThreeWayValve("mixer", "out", "in", "out", FlowCoefficient::si(4), 1.5, Density::si(998));
    builder.setReference("in", GaugePressure::si(2e5));
    builder.setReference("out", GaugePressure::si(2e5));
    builder.setReference("mars", GaugePressure::si(0));
    const auto [network, faults] = builder.build();
    EXPECT_FALSE(network);
    EXPECT_EQ(count(faults, kNodeRepeated, "in"), 1);
    EXPECT_EQ(count(faults, kLinkRepeated, "circuit"), 1);
    EXPECT_EQ(count(faults, kElementResistance, "bad k"), 1);
    EXPECT_EQ(count(faults, kNodeUnknown, "nowhere"), 1);
    EXPECT_EQ(count(faults, kLinkToItself, "ring"), 1);
    EXPECT_EQ(count(faults, kLinkToItself, "mixer.A"), 1);
    EXPECT_EQ(count(faults, kNodeFloating, "alone"), 1);
    EXPECT_EQ(count(faults, kNoPathToPump, "island a"), 1);
    EXPECT_EQ(count(faults, kThreeWayPosition, "mixer"), 1);
    EXPECT_EQ(count(faults, kReferenceRepeated, "out"), 1);
    EXPECT_EQ(count(faults, kReferenceUnknown, "mars"), 1);
    EXPECT_EQ(faults.size(), 11U);
    for (const base::Fault& fault : faults) {
        EXPECT_EQ(base::english(fault).find('{'), std::string::npos) << base::english(fault);
    }
}

TEST(NetworkBuilder, refusesAnEmptyNetwork) {
    EXPECT_TRUE(NetworkBuilder().build().faults.at(0).is(kNetworkEmpty));
}

TEST(NetworkBuilder, aStoppedPumpIsAPathToAPump) {
    PumpOperation stopped;
    stopped.isRunning = false;
    NetworkBuilder builder;
    builder.addNode("in");
    builder.addNode("out");
    builder.addLink("pump", "in", "out", pump(stopped));
    builder.addLink("circuit", "out", "in", resistorOf(1e10));
    EXPECT_TRUE(builder.build().network);
}

TEST(Network, answersForItself) {
    const Network network = *loop().build().network;
    EXPECT_EQ(network.nodeCount(), 2U);
    EXPECT_EQ(network.linkCount(), 2U);
    const LinkIndex circuit = *network.findLink("circuit");
    EXPECT_EQ(network.linkId(circuit), "circuit");
    EXPECT_EQ(network.nodeId(network.from(circuit)), "out");
    EXPECT_EQ(network.nodeId(network.to(circuit)), "in");
    EXPECT_FALSE(network.findLink("valve"));
    EXPECT_FALSE(network.findNode("roof"));
    EXPECT_DOUBLE_EQ(network.element(circuit).drop(VolumeFlow::si(1e-3)).si(), 1e4);
}

TEST(Network, changesMakeAnotherNetworkAndLeaveTheFirst) {
    const Network network = *loop().build().network;
    const LinkIndex circuit = *network.findLink("circuit");
    const LinkChange open{circuit, resistorOf(4e10)};
    const Network other = *network.with({&open, 1}).network;
    EXPECT_DOUBLE_EQ(other.element(circuit).drop(VolumeFlow::si(1e-3)).si(), 4e4);
    EXPECT_DOUBLE_EQ(network.element(circuit).drop(VolumeFlow::si(1e-3)).si(), 1e4);
    const LinkChange shut{circuit, resistorOf(4e10), true};
    EXPECT_TRUE(network.with({&shut, 1}).network->isClosed(circuit));
    const LinkChange bad[] = {{circuit, resistorOf(-1)}, {*network.findLink("pump"), resistorOf(-2)}};
    const auto refused = network.with(bad);
    EXPECT_FALSE(refused.network);
    EXPECT_EQ(refused.faults.size(), 2U);
    EXPECT_EQ(refused.faults.at(0).subject, "circuit");
}

}  // namespace
}  // namespace ww::hydraulics
