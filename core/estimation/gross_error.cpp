#include "core/estimation/gross_error.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <set>
#include <span>

namespace ww::estimation {

namespace {

constexpr double kWidePriorSd = 0.8;
constexpr std::size_t kMostRereads = 3;
/// By how much the misfit without one reading of a place must be below that without another, for that one to
/// be named: three standard deviations, squared.
constexpr double kTellingScore = 9;
/// Values that would leave a larger residual, by the linearised fit, are not tried.
constexpr double kTriedScore = 4;
constexpr std::size_t kMostTried = 8;

/// With more readings than this, what would be without one of them is told by the linearised fit, and few
/// accounts are tried: each is a fit of the whole.
constexpr std::size_t kMostFittedWithout = 5000;
constexpr std::size_t kMostTriedInLarge = 4;

/// kAccusingScore up to 1,000 readings; above, so that chance names a reading of a clean job no more often
/// (C. E. Bonferroni, 1936).
double accusingScore(std::size_t readings) {
    constexpr double kUsual = 1000;
    constexpr double kStep = 0.01;
    const auto tail = [](double score) { return std::erfc(score / std::numbers::sqrt2); };
    const double wanted = tail(kAccusingScore) * std::min(1.0, kUsual / static_cast<double>(readings));
    double score = kAccusingScore;
    while (tail(score) > wanted) {
        score += kStep;
    }
    return score;
}

double magnitude(const LearnedReading& reading) {
    return std::abs(reading.score);
}

/// The search on one learning.
class Search {
  public:
    Search(const Learning& learning, const LearnOptions& options, const HypothesesOf& hypothesesOf)
        : m_learning(learning),
          m_options(options),
          m_hypothesesOf(hypothesesOf),
          m_accusing(accusingScore(learning.observations.size())),
          m_isLarge(learning.observations.size() > kMostFittedWithout) {}

    GrossErrorResult run() {
        auto plain = learn(m_learning, m_options);
        if (!plain.learned) {
            return {std::nullopt, std::move(plain.faults)};
        }
        m_start = plain.learned->lnFactorOfUnknowns();
        GrossErrorFinding finding{GrossErrorVerdict::Clean, *std::move(plain.learned), false, {}, {}, {}, {}};
        if (const auto impossible = impossibleReading()) {
            nameReading(finding, *impossible, m_options);
            return {std::move(finding), {}};
        }
        if (largestScore(finding.learned) > m_accusing) {
            doubt(finding);
        } else {
            finding.readAgain = rereads(finding.learned);
            finding.verdict =
                finding.readAgain.empty() ? GrossErrorVerdict::Clean : GrossErrorVerdict::ReadAgain;
        }
        return {std::move(finding), {}};
    }

  private:
    Learned fit(const Learning& learning, LearnOptions options) const {
        options.lnFactorStart = m_start;
        return *learn(learning, options).learned;
    }
    Learned fitWithout(std::span<const std::size_t> readings, const LearnOptions& options) const {
        Learning learning = m_learning;
        for (const std::size_t reading : readings) {
            learning.observations[reading].isLeftOut = true;
        }
        return fit(learning, options);
    }

    /// A value that no flow in the link's direction can give, still counted as a reading.
    std::optional<std::size_t> impossibleReading() const {
        for (std::size_t reading = 0; reading < m_learning.observations.size(); ++reading) {
            const Observation& observation = m_learning.observations[reading];
            if (!observation.isLeftOut && !observation.lnValueRatio()) {
                return reading;
            }
        }
        return std::nullopt;
    }

    bool counts(std::size_t reading) const { return m_learning.observations[reading].hasWeight(); }

    double largestScore(const Learned& learned, std::span<const std::size_t> but = {}) const {
        double largest = 0;
        for (std::size_t reading = 0; reading < learned.readings.size(); ++reading) {
            const bool isLeftOut = std::find(but.begin(), but.end(), reading) != but.end();
            largest =
                std::max(largest, counts(reading) && !isLeftOut ? magnitude(learned.readings[reading]) : 0);
        }
        return largest;
    }
    std::size_t mostDoubtful(const Learned& learned) const {
        std::size_t worst = 0;
        double largest = -1;
        for (std::size_t reading = 0; reading < learned.readings.size(); ++reading) {
            if (counts(reading) && magnitude(learned.readings[reading]) > largest) {
                largest = magnitude(learned.readings[reading]);
                worst = reading;
            }
        }
        return worst;
    }

