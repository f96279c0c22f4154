// The places of the main window: each made when it is first wanted, and shown.
#include "ui/main_window.h"
#include "ui/mnemonics.h"
#include "ui/places/adjust/adjust_place.h"
#include "ui/places/job/job_place.h"
#include "ui/places/pump/pump_place.h"
#include "ui/places/report/report_place.h"
#include "ui/places/review/review_place.h"
#include "ui/places/system/system_place.h"
#include "ui/places/walk/walk_place.h"
#include "ui/widgets/entry_field.h"
#include "ui/widgets/entry_table.h"
#include "ui/widgets/laid_out_later.h"
#include "ui/widgets/place_area.h"
#include "ui/widgets/try_field.h"

namespace ww::ui {

void MainWindow::buildShelves() {
    m_placeNames = {tr("Job"),  tr("System"), tr("Walk"),  tr("Adjust"),
                    tr("Pump"), tr("Review"), tr("Report")};
    for (int i = 0; i < kPlaces; ++i) {
        m_stack->addWidget(new QWidget(m_stack));
        m_sideList->addPlace(i + 1, m_placeNames[i], i == Review);
        connect(m_commands->places[i], &QAction::triggered, this, [this, i] { goTo(static_cast<Place>(i)); });
    }
}

template <class Widget>
MainWindow::PlaceEntry MainWindow::entryOf(Widget* widget, std::function<KeyHints(const QWidget*)> hint) {
    const auto setLook = [widget](const Look& look) {
        if constexpr (requires { widget->setMetrics(look.metrics); }) {
            widget->setMetrics(look.metrics);
        }
        widget->setTokens(look.tokens);
    };
    return {widget, setLook, [widget] { widget->takeFocus(); }, std::move(hint)};
}

MainWindow::PlaceEntry MainWindow::newPlace(Place place, QWidget* shelf) {
    const auto usual = [this, place](const QWidget* inHand) { return usualHint(place, inHand); };
    const auto settlingPages = [this](auto* made) {
        connect(made, &std::remove_pointer_t<decltype(made)>::pageMade, this,
                [this, made] { settle(*made); });
        return made;
    };
    const auto hinting = [this](auto* made) {
        connect(made, &std::remove_pointer_t<decltype(made)>::hintChanged, this,
                &MainWindow::refreshCommands);
        return entryOf(made, [made](const QWidget* inHand) { return made->hint(inHand); });
    };
    switch (place) {
        case Job:
            return entryOf(new JobPlace(m_bridge, shelf), usual);
        case System: {
            auto* system = settlingPages(new SystemPlace(m_bridge, shelf));
            system->watch(m_advisor);
            connect(system, &SystemPlace::tablePasted, this, &MainWindow::importPasted);
            return entryOf(system, usual);
        }
        case Walk: {
            auto* walk = settlingPages(new WalkPlace(m_bridge, m_advisor, m_assessedRounds, shelf));
            connect(walk, &WalkPlace::typedChanged, this, &MainWindow::followTyped);
            connect(walk, &WalkPlace::adjustWanted, m_commands->adjustOrHold, &QAction::trigger);
            return hinting(walk);
        }
        case Adjust: {
            auto* adjust = new AdjustPlace(m_bridge, m_advisor, shelf);
            adjust->keepOrderBy({[this]() -> std::optional<OrderOfRound> {
                                     const workbook::Workbook* open = m_bridge.workbook();
                                     return open != nullptr ? m_preferences.orderIn(open->workbookId())
                                                            : std::nullopt;
                                 },
                                 [this](const OrderOfRound& order) {
                                     m_preferences.keepOrder(m_bridge.workbook()->workbookId(), order);
                                 }});
            return hinting(adjust);
        }
        case Pump:
            return entryOf(settlingPages(new PumpPlace(m_bridge, m_pumpAdvisor, m_assessedRounds, shelf)),
                           usual);
        case Review: {
            auto* review = new ReviewPlace(m_bridge, m_assessedRounds, shelf);
            connect(review, &ReviewPlace::roundShown, this, &MainWindow::refreshReviewCommands);
            connect(review, &ReviewPlace::roundChosen, this, [this] {
                if (m_isNoticeOfPlace) {
                    m_notice->clearMessage();
                }
            });
            connect(review->decision(), &DecisionPanel::peopleWanted, this, [this] {
                showPlace(Job);
                job()->showPeople();
            });
            return entryOf(review, usual);
        }
        case Report: {
            auto* report = new ReportPlace(m_bridge, shelf);
            report->setPumpAdvisor(m_pumpAdvisor);
            connectReadyList(*report->ready());
            return entryOf(report, usual);
        }
    }
    return {};
}

QWidget* MainWindow::made(Place place) {
    PlaceEntry& entry = m_places[place];
    if (entry.widget == nullptr) {
        auto* area = laidOutLater(new PlaceArea(m_stack));
        // Made where it stands: a widget that moves into another is given its look again.
        entry = newPlace(place, area->viewport());
        if (m_isDressed) {
            entry.setLook(m_look);
        }
        area->take(entry.widget);
        putOnShelf(place, area);
        settle(*entry.widget);
        arrange();
    }
    return entry.widget;
}

void MainWindow::putOnShelf(Place place, QWidget* area) {
    const int shown = m_stack->currentIndex();
    QWidget* empty = m_stack->widget(place);
    m_stack->insertWidget(place, area);
    m_stack->removeWidget(empty);
    delete empty;
    m_stack->setCurrentIndex(shown);
}

JobPlace* MainWindow::job() {
    return static_cast<JobPlace*>(made(Job));
}

SystemPlace* MainWindow::system() {
    return static_cast<SystemPlace*>(made(System));
}

WalkPlace* MainWindow::walk() {
    return static_cast<WalkPlace*>(made(Walk));
}

AdjustPlace* MainWindow::adjust() {
    return static_cast<AdjustPlace*>(made(Adjust));
}

PumpPlace* MainWindow::pump() {
    return static_cast<PumpPlace*>(made(Pump));
}

ReviewPlace* MainWindow::review() {
    return static_cast<ReviewPlace*>(made(Review));
}

ReportPlace* MainWindow::report() {
    return static_cast<ReportPlace*>(made(Report));
}

void MainWindow::settle(QWidget& place) {
    settleLetters(place, m_menuLetters);
    // What was said of a refused text goes with it.
    const auto clearsWith = [this](auto* field) {
        using Field = std::remove_pointer_t<decltype(field)>;
        connect(field, &Field::refusalGivenUp, m_notice, &NoticeLine::clearMessage, Qt::UniqueConnection);
    };
    for (EntryTable* table : place.findChildren<EntryTable*>()) {
        clearsWith(table);
    }
    for (EntryField* field : place.findChildren<EntryField*>()) {
        clearsWith(field);
    }
    for (TryField* field : place.findChildren<TryField*>()) {
        clearsWith(field);
    }
    // Enter presses the button in hand, as it does in a dialog.
    for (QPushButton* button : place.findChildren<QPushButton*>()) {
        button->setAutoDefault(true);
    }
    keepGaps();
}

void MainWindow::keepGaps() {
    keepApart(*m_stack, m_look.metrics.targetGap());
}

void MainWindow::showPlace(Place place) {
    if (place < Job || static_cast<int>(place) >= kPlaces) {
        return;
    }
    made(place);
    m_stack->setCurrentIndex(place);
    m_sideList->setCurrentRow(place);
    for (int i = 0; i < m_commands->places.size(); ++i) {
        m_commands->places[i]->setChecked(i == place);
    }
    if (m_bridge.isOpen()) {
        m_preferences.rememberPlace(m_bridge.workbook()->workbookId(), place);
    }
    arrange();
    m_places[place].takeFocus();
    refreshCommands();
}

void MainWindow::goTo(Place to) {
    QWidget* left = to != place() ? m_stack->currentWidget() : nullptr;
    if (left != nullptr && m_isNoticeOfPlace) {
        m_notice->clearMessage();
    }
    showPlace(to);
    if (left != nullptr) {
        tellLeftBehind(*left);
    }
}

MainWindow::Place MainWindow::place() const {
    return static_cast<Place>(m_stack->currentIndex());
}

}  // namespace ww::ui
