#include "ui/text/words.h"

#include <QCoreApplication>

namespace ww::ui::text {
namespace {

/// The texts of this file.
struct WordText {
    Q_DECLARE_TR_FUNCTIONS(Word)
};

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
            return WordText::tr("Not read");
        case balancing::State::Short:
            return WordText::tr("Short");
        case balancing::State::Over:
            return WordText::tr("Over");
        case balancing::State::OnShare:
            return WordText::tr("On share");
        case balancing::State::Drifted:
            return WordText::tr("Drifted");
        case balancing::State::AtStop:
            return WordText::tr("At stop");
        case balancing::State::Doubtful:
            break;
    }
    return WordText::tr("Doubtful");
}

QString word(balancing::State state, const project::Branch& branch) {
    const bool isSelfActing =
        branch.kind == project::BranchKind::Limiter || branch.kind == project::BranchKind::Picv;
    if (isSelfActing && state == balancing::State::OnShare) {
        return WordText::tr("In range");
    }
    return word(state);
}

QString word(balancing::AimWord word) {
    switch (word) {
        case balancing::AimWord::Open:
            return WordText::tr("OPEN");
        case balancing::AimWord::Close:
            return WordText::tr("CLOSE");
        case balancing::AimWord::Hold:
            return WordText::tr("HOLD");
        case balancing::AimWord::ReadAgain:
            return WordText::tr("READ AGAIN");
        case balancing::AimWord::AtStop:
            break;
    }
    return WordText::tr("At stop");
}

QString word(balancing::Verdict verdict) {
    switch (verdict) {
        case balancing::Verdict::Accepted:
            return WordText::tr("Accepted");
        case balancing::Verdict::NotAccepted:
            return WordText::tr("Not accepted");
        case balancing::Verdict::Undecidable:
            break;
    }
    return WordText::tr("Undecidable");
}

QString word(project::RoundKind kind) {
    switch (kind) {
        case project::RoundKind::Survey:
            return WordText::tr("Survey");
        case project::RoundKind::Adjusting:
            return WordText::tr("Adjusting");
        case project::RoundKind::Final:
            return WordText::tr("Final");
        case project::RoundKind::Witness:
            break;
    }
    return WordText::tr("Witness");
}

QString word(project::RoundState state) {
    switch (state) {
        case project::RoundState::Open:
            return WordText::tr("open");
        case project::RoundState::Closed:
            return WordText::tr("closed");
        case project::RoundState::Sent:
            return WordText::tr("sent");
        case project::RoundState::Accepted:
            return WordText::tr("accepted");
        case project::RoundState::SentBack:
            break;
    }
    return WordText::tr("sent back");
}

QString word(project::BranchKind kind) {
    switch (kind) {
        case project::BranchKind::Manual:
            return WordText::tr("Manual valve");
        case project::BranchKind::Orifice:
            return WordText::tr("Orifice");
        case project::BranchKind::Limiter:
            return WordText::tr("Flow limiter");
        case project::BranchKind::Picv:
            return WordText::tr("Pressure-independent");
        case project::BranchKind::None:
            break;
    }
    return WordText::tr("No valve");
}

QString word(project::UnitSystem units) {
    return units == project::UnitSystem::US ? WordText::tr("US") : WordText::tr("SI");
}

QString word(project::Scale scale) {
    switch (scale) {
        case project::Scale::Turns:
            return WordText::tr("turns");
        case project::Scale::Degrees:
            return WordText::tr("degrees");
        case project::Scale::Percent:
            break;
    }
    return WordText::tr("percent");
}

QString word(fluid::FluidKind fluid) {
    switch (fluid) {
        case fluid::FluidKind::Water:
            return WordText::tr("Water");
        case fluid::FluidKind::EthyleneGlycol:
            return WordText::tr("Ethylene glycol");
        case fluid::FluidKind::PropyleneGlycol:
            break;
    }
    return WordText::tr("Propylene glycol");
}

}  // namespace ww::ui::text
