// Signed reports damaged at random, in ways a bit flip does not reach: the verifier must answer "not intact"
// without a crash and in good time. Seeded; WW_LONG in the environment asks for ten times as many.
#include <gtest/gtest.h>

#include <ctime>
#include <cstdlib>
#include <random>

#include "core/seal/verify_report.h"
#include "tests/support/signed_report.h"

namespace ww::seal {
namespace {

using support::onceSigned;
using support::twiceSigned;

/// One damage: bytes set, a piece cut, doubled or moved, digits replaced, brackets opened again and again.
std::string damaged(std::string bytes, std::mt19937& random) {
    const auto below = [&](std::size_t end) {
        return std::uniform_int_distribution<std::size_t>(0, end - 1)(random);
    };
    const std::size_t at = below(bytes.size());
    const std::size_t size = 1 + below(300);
    switch (below(6)) {
        case 0:
            for (std::size_t i = at; i < std::min(bytes.size(), at + 1 + size / 20); ++i) {
                bytes[i] = static_cast<char>(below(256));
            }
            break;
        case 1:
            bytes.erase(at, size);
            break;
        case 2:
            bytes.insert(below(bytes.size()), bytes.substr(at, size));
            break;
        case 3: {
            const std::string piece = bytes.substr(at, size);
            bytes.erase(at, size);
            bytes.insert(below(bytes.size()), piece);
            break;
        }
        case 4:
            if (const auto digit = bytes.find_first_of("0123456789", at); digit != std::string::npos) {
                bytes.replace(digit, 1, std::to_string(below(1'000'000'000)));
            }
            break;
        default:
            bytes.insert(at, std::string(size * 100, "[<("[below(3)]));
            break;
    }
    return bytes;
}

TEST(ReportMutation, IsAlwaysAnsweredAndNeverPassed) {
    const int count = std::getenv("WW_LONG") != nullptr ? 30000 : 3000;
    std::mt19937 random(20261125);
    for (int i = 0; i < count; ++i) {
        const std::string& sound = i % 2 == 0 ? onceSigned() : twiceSigned();
        std::string bytes = damaged(sound, random);
        if (i % 3 == 0) {
            bytes = damaged(std::move(bytes), random);
        }
        // Seconds of the processor: other programs on the machine do not count.
        const std::clock_t begun = std::clock();
        const bool isIntact = verifyReport(bytes).isIntact;
        const std::clock_t took = std::clock() - begun;
        ASSERT_TRUE(!isIntact || bytes == sound || bytes == onceSigned()) << "mutation " << i;
        ASSERT_LT(took, 5 * CLOCKS_PER_SEC) << "mutation " << i;
    }
}

}  // namespace
}  // namespace ww::seal
