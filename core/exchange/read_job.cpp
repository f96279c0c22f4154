// job.csv: the facts of the job, one a row.
#include <array>

#include "core/exchange/read_cells.h"
#include "core/project/names.h"
#include "core/project/units.h"

namespace ww::exchange {

namespace {

inline constexpr base::MessageForm kJobKeyUnknown{
    "job_key_unknown", "the key \"{1}\" is not known; did you mean \"{2}\"? Known are: {3}"};
inline constexpr base::MessageForm kJobKeyRepeated{"job_key_repeated",
                                                   "the key \"{1}\" stands twice; keep one row for it"};
inline constexpr base::MessageForm kJobNameMissing{"job_row_name_missing",
                                                   "the job has no name; add a row with the key \"name\""};
inline constexpr base::MessageForm kJobToleranceOrder{
    "job_tolerance_order", "the lower limit {1} % is not below the upper limit {2} %; correct one of them"};
inline constexpr base::MessageForm kJobOutside{"job_outside", "{1} is outside {2} to {3}; correct it"};

struct Key {
    std::string_view name;
    std::optional<Dimension> dimension;
    std::string_view defaultUnit;
};
constexpr std::array kKeys{Key{"name", {}, ""},
                           Key{"site", {}, ""},
                           Key{"client", {}, ""},
                           Key{"units", {}, ""},
                           Key{"fluid", {}, ""},
                           Key{"concentration", Dimension::Fraction, "%"},
                           Key{"temperature", Dimension::Temperature, ""},
                           Key{"tolerance_low", Dimension::Fraction, "%"},
                           Key{"tolerance_high", Dimension::Fraction, "%"},
                           Key{"matching_band", Dimension::Fraction, "%"},
                           Key{"power_price", {}, "1/kWh"},
                           Key{"currency", {}, ""},
                           Key{"hours", {}, "h/yr"},
                           Key{"practice", {}, ""},
                           Key{"altitude", Dimension::Length, ""},
                           Key{"fill_pressure", Dimension::Pressure, ""},
                           Key{"reading_age_limit", {}, "min"},
                           Key{"code_form", {}, ""},
                           Key{"code_edition", {}, ""},
                           Key{"code_clause", {}, ""},
                           Key{"code_exception", {}, ""}};

template <class Q>
Measured<Q> typed(const char* digits, Unit unit) {
    return quantity::measured<Q>(*base::Decimal::parse(digits), unit);
}

class JobReader {
  public:
    explicit JobReader(ImportContext& context)
        : m_context(context),
          m_table(context.source, "job.csv", {{"key", {}, true}, {"value", {}, true}}, true, context.faults) {
    }

    void run() {
        project::Job& job = m_context.job;
        job.id = m_context.ids.next();
        job.concentration = typed<quantity::Ratio>("0", Unit::Percent);
        job.temperature = typed<quantity::Temperature>("20", Unit::Celsius);
        job.toleranceLow = typed<quantity::Ratio>("-10", Unit::Percent);
        job.toleranceHigh = typed<quantity::Ratio>("10", Unit::Percent);
        job.matchingBand = typed<quantity::Ratio>("5", Unit::Percent);
        while (m_table.next()) {
            takeRow();
        }
        if (m_table.isUsable() && job.name.empty()) {
            m_table.faultAt(1, "key", {&kJobNameMissing, "", {}});
        }
        checkWhole();
    }

  private:
    void takeRow() {
        const std::string written = m_table.requiredText("key");
        if (written.empty()) {
            return;
        }
        const std::size_t bracket = written.find('[');
        std::string name = folded(written.substr(0, bracket));
        while (!name.empty() && name.back() == ' ') {
            name.pop_back();
        }
        std::string unit;
        if (bracket != std::string::npos && written.back() == ']') {
            unit = written.substr(bracket + 1, written.size() - bracket - 2);
        }
        const Key* key = nullptr;
        std::vector<std::string> known;
        std::string all;
        for (const Key& candidate : kKeys) {
            known.emplace_back(candidate.name);
            all += (all.empty() ? "" : ", ") + known.back();
            key = candidate.name == name ? &candidate : key;
        }
        if (key == nullptr) {
            m_table.fault("key", kJobKeyUnknown, {name, nearest(name, known), all});
            return;
        }
        if (!m_rows.try_emplace(name, m_table.row()).second) {
            m_table.fault("key", kJobKeyRepeated, {name});
            return;
        }
        takeValue(*key, unit);
    }

    void takeValue(const Key& key, const std::string& unit) {
        project::Job& job = m_context.job;
        if (key.name == "name") {
            job.name = m_table.requiredText("value");
        } else if (key.name == "site") {
            job.site = m_table.text("value");
        } else if (key.name == "client") {
            job.client = m_table.text("value");
        } else if (key.name == "currency") {
            job.currency = m_table.text("value");
        } else if (key.name == "units") {
            takeName(job.units);
        } else if (key.name == "fluid") {
            takeName(job.fluid);
        } else if (key.name == "power_price") {
            job.powerPrice = m_table.decimal("value", Sign::NotNegative);
        } else if (key.name == "hours") {
            job.hoursPerYear = m_table.decimal("value", Sign::NotNegative);
            if (job.hoursPerYear && job.hoursPerYear->value() > 8784) {
                m_table.fault("value", kJobOutside, {job.hoursPerYear->text(), "0", "8784 hours a year"});
            }
        } else if (!takeGained(key, unit)) {
            takeMeasured(key, unit);
        }
    }

