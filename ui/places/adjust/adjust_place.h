// The place Adjust: one valve, the dp to aim at, what was read, and the word that says what the hand does
// next. Not for rules of the trade (core/balancing).
#pragma once

#include <QBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QStackedWidget>
#include <QTableView>
#include <QTimer>
#include <QWidget>
#include <map>

#include "ui/places/adjust/adjust_edit.h"
#include "ui/places/adjust/advice_panel.h"
#include "ui/places/adjust/aim_strip_model.h"
#include "ui/places/adjust/kept_order.h"
#include "ui/places/adjust/strip_delegate.h"
#include "ui/places/adjust/valve_in_hand.h"
#include "ui/places/reading_notice.h"
#include "ui/practice/practice_desk.h"
#include "ui/widgets/big_figure.h"
#include "ui/widgets/key_hints.h"
#include "ui/widgets/ladder.h"
#include "ui/widgets/shown_refresh.h"
#include "ui/widgets/try_field.h"
#include "ui/widgets/whole_label.h"
#include "ui/widgets/word_sign.h"

namespace ww::ui {

class AdjustPlace : public QWidget {
    Q_OBJECT

  public:
    AdjustPlace(WorkbookBridge& bridge, LoopAdvisor& advisor, QWidget* parent = nullptr);

    void setTokens(const theme::Tokens& tokens);
    void setMetrics(const theme::Metrics& metrics);
    /// Puts the keys where the next reading is typed. On the first coming after a round was closed, the first
    /// valve of the working order is in hand, unless somebody chose another since.
    void takeFocus();
    /// The valve that is selected was chosen on purpose.
    void keepSelected() { m_selectedAtClosing.reset(); }
    /// Stores what the practice building's meter shows where a dp is asked for.
    void takeMeter(PracticeDesk& desk);
    /// Takes a branch in hand.
    void showBranch(const base::Id& branch);
    const ValveInHand& valve() const { return m_valve; }
    AdvicePanel* advice() const { return m_advice; }
    TryField* field() const { return m_field; }
    /// Takes what stands in the fields as Enter does; the field that was refused, null where none was.
    QWidget* storeFields();
    /// Whether the valve in hand is on share where it stands, and the advice names another setting: that one
    /// is not taken.
    bool holdsAgainstAdvice() const;
    /// Says that a dp is typed at the valve in hand and not stored, where one is.
    void tellTyped();
    /// The keys that act now, while this control has them.
    KeyHints hint(const QWidget* inHand) const;
    /// Where the working order outlives this place.
    void keepOrderBy(OrderKeeping keeping) { m_order.setKeeping(std::move(keeping)); }
    /// Whether the working order is another than the advised one.
    bool isOrderChanged() const { return m_order.isChanged(); }
    /// Whether a try can be stored: a valve with an aim is in hand, and no round of one state of the loop is
    /// open.
    bool takesReadings() const;

    /// Shrinks with the window: what needs more room than there is becomes smaller or goes.
    QSize minimumSizeHint() const override { return {kLeastWidth, QWidget::minimumSizeHint().height()}; }

  public slots:
    void findValve();
    /// Leaves the valve where it stands with what is typed or was last read, and takes the next in hand.
    void holdAndNext();
    /// The next dp typed is one of the reference, or one across the shut valve, or a second one at this try.
    void readReference();
    void readShutValve();
    void readAgain();
    /// The handle goes so many readable steps on, no further than its stops.
    /// Stores nothing; while a dp is typed the handle stays, as that was read where it stands.
    void stepSetting(int steps);
    /// Takes the fix offered for the last try.
    void takeFix();
    void toggleDoubtful();
    /// Puts the keys into the table of advised settings.
    void goToAdvice();
    /// Takes the advised setting of the valve in hand as where the handle is to stand; stores nothing. Says
    /// why it does not where the valve holds.
    void takeAdvice();
    /// Takes a valve so many places later in the working order, below zero earlier: the one of the row in
    /// hand of the advice, else the valve in hand.
    void moveInOrder(int places);
    /// Goes back to the advised working order.
    void restoreOrder();

  signals:
    void hintChanged();

  protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    static constexpr int kLeastWidth = 320;
    static constexpr int kSideMargin = 12;
    static constexpr int kHeadGap = 16;
    static constexpr int kBesideLadder = 16;
    static constexpr int kFigureStretch = 2;
    static constexpr int kWordStretch = 3;
    static constexpr int kBeforeHandle = 8;
    /// What stands in the fields of a valve and is not stored.
    struct Typed {
        QString dp;
        QString setting;
        TypedDp what = TypedDp::Try;
    };
    bool isValveShown() const;
    /// Whether the next dp typed is none of the valve as it stands: of the reference, or of the shut valve.
    bool isReadingApart() const { return m_what == TypedDp::Reference || m_what == TypedDp::ShutValve; }
    KeyHints controlHint(const QWidget* inHand) const;
    KeyHints findHint() const;
    KeyHints commandHint() const;
    /// Whether the advised setting of the valve in hand is another than that of the handle, and may be taken.
    bool canTakeAdvice() const;
    /// Gives every part its size in the room there is: what the hand needs stays in sight. `isAnew`: the room
    /// or the letters changed, not the words alone.
    void fit(bool isAnew = true);
    void fitEntry();
    /// The height from the top to the end of the fields, px, in the usual order of the parts.
    int heightToEntry(int stripRows, bool isSmall) const;
    /// The same where the fields come right after the figures.
    int heightToFields(bool isSmall) const;
    int headHeight() const;
    int figuresHeight(bool isSmall) const;
    /// Whether the word has no room beside the figures.
    bool isWordBelow() const;
    /// Whether no third figure has room beside two others.
    bool isReadingBelow() const;
    void placeFigures();
    void fitNeighbors();
    /// Puts the field of the setting beside that of the dp, whose label takes `shortest` px at least, or
    /// below.
    void placeHandle(int shortest);
    int fieldsHeight() const;
    /// With the gap before it; 0 while it is hidden.
    int ladderWidth() const;
    /// The order of the parts: where the place is too low for the usual one the fields come right after the
    /// figures, and what explains them below, the words on the share among it.
    void putInOrder(bool isLow);
    void buildLayout();
    QWidget* buildFigures();
    QWidget* buildEntry();
    void connectAll();
    void refresh();
    void refreshWhenShown();
    void showValve();
    void showHead();
    void showFigures();
    void showLadder();
    void showEntry();
    /// While a dp apart from the valve as it stands is asked for, all that is large says so.
    void showApart();
    void markApart(QWidget& widget) const;
    void speak();
    bool store(const QString& text);
    bool moveSetting(const QString& text);
    bool mayMoveHandle();
    void watchRound(const project::ChangeSet& changes);
    void startAtFirst();
    void noteWhereTheRoundEnded();
    base::Fault allHeld() const;
    /// Valves that were left as they had been read, and at which nothing was read since. The way does not come
    /// back to them.
    std::vector<base::Id> leftAsRead() const;
    void leaveAsRead(const base::Id& branch);
    /// Whether it is held or was left as read.
    bool isDone(const base::Id& branch) const;
    bool holds(const ValveInHand& valve) const;
    /// Whether its word says otherwise than its advised setting, which is not proposed then.
    bool isWordAgainstAdvice(const ValveInHand& valve) const;
    /// The valve whose advised setting is proposed: that in hand, else the next of the working order that is
    /// to be turned. Nothing where taking the setting would be refused.
    std::optional<base::Id> offered() const;
    /// The first valve that the proof of the index circuit waits for and that is not held yet, `but` left
    /// out.
    std::optional<std::size_t> indexStepToTurn(const LoopPicture& picture, std::optional<base::Id> but) const;
    void findOfferElsewhere();
    void expect(TypedDp what);
    void jump();
    void takePicture();
    void tick();
    void tellMoved();
    /// What is typed stays with the valve that is left, and comes back with the one that is taken.
    void exchangeTyped(const std::optional<base::Id>& taken);
    std::optional<base::Id> reference() const;
    std::optional<std::size_t> next();
    std::vector<std::size_t> workingOrder() { return m_order.order(); }
    QString whatIsMissing() const;

    WorkbookBridge& m_bridge;
    LoopAdvisor& m_advisor;
    ReadingNotice m_readingNotice{m_bridge, m_advisor};
    ValveInHand m_valve;
    KeptOrder m_order;
    std::optional<base::Id> m_openRound;
    std::optional<base::Id> m_selectedAtClosing;  ///< until the place is entered next
    TypedDp m_what = TypedDp::Try;
    std::map<base::Id, Typed> m_typed;  ///< at valves that are not in hand
    /// By valve, the reading that counted when it was left. They are asked anew in the next round.
    std::map<base::Id, std::optional<base::Id>> m_leftAsRead;
    ShownRefresh* m_shown = new ShownRefresh(this, [this] { refresh(); });
    std::optional<base::Id> m_offerElsewhere;  ///< see offered(), among the valves that are not in hand
    bool m_hasNext = false;                    ///< another valve is left to adjust
    bool m_isHolding = false;
    bool m_isFieldBlank = true;
    bool m_isPictureWaiting = false;
    theme::Tokens m_tokens;
    QTimer m_clock;

    QLabel* m_title;
    WholeLabel* m_state;
    WholeLabel* m_basis;
    QLabel* m_findLabel = nullptr;
    QLineEdit* m_find;
    QStackedWidget* m_content;
    QWidget* m_page;
    QLabel* m_empty;
    BigFigure* m_setting;
    BigFigure* m_aim;
    BigFigure* m_reading;
    WordSign* m_word;
    AimStripModel* m_stripModel;
    StripDelegate* m_stripDelegate;
    QTableView* m_strip;
    WholeLabel* m_tries;
    WholeLabel* m_proposal;
    QLabel* m_fieldLabel;
    TryField* m_field;
    QLabel* m_settingLabel;
    TryField* m_settingField;
    QPushButton* m_hold;
    WholeLabel* m_next;
    QBoxLayout* m_figuresAndWord = nullptr;
    QBoxLayout* m_figureRow = nullptr;
    QBoxLayout* m_wordRow = nullptr;  ///< the word, after the reading where that has no room above
    QWidget* m_figures = nullptr;
    QWidget* m_entryRow = nullptr;
    QBoxLayout* m_head = nullptr;
    QBoxLayout* m_pageParts = nullptr;  ///< what the aim rests on, the parts, the advice
    QBoxLayout* m_parts = nullptr;      ///< from the figures to the fields
    bool m_isLow = false;
    QBoxLayout* m_entry = nullptr;   ///< fields, and what comes next
    QBoxLayout* m_fields = nullptr;  ///< with holding, where there is room for it
    QBoxLayout* m_handle = nullptr;  ///< the field of the setting; below the other where that fills its line
    QBoxLayout* m_following = nullptr;  ///< what comes next, after holding where that has no room above
    Ladder* m_ladder;
    AdvicePanel* m_advice;
};

}  // namespace ww::ui
