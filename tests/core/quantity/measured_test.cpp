#include "core/quantity/measured.h"

#include <gtest/gtest.h>

#include <cmath>

namespace ww::quantity {
namespace {

constexpr Density kWater = Density::si(999.0);

base::Decimal decimal(const char* text) {
    return base::Decimal::parse(text).value();
}

Measured<PressureDifference> typed(const char* text, Unit usual = Unit::Kilopascal) {
    return parseDifference(text, usual, kWater).value();
}

TEST(Measured, keepsDigitsAndUnitAsEntered) {
    const auto flow = measured<VolumeFlow>(decimal("12.50"), Unit::GallonPerMinute);
    EXPECT_EQ(flow.text(), "12.50 gpm");
    EXPECT_DOUBLE_EQ(flow.value.in(Unit::GallonPerMinute), 12.5);
    EXPECT_FALSE(flow == measured<VolumeFlow>(decimal("12.5"), Unit::GallonPerMinute)) << "other digits";
    EXPECT_FALSE(flow == measured<VolumeFlow>(decimal("12.50"), Unit::LitrePerSecond)) << "other unit";
}

TEST(Measured, aHeadTakesTheDensityOfTheFluid) {
    const auto asHead = measuredDifference(decimal("10"), Unit::Foot, Density::si(1040));
    EXPECT_DOUBLE_EQ(asHead.value.si(), 3.048 * 1040 * kStandardGravity);
    const auto asPressure = measuredHead(decimal("50"), Unit::Kilopascal, Density::si(1040));
    EXPECT_DOUBLE_EQ(asPressure.value.si(), 50e3 / (1040 * kStandardGravity));
    EXPECT_DOUBLE_EQ(measuredHead(decimal("12"), Unit::Metre, kWater).value.si(), 12);
    EXPECT_DOUBLE_EQ(measuredGauge(decimal("1.5"), Unit::Bar, kWater).value.si(), 1.5e5);
}

TEST(ParseDifference, takesTheUsualUnitWhereNoneIsWritten) {
    EXPECT_EQ(typed("12.4").text(), "12.4 kPa");
    EXPECT_EQ(typed("12.4", Unit::Psi).text(), "12.4 psi");
    EXPECT_EQ(typed(" 7 ", Unit::Foot).unit, Unit::Foot);
}

TEST(ParseDifference, readsUnitLetters) {
    EXPECT_EQ(typed("1.8p").unit, Unit::Psi);
    EXPECT_EQ(typed("1.8 P").unit, Unit::Psi);
    EXPECT_EQ(typed("18k", Unit::Psi).unit, Unit::Kilopascal);
    EXPECT_EQ(typed("180m").unit, Unit::Millibar);
    EXPECT_EQ(typed("24i").unit, Unit::InchOfWater);
    EXPECT_EQ(typed("2f").unit, Unit::FootOfWater);
    EXPECT_DOUBLE_EQ(typed("180m").value.si(), 18000);
}

TEST(ParseDifference, readsWholeSymbols) {
    EXPECT_EQ(typed("12,4 psi").text(), "12.4 psi");
    EXPECT_EQ(typed("3 ft").unit, Unit::Foot);
    EXPECT_EQ(typed("3ftH2O").unit, Unit::FootOfWater);
    EXPECT_EQ(typed("90 mmh2o ").unit, Unit::MillimetreOfWater);
    EXPECT_DOUBLE_EQ(typed("1 ft").value.si(), 0.3048 * 999.0 * kStandardGravity);
}

TEST(ParseDifference, aCommaIsADecimalPoint) {
    EXPECT_EQ(typed("1,250").digits.text(), "1.250");
    EXPECT_DOUBLE_EQ(typed("1,250 kPa").value.si(), 1250);
}

TEST(ParseDifference, keepsASignForACrossedHose) {
    EXPECT_DOUBLE_EQ(typed("-3.2k").value.si(), -3200);
}

TEST(ParseDifference, saysWhatItCannotRead) {
    const auto unknown = parseDifference("12 furlong", Unit::Kilopascal, kWater);
    ASSERT_FALSE(unknown.ok());
    EXPECT_TRUE(unknown.fault().is(kUnitUnknown));
    EXPECT_EQ(unknown.fault().arguments.at(0), "furlong");
    EXPECT_NE(unknown.fault().arguments.at(2).find("inH2O"), std::string::npos);
    EXPECT_TRUE(parseDifference("12 gpm", Unit::Kilopascal, kWater).fault().is(kUnitUnknown));
    EXPECT_TRUE(parseDifference("12x", Unit::Kilopascal, kWater).fault().is(kUnitUnknown));
    EXPECT_EQ(parseDifference("", Unit::Kilopascal, kWater).fault().code(), "number_missing");
    for (const char* text : {"psi", " psi", "1.2.3 psi", "- k"}) {
        const auto result = parseDifference(text, Unit::Kilopascal, kWater);
        ASSERT_FALSE(result.ok()) << text;
        EXPECT_TRUE(result.fault().is(base::kNotANumber)) << text;
        EXPECT_EQ(result.fault().arguments.at(0), text);
    }
}

TEST(ParseFlow, takesDigitsWithALetterOrASymbol) {
    const auto flow = [](const char* text) { return parseFlow(text, Unit::CubicMetrePerHour).value(); };
    EXPECT_EQ(flow("3.90").text(), "3.90 m3/h");
    EXPECT_EQ(flow("1,1l").text(), "1.1 L/s");
    EXPECT_EQ(flow("17 G").unit, Unit::GallonPerMinute);
    EXPECT_EQ(flow("4m").unit, Unit::CubicMetrePerHour);
    EXPECT_EQ(flow("12 imp_gpm ").unit, Unit::ImperialGallonPerMinute);
    EXPECT_DOUBLE_EQ(flow("1.1 l/s").value.si(), 1.1e-3);
}

TEST(ParseFlow, saysWhatItCannotRead) {
    const auto unknown = parseFlow("12 kPa", Unit::LitrePerSecond);
    ASSERT_FALSE(unknown.ok());
    EXPECT_TRUE(unknown.fault().is(kUnitUnknown));
    EXPECT_EQ(unknown.fault().arguments.at(0), "kPa");
    EXPECT_NE(unknown.fault().arguments.at(2).find("m3/h"), std::string::npos);
    EXPECT_TRUE(parseFlow("12k", Unit::LitrePerSecond).fault().is(kUnitUnknown));
    EXPECT_TRUE(parseFlow("1.2.3 l", Unit::LitrePerSecond).fault().is(base::kNotANumber));
}

TEST(PressureOrHeadUnit, pressuresAndLengthsOnly) {
    EXPECT_EQ(pressureOrHeadUnit("bar"), Unit::Bar);
    EXPECT_EQ(pressureOrHeadUnit("m"), Unit::Metre);
    EXPECT_FALSE(pressureOrHeadUnit("gpm"));
    EXPECT_TRUE(isHeadUnit(Unit::Inch));
    EXPECT_FALSE(isHeadUnit(Unit::InchOfWater));
}

TEST(Symbols, areListedForMessages) {
    EXPECT_EQ(symbolsOf(Dimension::FlowCoefficient), "Cv, Kv");
    EXPECT_EQ(symbolsOf(Dimension::Flow), "gpm, L/s, m3/h, imp_gpm, m3/s");
    EXPECT_EQ(pressureSymbols(), "psi, kPa, bar, mbar, Pa, inH2O, mmH2O, ftH2O, ft, m, in, mm");
}

TEST(Significant, keepsThatManyFigures) {
    EXPECT_EQ(significant(0.78262, 3), "0.783");
    EXPECT_EQ(significant(12.3456, 4), "12.35");
    EXPECT_EQ(significant(2.0, 3), "2.00");
    EXPECT_EQ(significant(123456.0, 3), "123456") << "digits before the point are never dropped";
    EXPECT_EQ(significant(-0.00123456, 2), "-0.0012");
    EXPECT_EQ(significant(0, 3), "0");
}

TEST(Significant, roundsIntoTheNextPlace) {
    EXPECT_EQ(significant(9.996, 3), "10.0");
    EXPECT_EQ(significant(0.09999, 2), "0.10");
    EXPECT_EQ(significant(99.6, 2), "100");
}

TEST(Significant, whatIsNotANumberIsADash) {
    EXPECT_EQ(significant(std::nan(""), 3), "-");
    EXPECT_EQ(concise(INFINITY, 3), "-");
}

TEST(Concise, dropsZerosBehindThePointOnly) {
    EXPECT_EQ(concise(2.5, 6), "2.5");
    EXPECT_EQ(concise(4.0, 6), "4");
    EXPECT_EQ(concise(120.0, 3), "120");
    EXPECT_EQ(concise(-0.3, 4), "-0.3");
    EXPECT_EQ(concise(-1e-15, 4), "0") << "nothing has no sign";
    EXPECT_EQ(concise(0, 4), "0");
    EXPECT_EQ(concise(1e-15, 3), "0") << "below the twelfth place";
}

}  // namespace
}  // namespace ww::quantity