    /// One of the keys that columns() names; false where the key is none of them.
    bool takeGained(const Key& key, const std::string& unit) {
        KeyCell io{*this, key, unit};
        columns(io, m_context.job);
        return io.isTaken;
    }
    struct KeyCell {
        JobReader& reader;
        const Key& key;
        const std::string& unit;
        bool isTaken = false;

        bool isMine(const char* name) {
            isTaken = isTaken || key.name == name;
            return key.name == name;
        }
        void cell(const char* name, std::string& value) {
            if (isMine(name)) {
                value = reader.m_table.text("value");
            }
        }
        void cell(const char* name, std::optional<base::Decimal>& value) {
            if (isMine(name)) {
                value = reader.m_table.decimal("value", Sign::NotNegative);
            }
        }
        void cell(const char* name, project::CodeForm& value) {
            if (isMine(name)) {
                reader.takeName(value);
            }
        }
        template <class Q>
        void cell(const char* name, std::optional<Measured<Q>>& value, Sign sign) {
            const auto known = isMine(name) ? reader.unitOf(key, unit) : std::nullopt;
            const auto digits = known ? reader.m_table.decimal("value", sign) : std::nullopt;
            if (!digits) {
                return;
            }
            if constexpr (std::same_as<Q, quantity::GaugePressure>) {
                // A head is resolved again when the job takes its fluid.
                value = quantity::measuredGauge(*digits, *known, fluid::Fluid().density());
            } else {
                value = quantity::measured<Q>(*digits, *known);
            }
        }
    };

    template <class Enumeration>
    void takeName(Enumeration& out) {
        const std::string written = m_table.text("value");
        if (const auto value = project::fromName<Enumeration>(written)) {
            out = *value;
        } else if (written.empty()) {
            m_table.fault("value", kCellMissing);
        } else {
            m_table.fault("value", kCellNotOneOf, {written, project::namesOf<Enumeration>()});
        }
    }

    /// The unit of a key; nothing, with a fault, where it is none of its dimension.
    std::optional<Unit> unitOf(const Key& key, const std::string& unitText) {
        const auto unit = unitFor(unitText.empty() ? key.defaultUnit : unitText, *key.dimension, key.name);
        if (!unit) {
            const std::string known = *key.dimension == Dimension::Pressure
                                          ? quantity::pressureSymbols()
                                          : quantity::symbolsOf(*key.dimension);
            if (unitText.empty()) {
                m_table.fault("key", kColumnUnitMissing, {std::string(key.name), known});
            } else {
                m_table.fault("key", kColumnUnitUnknown, {unitText, std::string(key.name), known});
            }
        }
        return unit;
    }

    void takeMeasured(const Key& key, const std::string& unitText) {
        const auto unit = unitOf(key, unitText);
        if (!unit) {
            return;
        }
        const auto digits = m_table.decimal("value", Sign::Any);
        if (!digits) {
            return;
        }
        project::Job& job = m_context.job;
        if (key.name == "temperature") {
            job.temperature = quantity::measured<quantity::Temperature>(*digits, *unit);
            return;
        }
        const auto ratio = quantity::measured<quantity::Ratio>(*digits, *unit);
        const bool isBand = key.name == "matching_band";
        if ((isBand && (ratio.value.si() <= 0 || ratio.value.si() > 0.5)) || std::abs(ratio.value.si()) > 1) {
            m_table.fault("value", kJobOutside,
                          {ratio.text(), isBand ? "above 0" : "-100", isBand ? "50 %" : "100 %"});
            return;
        }
        if (key.name == "concentration") {
            job.concentration = ratio;
        } else if (key.name == "tolerance_low") {
            job.toleranceLow = ratio;
        } else if (key.name == "tolerance_high") {
            job.toleranceHigh = ratio;
        } else {
            job.matchingBand = ratio;
        }
    }

    int rowOf(const char* key) const {
        const auto found = m_rows.find(key);
        return found == m_rows.end() ? 0 : found->second;
    }

    void checkWhole() {
        const project::Job& job = m_context.job;
        if (job.toleranceLow.value >= job.toleranceHigh.value) {
            m_table.faultAt(
                rowOf("tolerance_low"), "value",
                {&kJobToleranceOrder, "", {job.toleranceLow.digits.text(), job.toleranceHigh.digits.text()}});
        }
        const auto fluid = fluid::Fluid::make(job.fluid, job.concentration.value, job.temperature.value,
                                              project::fluidUnits(job));
        if (!fluid) {
            const bool isConcentration = fluid.fault().is(fluid::kFluidConcentrationOutside);
            m_table.faultAt(rowOf(isConcentration ? "concentration" : "temperature"), "value", fluid.fault());
            m_context.density = fluid::Fluid().density();
            return;
        }
        m_context.density = fluid->density();
    }

    ImportContext& m_context;
    TableReader m_table;
    std::map<std::string, int> m_rows;
};

}  // namespace

void readJob(ImportContext& context) {
    JobReader(context).run();
}

}  // namespace ww::exchange
