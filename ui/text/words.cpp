#include "ui/text/words.h"

#include <QCoreApplication>

namespace ww::ui::text {
namespace {

QString tr(const char* word) {
    return QCoreApplication::translate("Word", word);
}

}  // namespace

QString sentence(const base::Fault& fault) {
    const std::string source(fault.form->text);
    // Arguments go in after translation, so that a translator may put them in another order.
    const QString translated = QCoreApplication::translate("Message", source.c_str());
    QString filled = QString::fromStdString(base::filledIn(translated.toStdString(), fault.arguments));
    if (!filled.isEmpty()) {
        filled[0] = filled[0].toUpper();
        if (!filled.endsWith('.') && !filled.endsWith('?')) {
            filled += '.';
        }
    }
    return filled;
}

QString text(const base::Fault& fault) {
    return fault.subject.empty() ? sentence(fault)
                                 : QString::fromStdString(fault.subject) + ": " + sentence(fault);
}

QString word(balancing::State state) {
    switch (state) {
        case balancing::State::NotRead:
            return tr("Not read");
        case balancing::State::Short:
            return tr("Short");
        case balancing::State::Over:
            return tr("Over");
        case balancing::State::OnShare:
            return tr("On share");
        case balancing::State::Drifted:
            return tr("Drifted");
        case balancing::State::AtStop:
            return tr("At stop");
        case balancing::State::Doubtful:
            break;
    }
    return tr("Doubtful");
}

QString word(balancing::AimWord word) {
    switch (word) {
        case balancing::AimWord::Open:
            return tr("OPEN");
        case balancing::AimWord::Close:
            return tr("CLOSE");
        case balancing::AimWord::Hold:
            return tr("HOLD");
        case balancing::AimWord::ReadAgain:
            return tr("READ AGAIN");
        case balancing::AimWord::AtStop:
            break;
    }
    return tr("At stop");
}

QString word(balancing::Verdict verdict) {
    switch (verdict) {
        case balancing::Verdict::Accepted:
            return tr("Accepted");
        case balancing::Verdict::NotAccepted:
            return tr("Not accepted");
        case balancing::Verdict::Undecidable:
            break;
    }
    return tr("Undecidable");
}

QString word(project::RoundKind kind) {
    switch (kind) {
        case project::RoundKind::Survey:
            return tr("Survey");
        case project::RoundKind::Adjusting:
            return tr("Adjusting");
        case project::RoundKind::Final:
            return tr("Final");
        case project::RoundKind::Witness:
            break;
    }
    return tr("Witness");
}

QString word(project::RoundState state) {
    switch (state) {
        case project::RoundState::Open:
            return tr("open");
        case project::RoundState::Closed:
            return tr("closed");
        case project::RoundState::Sent:
            return tr("sent");
        case project::RoundState::Accepted:
            return tr("accepted");
        case project::RoundState::SentBack:
            break;
    }
    return tr("sent back");
}

QString word(project::BranchKind kind) {
    switch (kind) {
        case project::BranchKind::Manual:
            return tr("Manual valve");
        case project::BranchKind::Orifice:
            return tr("Orifice");
        case project::BranchKind::Limiter:
            return tr("Flow limiter");
        case project::BranchKind::Picv:
            return tr("Pressure-independent");
        case project::BranchKind::None:
            break;
    }
    return tr("No valve");
}

QString word(project::UnitSystem units) {
    return units == project::UnitSystem::US ? tr("US") : tr("SI");
}

QString word(project::Scale scale) {
    switch (scale) {
        case project::Scale::Turns:
            return tr("turns");
        case project::Scale::Degrees:
            return tr("degrees");
        case project::Scale::Percent:
            break;
    }
    return tr("percent");
}

QString word(fluid::FluidKind fluid) {
    switch (fluid) {
        case fluid::FluidKind::Water:
            return tr("Water");
        case fluid::FluidKind::EthyleneGlycol:
            return tr("Ethylene glycol");
        case fluid::FluidKind::PropyleneGlycol:
            break;
    }
    return tr("Propylene glycol");
}

}  // namespace ww::ui::text
