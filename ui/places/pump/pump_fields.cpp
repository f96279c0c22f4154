#include "ui/places/pump/pump_fields.h"

namespace ww::ui {

namespace {

using project::Pump;

constexpr base::MessageForm kPumpTagTaken{"pump_tag_taken",
                                          "\"{1}\" is empty or the tag of another pump; type another tag"};

RecordField<Pump> tagField() {
    RecordField<Pump> field = fields::words(base::term("Tag"), &Pump::tag);
    field.take = [](const project::Project& project, Pump& record,
                    const QString& typed) -> std::optional<base::Fault> {
        const std::string tag = typed.toStdString();
        for (const Pump& other : project.pumps()) {
            if (tag.empty() || (other.id != record.id && other.tag == tag)) {
                return base::Fault{&kPumpTagTaken, {}, {tag}};
            }
        }
        record.tag = tag;
        return {};
    };
    return field;
}

}  // namespace

std::vector<RecordField<Pump>> pumpFields() {
    using fields::measured;
    using quantity::Unit;
    const FieldSign positive = FieldSign::Positive;
    return {
        tagField(),
        fields::yesOrNo(base::term("Runs"), &Pump::isRunning),
        fields::choice(base::term("With other pumps"), &Pump::arrangement),
        measured(base::term("Rated speed"), &Pump::speed, Unit::RevolutionPerMinute, positive),
        measured(base::term("Impeller"), &Pump::impeller, fields::boreUnit, positive),
        measured(base::term("Least impeller"), &Pump::impellerMinimum, fields::boreUnit, positive),
        measured(base::term("Least speed, of rated"), &Pump::minimumSpeed, Unit::Percent,
                 FieldSign::NotNegative),
        fields::yesOrNo(base::term("Has a drive"), &Pump::hasDrive),
        measured(base::term("Motor power"), &Pump::motorPower, fields::powerUnit, positive),
        fields::efficiency(base::term("Motor efficiency"), &Pump::motorEfficiency),
        measured(base::term("Plate volts"), &Pump::volts, Unit::Volt, positive),
        measured(base::term("Plate amps"), &Pump::amps, Unit::Ampere, positive),
        measured(base::term("Plate power factor"), &Pump::powerFactor, Unit::One, positive),
        measured(base::term("No-load amps"), &Pump::noLoadAmps, Unit::Ampere, FieldSign::NotNegative),
        fields::number(base::term("Service factor"), &Pump::serviceFactor, positive),
        measured(base::term("Motor speed, plate"), &Pump::plateSpeed, Unit::RevolutionPerMinute, positive),
        measured(base::term("Synchronous speed"), &Pump::synchronousSpeed, Unit::RevolutionPerMinute,
                 positive),
        measured(base::term("Suction bore"), &Pump::suctionDiameter, fields::boreUnit, positive),
        measured(base::term("Discharge bore"), &Pump::dischargeDiameter, fields::boreUnit, positive),
        measured(base::term("Suction gauge over shaft"), &Pump::suctionGaugeHeight, fields::lengthUnit),
        measured(base::term("Discharge gauge over shaft"), &Pump::dischargeGaugeHeight, fields::lengthUnit),
        fields::words(base::term("Discharge valve, tag"), &Pump::throttleTag),
        fields::yesOrNo(base::term("Positive displacement"), &Pump::isPositiveDisplacement),
        fields::yesOrNo(base::term("Alone guards a boiler or chiller"), &Pump::guardsSource),
    };
}

}  // namespace ww::ui
