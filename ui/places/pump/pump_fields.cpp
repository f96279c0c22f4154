#include "ui/places/pump/pump_fields.h"

#include <QCoreApplication>

namespace ww::ui {

namespace {

using project::Pump;

constexpr base::MessageForm kPumpTagTaken{"pump_tag_taken",
                                          "\"{1}\" is empty or the tag of another pump; type another tag"};

/// The texts of this file.
struct PumpFieldsText {
    Q_DECLARE_TR_FUNCTIONS(PumpFields)
};

RecordField<Pump> tagField() {
    RecordField<Pump> field = fields::words(PumpFieldsText::tr("Tag"), &Pump::tag);
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
        fields::yesOrNo(PumpFieldsText::tr("Runs"), &Pump::isRunning),
        fields::choice(PumpFieldsText::tr("Several: joint"), &Pump::arrangement),
        measured(PumpFieldsText::tr("Rated speed"), &Pump::speed, Unit::RevolutionPerMinute, positive),
        measured(PumpFieldsText::tr("Impeller"), &Pump::impeller, fields::boreUnit, positive),
        measured(PumpFieldsText::tr("Least impeller"), &Pump::impellerMinimum, fields::boreUnit, positive),
        measured(PumpFieldsText::tr("Least speed, of rated"), &Pump::minimumSpeed, Unit::Percent,
                 FieldSign::NotNegative),
        fields::yesOrNo(PumpFieldsText::tr("Has a drive"), &Pump::hasDrive),
        measured(PumpFieldsText::tr("Motor power"), &Pump::motorPower, fields::powerUnit, positive),
        measured(PumpFieldsText::tr("Motor efficiency"), &Pump::motorEfficiency, Unit::Percent, positive),
        measured(PumpFieldsText::tr("Plate volts"), &Pump::volts, Unit::Volt, positive),
        measured(PumpFieldsText::tr("Plate amps"), &Pump::amps, Unit::Ampere, positive),
        measured(PumpFieldsText::tr("Plate power factor"), &Pump::powerFactor, Unit::One, positive),
        measured(PumpFieldsText::tr("No-load amps"), &Pump::noLoadAmps, Unit::Ampere, FieldSign::NotNegative),
        fields::number(PumpFieldsText::tr("Service factor"), &Pump::serviceFactor, positive),
        measured(PumpFieldsText::tr("Motor speed, plate"), &Pump::plateSpeed, Unit::RevolutionPerMinute,
                 positive),
        measured(PumpFieldsText::tr("Synchronous speed"), &Pump::synchronousSpeed, Unit::RevolutionPerMinute,
                 positive),
        measured(PumpFieldsText::tr("Suction bore"), &Pump::suctionDiameter, fields::boreUnit, positive),
        measured(PumpFieldsText::tr("Discharge bore"), &Pump::dischargeDiameter, fields::boreUnit, positive),
        measured(PumpFieldsText::tr("Suction gauge over shaft"), &Pump::suctionGaugeHeight,
                 fields::lengthUnit),
        measured(PumpFieldsText::tr("Discharge gauge over shaft"), &Pump::dischargeGaugeHeight,
                 fields::lengthUnit),
        fields::words(PumpFieldsText::tr("Discharge valve, tag"), &Pump::throttleTag),
        fields::yesOrNo(PumpFieldsText::tr("Positive displacement"), &Pump::isPositiveDisplacement),
        fields::yesOrNo(PumpFieldsText::tr("Alone guards a boiler or chiller"), &Pump::guardsSource),
    };
}

}  // namespace ww::ui
