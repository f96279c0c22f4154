#include "ui/places/pump/pump_fields.h"

#include <QCoreApplication>

namespace ww::ui {

namespace {

using project::Pump;

constexpr base::MessageForm kPumpTagTaken{"pump_tag_taken",
                                          "\"{1}\" is empty or the tag of another pump; type another tag"};

QString tr(const char* text) {
    return QCoreApplication::translate("PumpFields", text);
}

RecordField<Pump> tagField() {
    RecordField<Pump> field = fields::words(tr("Tag"), &Pump::tag);
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
        fields::yesOrNo(tr("Runs"), &Pump::isRunning),
        fields::choice(tr("Several: joint"), &Pump::arrangement),
        measured(tr("Rated speed"), &Pump::speed, Unit::RevolutionPerMinute, positive),
        measured(tr("Impeller"), &Pump::impeller, fields::boreUnit, positive),
        measured(tr("Least impeller"), &Pump::impellerMinimum, fields::boreUnit, positive),
        measured(tr("Least speed, of rated"), &Pump::minimumSpeed, Unit::Percent, FieldSign::NotNegative),
        fields::yesOrNo(tr("Has a drive"), &Pump::hasDrive),
        measured(tr("Motor power"), &Pump::motorPower, fields::powerUnit, positive),
        measured(tr("Motor efficiency"), &Pump::motorEfficiency, Unit::Percent, positive),
        measured(tr("Plate volts"), &Pump::volts, Unit::Volt, positive),
        measured(tr("Plate amps"), &Pump::amps, Unit::Ampere, positive),
        measured(tr("Plate power factor"), &Pump::powerFactor, Unit::One, positive),
        measured(tr("No-load amps"), &Pump::noLoadAmps, Unit::Ampere, FieldSign::NotNegative),
        fields::number(tr("Service factor"), &Pump::serviceFactor, positive),
        measured(tr("Motor speed, plate"), &Pump::plateSpeed, Unit::RevolutionPerMinute, positive),
        measured(tr("Synchronous speed"), &Pump::synchronousSpeed, Unit::RevolutionPerMinute, positive),
        measured(tr("Suction bore"), &Pump::suctionDiameter, fields::boreUnit, positive),
        measured(tr("Discharge bore"), &Pump::dischargeDiameter, fields::boreUnit, positive),
        measured(tr("Suction gauge over shaft"), &Pump::suctionGaugeHeight, fields::lengthUnit),
        measured(tr("Discharge gauge over shaft"), &Pump::dischargeGaugeHeight, fields::lengthUnit),
        fields::words(tr("Discharge valve, tag"), &Pump::throttleTag),
        fields::yesOrNo(tr("Positive displacement"), &Pump::isPositiveDisplacement),
        fields::yesOrNo(tr("Alone guards a boiler or chiller"), &Pump::guardsSource),
    };
}

}  // namespace ww::ui
