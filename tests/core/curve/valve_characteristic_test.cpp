#include "core/curve/valve_characteristic.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace ww::curve {
namespace {

Setting at(double number) {
    return Setting::si(number);
}

std::vector<ValvePoint> table(std::initializer_list<std::pair<double, double>> rows) {
    std::vector<ValvePoint> points;
    for (const auto& [setting, coefficient] : rows) {
        points.push_back({at(setting), FlowCoefficient::si(coefficient)});
    }
    return points;
}

ValveCharacteristic characteristic(std::initializer_list<std::pair<double, double>> rows) {
    return ValveCharacteristic::make(table(rows)).value();
}

TEST(ValveCharacteristic, passesThroughItsPointsInAnyOrder) {
    const auto valve = characteristic({{3, 4.2}, {0.5, 0.3}, {1, 0.8}, {4, 6.0}, {2, 2.1}});
    EXPECT_EQ(valve.lowest(), at(0.5));
    EXPECT_EQ(valve.fullyOpen(), at(4));
    EXPECT_DOUBLE_EQ(valve.coefficientFullyOpen().si(), 6.0);
    for (const ValvePoint& point : valve.points()) {
        EXPECT_NEAR(valve.coefficient(point.setting).si(), point.coefficient.si(), 1e-14);
        EXPECT_NEAR(valve.settingFor(point.coefficient)->si(), point.setting.si(), 1e-14);
    }
}

// Definition of the equal-percentage characteristic, IEC 60534-2-4: equal steps of travel multiply Kv by the
// same.
TEST(ValveCharacteristic, reproducesAnEqualPercentageValveExactly) {
    std::vector<ValvePoint> points;
    for (int turn = 0; turn <= 4; ++turn) {
        points.push_back({at(turn), FlowCoefficient::si(10 * std::pow(30, turn / 4.0 - 1))});
    }
    const auto valve = ValveCharacteristic::make(points).value();
    for (double turn = 0; turn <= 4; turn += 0.03) {
        EXPECT_NEAR(valve.coefficient(at(turn)).si(), 10 * std::pow(30, turn / 4.0 - 1), 1e-12);
        EXPECT_NEAR(valve.logSlope(at(turn)), std::log(30.0) / 4, 1e-12);
    }
}

TEST(ValveCharacteristic, aShutLowestPointIsLinearUpToTheNext) {
    const auto valve = characteristic({{0, 0}, {0.5, 0.4}, {1, 0.9}, {2, 2.4}});
    EXPECT_DOUBLE_EQ(valve.coefficient(at(0)).si(), 0);
    EXPECT_DOUBLE_EQ(valve.coefficient(at(0.25)).si(), 0.2);
    EXPECT_DOUBLE_EQ(valve.logSlope(at(0)), 0);
    EXPECT_DOUBLE_EQ(valve.logSlope(at(0.25)), 4);
    EXPECT_DOUBLE_EQ(valve.settingFor(FlowCoefficient::si(0))->si(), 0);
    EXPECT_DOUBLE_EQ(valve.settingFor(FlowCoefficient::si(0.1))->si(), 0.125);
    EXPECT_NEAR(valve.coefficient(at(0.5)).si(), 0.4, 1e-15);
}

TEST(ValveCharacteristic, twoPointsAreEnough) {
    const auto shut = characteristic({{0, 0}, {100, 5}});
    EXPECT_DOUBLE_EQ(shut.coefficient(at(30)).si(), 1.5);
    EXPECT_DOUBLE_EQ(shut.coefficient(at(100)).si(), 5);
    EXPECT_DOUBLE_EQ(shut.settingFor(FlowCoefficient::si(5))->si(), 100);
    const auto open = characteristic({{0, 1}, {2, 4}});
    EXPECT_NEAR(open.coefficient(at(1)).si(), 2, 1e-15);
}

TEST(ValveCharacteristic, aLevelPieceGivesItsLowerSetting) {
    const auto valve = characteristic({{0, 1}, {1, 2}, {2, 2}, {3, 3}, {4, 3}});
    EXPECT_DOUBLE_EQ(valve.settingFor(FlowCoefficient::si(2))->si(), 1);
    EXPECT_DOUBLE_EQ(valve.settingFor(FlowCoefficient::si(3))->si(), 3);
    EXPECT_NEAR(valve.coefficient(at(1.5)).si(), 2, 1e-15);
    EXPECT_EQ(valve.logSlope(at(1.5)), 0);
}

TEST(ValveCharacteristic, hasNoSettingForWhatItCannotPass) {
    const auto valve = characteristic({{0.5, 0.3}, {1, 0.8}, {4, 6.0}});
    EXPECT_FALSE(valve.settingFor(FlowCoefficient::si(0.299)));
    EXPECT_FALSE(valve.settingFor(FlowCoefficient::si(6.001)));
    EXPECT_FALSE(valve.settingFor(FlowCoefficient::si(-1)));
    EXPECT_FALSE(valve.settingFor(FlowCoefficient::si(std::nan(""))));
    // A last place lost in a conversion of units does not make the open valve impossible.
    EXPECT_EQ(valve.settingFor(FlowCoefficient::si(6.0 * (1 + 1e-15))), at(4));
    EXPECT_EQ(valve.settingFor(FlowCoefficient::si(0.3 * (1 - 1e-15))), at(0.5));
}

TEST(ValveCharacteristic, aSettingOutsideItsTableIsABrokenContract) {
    const auto valve = characteristic({{0.5, 0.3}, {4, 6.0}});
    EXPECT_TRUE(valve.covers(at(0.5)));
    EXPECT_FALSE(valve.covers(at(0.4)));
    EXPECT_THROW((void)valve.coefficient(at(0.4)), base::ContractBreach);
    EXPECT_THROW((void)valve.coefficient(at(4.01)), base::ContractBreach);
    EXPECT_THROW((void)valve.logSlope(at(std::nan(""))), base::ContractBreach);
}

TEST(ValveCharacteristic, saysWhatIsWrongWithATable) {
    const auto sentence = [](std::initializer_list<std::pair<double, double>> rows) {
        return base::english(ValveCharacteristic::make(table(rows)).fault());
    };
    EXPECT_EQ(sentence({}), "points of the valve table: 0; give at least two, the highest being fully open");
    EXPECT_EQ(sentence({{4, 6}}),
              "points of the valve table: 1; give at least two, the highest being fully open");
    EXPECT_EQ(sentence({{1, 0.8}, {4, 6}, {1, 0.9}}),
              "setting 1 stands twice in the valve table; keep one row for it");
    EXPECT_EQ(sentence({{1, 0.8}, {2, 0.7}, {4, 6}}),
              "the coefficient falls from 0.8 to 0.7 between settings 1 and 2; correct the table, a valve "
              "passes more "
              "as it opens");
    EXPECT_EQ(
        sentence({{0, 0}, {1, 0}, {4, 6}}),
        "the coefficient at setting 1 is 0; only the lowest setting may have 0, all others must be above 0");
    EXPECT_EQ(sentence({{0, -0.5}, {4, 6}}),
              "the coefficient at setting 0 is -0.5; only the lowest setting may have 0, all others must be "
              "above 0");
}

/// A table of 2 to 12 rows whose steps of ln(Kv) and of setting differ by up to twenty times.
std::vector<ValvePoint> randomTable(std::mt19937& random, bool mayShut) {
    std::uniform_int_distribution<int> rows(2, 12);
    std::uniform_real_distribution<double> step(0.05, 1.0);
    std::vector<ValvePoint> points;
    double setting = step(random);
    double log = -3 * step(random);
    for (int i = rows(random); i > 0; --i) {
        points.push_back({at(setting), FlowCoefficient::si(std::exp(log))});
        setting += step(random);
        log += step(random);
    }
    if (mayShut && step(random) > 0.5) {
        points.front().coefficient = FlowCoefficient::si(0);
    }
    return points;
}

TEST(ValveCharacteristic, neverOvershootsBetweenTwoPoints) {
    std::mt19937 random(1980);
    for (int i = 0; i < 500; ++i) {
        const auto valve = ValveCharacteristic::make(randomTable(random, true)).value();
        for (std::size_t k = 1; k < valve.points().size(); ++k) {
            const ValvePoint& low = valve.points()[k - 1];
            const ValvePoint& high = valve.points()[k];
            double before = low.coefficient.si();
            for (int part = 1; part <= 40; ++part) {
                const Setting between = low.setting + (high.setting - low.setting) * (part / 40.0);
                const double now = valve.coefficient(std::min(between, high.setting)).si();
                ASSERT_GT(now, before * (1 - 1e-14)) << "table " << i;
                ASSERT_LE(now, high.coefficient.si() * (1 + 1e-14)) << "table " << i;
                before = now;
            }
        }
    }
}

TEST(ValveCharacteristic, settingForIsTheInverseOfCoefficient) {
    std::mt19937 random(1981);
    std::uniform_real_distribution<double> anywhere(0, 1);
    for (int i = 0; i < 500; ++i) {
        const auto valve = ValveCharacteristic::make(randomTable(random, true)).value();
        const double scale = (valve.fullyOpen() - valve.lowest()).si();
        for (int k = 0; k < 20; ++k) {
            const Setting setting = valve.lowest() + at(scale * anywhere(random));
            const FlowCoefficient coefficient = valve.coefficient(setting);
            const auto back = valve.settingFor(coefficient);
            ASSERT_TRUE(back) << "table " << i;
            EXPECT_NEAR(back->si(), setting.si(), 1e-10 * scale) << "table " << i;
            EXPECT_NEAR(valve.coefficient(*back).si(), coefficient.si(), 1e-13 * coefficient.si() + 1e-300);
        }
    }
}

TEST(ValveCharacteristic, logSlopeIsTheDerivative) {
    std::mt19937 random(1982);
    std::uniform_real_distribution<double> anywhere(0.01, 0.99);
    for (int i = 0; i < 500; ++i) {
        const auto valve = ValveCharacteristic::make(randomTable(random, true)).value();
        for (std::size_t k = 1; k < valve.points().size(); ++k) {
            const Setting low = valve.points()[k - 1].setting;
            const Setting span = valve.points()[k].setting - low;
            const Setting setting = low + span * anywhere(random);
            const Setting step = span * 1e-5;
            const double difference = (std::log(valve.coefficient(setting + step).si()) -
                                       std::log(valve.coefficient(setting - step).si())) /
                                      (2 * step.si());
            EXPECT_NEAR(valve.logSlope(setting), difference, 1e-5 * (1 + std::abs(difference)))
                << "table " << i;
        }
    }
}

}  // namespace
}  // namespace ww::curve