    /// Readings with weight of the same place, this one included.
    std::vector<std::size_t> ofPlace(std::size_t reading) const {
        const auto& place = m_learning.observations[reading].place;
        std::vector<std::size_t> out;
        for (std::size_t other = 0; other < m_learning.observations.size(); ++other) {
            const bool isSame = place && m_learning.observations[other].place == place && counts(other);
            if (other == reading || isSame) {
                out.push_back(other);
            }
        }
        return out;
    }
    bool isReadInSeveralCases(std::size_t reading) const {
        std::set<std::size_t> cases;
        for (const std::size_t one : ofPlace(reading)) {
            cases.insert(m_learning.observations[one].caseIndex);
        }
        return cases.size() > 1;
    }

    /// Readings of places that stand in one case alone and stick out: the most doubtful, one a place.
    std::vector<std::size_t> rereads(const Learned& learned) const {
        std::vector<std::size_t> out;
        for (std::size_t reading = 0; reading < learned.readings.size(); ++reading) {
            if (counts(reading) && magnitude(learned.readings[reading]) > kRereadScore &&
                !isReadInSeveralCases(reading)) {
                out.push_back(reading);
            }
        }
        std::stable_sort(out.begin(), out.end(), [&](std::size_t one, std::size_t other) {
            return magnitude(learned.readings[one]) > magnitude(learned.readings[other]);
        });
        out.resize(std::min(out.size(), kMostRereads));
        return out;
    }

    /// Something sticks out: first the priors are doubted, then the reading.
    void doubt(GrossErrorFinding& finding) const {
        LearnOptions wide = m_options;
        wide.lnFactorLeastPriorSd = std::max(wide.lnFactorLeastPriorSd, kWidePriorSd);
        Learned widened = fit(m_learning, wide);
        const std::size_t worst = mostDoubtful(widened);
        const bool isSettled = largestScore(widened) <= m_accusing;
        if (isSettled || !isReadInSeveralCases(worst)) {
            finding.readAgain = rereads(widened);
            finding.verdict =
                finding.readAgain.empty() ? GrossErrorVerdict::Clean : GrossErrorVerdict::ReadAgain;
            finding.isPriorWidened = true;
            finding.learned = std::move(widened);
            return;
        }
        accuse(finding, worst, wide, widened);
    }

    /// A fit without one reading, and how that reading stands against it.
    struct Without {
        std::size_t reading = 0;
        double chiSquareScore = 0;
        LearnedReading leftOut;
    };
    std::vector<Without> withoutEach(const std::vector<std::size_t>& readings, const LearnOptions& options,
                                     const Learned& withAll) const {
        std::vector<Without> out;
        for (const std::size_t reading : readings) {
            if (m_isLarge) {
                out.push_back(linearisedWithout(reading, withAll));
                continue;
            }
            const Learned others = fitWithout({&reading, 1}, options);
            out.push_back({reading, others.misfit.chiSquareScore, others.readings[reading]});
        }
        std::stable_sort(out.begin(), out.end(), [](const Without& one, const Without& other) {
            return one.chiSquareScore < other.chiSquareScore;
        });
        return out;
    }

    /// Exact where all depends linearly on the unknowns: the misfit falls by the reading's squared score.
    Without linearisedWithout(std::size_t reading, const Learned& withAll) const {
        constexpr double kLeast = 0.01;
        Without out{reading, withAll.misfit.chiSquareScore, withAll.readings[reading]};
        out.chiSquareScore -= out.leftOut.score * out.leftOut.score;
        const double deviation =
            out.leftOut.relativeResidual / std::max(out.leftOut.redundancyFraction, kLeast);
        const double less = std::exp(out.leftOut.relativeResidual - deviation);
        std::visit([less](auto& fitted) { fitted = fitted * less; }, out.leftOut.fitted);
        out.leftOut.relativeResidual = deviation;
        return out;
    }

    void accuse(GrossErrorFinding& finding, std::size_t worst, const LearnOptions& wide,
                const Learned& widened) const {
        const std::vector<std::size_t> readings = ofPlace(worst);
        const std::vector<Without> without = withoutEach(readings, wide, widened);
        finding.place = m_learning.observations[worst].place;
        finding.explanations = explanations(finding.place, without, wide);
        const bool isTold =
            without.size() == 1 || without[1].chiSquareScore - without[0].chiSquareScore > kTellingScore;
        finding.verdict = isTold ? GrossErrorVerdict::ReadingNamed : GrossErrorVerdict::PlaceNamed;
        for (const Without& one : without) {
            finding.readAgain.push_back(one.reading);
        }
        finding.wrong = isTold ? std::vector{without[0].reading} : readings;
        finding.learned = fitWithout(finding.wrong, m_options);
        if (largestScore(finding.learned, finding.wrong) > m_accusing) {
            finding.learned = fitWithout(finding.wrong, wide);
            finding.isPriorWidened = true;
        }
    }

    void nameReading(GrossErrorFinding& finding, std::size_t reading, const LearnOptions& options) const {
        finding.verdict = GrossErrorVerdict::ReadingNamed;
        finding.place = m_learning.observations[reading].place;
        finding.wrong = {reading};
        finding.readAgain = {reading};
        finding.explanations =
            explanations(finding.place, {{reading, 0, finding.learned.readings[reading]}}, options);
    }

    /// What the score of a left-out reading would be with another value.
    double expectedScore(const Without& without, const ObservedValue& value) const {
        Observation other = m_learning.observations[without.reading];
        other.value = value;
        const auto ln = other.lnValueRatio();
        const double fitted = std::visit([](auto quantity) { return quantity.si(); }, without.leftOut.fitted);
        if (!ln || !(fitted > 0)) {
            return 2 * kTriedScore;
        }
        return std::abs(*ln - std::log(fitted)) * std::sqrt(without.leftOut.redundancyFraction) /
               other.relativeSd;
    }

    std::vector<Explanation> explanations(std::optional<std::size_t> place,
                                          const std::vector<Without>& withouts,
                                          const LearnOptions& options) const {
        if (!place || !m_hypothesesOf || options.stop.stop_requested()) {
            return {};
        }
        const std::vector<Hypothesis> hypotheses = m_hypothesesOf(*place);
        std::vector<std::size_t> readings;
        for (const Without& without : withouts) {
            readings.push_back(without.reading);
        }
        std::vector<std::pair<double, std::size_t>> candidates;
        for (std::size_t one = 0; one < hypotheses.size(); ++one) {
            const Hypothesis& hypothesis = hypotheses[one];
            EXPECTS(hypothesis.observation < m_learning.observations.size());
            EXPECTS(hypothesis.value || hypothesis.network);
            const auto at = std::find(readings.begin(), readings.end(), hypothesis.observation);
            if (at == readings.end()) {
                continue;
            }
            const Without& without = withouts[static_cast<std::size_t>(at - readings.begin())];
            const double expected = hypothesis.network ? 0 : expectedScore(without, *hypothesis.value);
            if (expected <= kTriedScore) {
                candidates.emplace_back(expected, one);
            }
        }
        std::stable_sort(candidates.begin(), candidates.end());
        std::vector<Explanation> out;
        std::size_t values = 0;
        for (const auto& [expected, one] : candidates) {
            values += hypotheses[one].network && !m_isLarge ? 0U : 1U;
            if (values > (m_isLarge ? kMostTriedInLarge : kMostTried) || options.stop.stop_requested()) {
                break;
            }
            Explanation explanation = tried(hypotheses[one], readings, options);
            explanation.hypothesis = one;
            if (explanation.score < kExplainedScore) {
                out.push_back(explanation);
            }
        }
        std::stable_sort(out.begin(), out.end(), [](const Explanation& a, const Explanation& b) {
            return a.chiSquareScore < b.chiSquareScore;
        });
        return out;
    }

    /// How the place reads under it; whose number is not set.
    Explanation tried(const Hypothesis& hypothesis, const std::vector<std::size_t>& readings,
                      const LearnOptions& options) const {
        Learning learning = m_learning;
        Observation& observation = learning.observations[hypothesis.observation];
        if (hypothesis.value) {
            observation.value = *hypothesis.value;
        }
        if (hypothesis.network) {
            learning.cases[observation.caseIndex] = *hypothesis.network;
        }
        LearnOptions warm = options;
        warm.lnFactorStart = m_start;
        auto result = learn(learning, warm);
        Explanation out{0, kAccusingScore * 2, 0};
        if (!result.learned) {
            return out;
        }
        out.score = 0;
        out.chiSquareScore = result.learned->misfit.chiSquareScore;
        for (const std::size_t reading : readings) {
            out.score = std::max(out.score, magnitude(result.learned->readings[reading]));
        }
        return out;
    }

    const Learning& m_learning;
    const LearnOptions& m_options;
    const HypothesesOf& m_hypothesesOf;
    double m_accusing;
    bool m_isLarge;
    std::vector<double> m_start;
};

}  // namespace

GrossErrorResult findGrossError(const Learning& learning, const LearnOptions& options,
                                const HypothesesOf& hypothesesOf) {
    return Search(learning, options, hypothesesOf).run();
}

}  // namespace ww::estimation
