#include "tests/ui/support/layout_faults.h"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAbstractSpinBox>
#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QRegularExpression>
#include <QScrollArea>
#include <QScrollBar>
#include <QStyle>
#include <QStyleOptionComboBox>
#include <QStyleOptionFrame>
#include <QTabBar>
#include <QTableView>
#include <QTest>
#include <QTextDocument>

#include "tests/ui/support/named_widget.h"
#include "ui/delegates/branch_delegate.h"
#include "ui/delegates/fitted_text.h"
#include "ui/widgets/hinted_field.h"
#include "ui/widgets/quiet_combo.h"

namespace ww::support {
namespace {

const QAbstractScrollArea* areaOf(const QWidget& viewport) {
    const auto* area = qobject_cast<const QAbstractScrollArea*>(viewport.parentWidget());
    return area != nullptr && area->viewport() == &viewport ? area : nullptr;
}

void checkPlace(const QWidget& widget, QStringList& faults) {
    const QWidget* parent = widget.parentWidget();
    if (parent == nullptr || widget.isWindow() || isInner(widget) || parent->inherits("QAbstractItemView")) {
        return;
    }
    const QRect inside = parent->rect();
    const QRect box = widget.geometry();
    const bool isScrolled = areaOf(*parent) != nullptr;
    if (box.left() < inside.left() || box.right() > inside.right() ||
        (!isScrolled && (box.top() < inside.top() || box.bottom() > inside.bottom()))) {
        faults << QString("%1: at %2,%3 %4x%5 outside its parent of %6x%7")
                      .arg(nameOf(widget))
                      .arg(box.x())
                      .arg(box.y())
                      .arg(box.width())
                      .arg(box.height())
                      .arg(inside.width())
                      .arg(inside.height());
    }
    const QSize least = widget.minimumSizeHint();
    const bool isFree = widget.sizePolicy().horizontalPolicy() == QSizePolicy::Ignored;
    if (!qobject_cast<const QLabel*>(&widget) && !qobject_cast<const QAbstractScrollArea*>(&widget) &&
        ((!isFree && box.width() < least.width() && widget.maximumWidth() >= least.width()) ||
         (box.height() < least.height() && widget.maximumHeight() >= least.height()))) {
        faults << QString("%1: %2x%3, needs %4x%5")
                      .arg(nameOf(widget))
                      .arg(box.width())
                      .arg(box.height())
                      .arg(least.width())
                      .arg(least.height());
    }
}

void checkLabel(const QLabel& label, QStringList& faults) {
    if (label.text().isEmpty()) {
        return;
    }
    const QMargins margins = label.contentsMargins();
    const int width = label.width() - margins.left() - margins.right();
    if (label.wordWrap()) {
        if (label.heightForWidth(label.width()) > label.height() + 1) {
            faults << QString("%1: needs a height of %2, has %3 at width %4")
                          .arg(nameOf(label))
                          .arg(label.heightForWidth(label.width()))
                          .arg(label.height())
                          .arg(label.width());
        }
        QString plain = label.text();
        if (label.textFormat() == Qt::RichText) {
            QTextDocument document;
            document.setHtml(plain);
            plain = document.toPlainText();
        }
        for (const QString& word : plain.split(QRegularExpression("[ \\n\\-/]"))) {
            if (label.fontMetrics().horizontalAdvance(word) > width) {
                faults
                    << QString("%1: the word \"%2\" is cut at width %3").arg(nameOf(label), word).arg(width);
            }
        }
        return;
    }
    if (label.sizeHint().width() > label.width() + 1 || label.sizeHint().height() > label.height() + 1) {
        faults << QString("%1: needs %2x%3, has %4x%5")
                      .arg(nameOf(label))
                      .arg(label.sizeHint().width())
                      .arg(label.sizeHint().height())
                      .arg(label.width())
                      .arg(label.height());
    }
}

QStringList wordsOf(const QString& text) {
    static const QRegularExpression kBetween(QStringLiteral("\\s"));
    return text.split(kBetween, Qt::SkipEmptyParts);
}

/// Heads are wrapped: each word has the width of its column, all lines the height of the head.
void checkHeads(const QTableView& table, QStringList& faults) {
    const QHeaderView* head = table.horizontalHeader();
    if (!head->isVisible()) {
        return;
    }
    constexpr int kPadding = 6;
    for (int column = 0; column < head->count(); ++column) {
        if (head->isSectionHidden(column)) {
            continue;
        }
        const QString words = table.model()->headerData(column, Qt::Horizontal).toString();
        const int room = head->sectionSize(column) - kPadding;
        for (const QString& word : wordsOf(words)) {
            if (head->fontMetrics().horizontalAdvance(word) > room) {
                faults << QString("%1: the head \"%2\" needs %3, has %4")
                              .arg(nameOf(table), word)
                              .arg(head->fontMetrics().horizontalAdvance(word))
                              .arg(room);
            }
        }
        const int lines =
            head->fontMetrics().boundingRect(QRect(0, 0, room, 1000), Qt::TextWordWrap, words).height();
        if (lines > head->height()) {
            faults << QString("%1: the head \"%2\" needs a height of %3, has %4")
                          .arg(nameOf(table), words)
                          .arg(lines)
                          .arg(head->height());
        }
    }
}

/// Cells that are wrapped: each word has the width of its column beside margins and shapes, as the delegate
/// of that table writes it; what stands in one word breaks nowhere, also not at a hyphen.
void checkCells(const QTableView& table, QStringList& faults) {
    constexpr int kRows = 40;
    constexpr int kStyleMargins = 8;
    for (int row = 0; row < std::min(table.model()->rowCount(), kRows); ++row) {
        for (int column = 0; column < table.model()->columnCount(); ++column) {
            if (table.isColumnHidden(column) || table.isRowHidden(row)) {
                continue;
            }
            const QModelIndex cell = table.model()->index(row, column);
            const bool isOurs =
                qobject_cast<const ui::BranchDelegate*>(table.itemDelegateForIndex(cell)) != nullptr;
            const QFontMetrics metrics(ui::cellFont(cell, table.font(), isOurs ? &table : nullptr));
            const int beside = isOurs ? ui::besideWords(cell, table.font()) + 1 : kStyleMargins;
            const int room = table.columnWidth(column) - beside;
            for (const QString& word : wordsOf(cell.data().toString())) {
                if (metrics.horizontalAdvance(word) > room) {
                    faults << QString("%1: the word \"%2\" needs %3, has %4")
                                  .arg(nameOf(table), word)
                                  .arg(metrics.horizontalAdvance(word))
                                  .arg(room);
                }
            }
        }
    }
}

/// Cells that are set as their delegate does: whole in one line or two, in letters that may be narrow. A
/// person's own long text is whole where a pointer rests on it.
void checkSetCells(const QTableView& table, QStringList& faults) {
    constexpr int kRows = 40;
    constexpr int kOwnText = 40;
    for (int row = 0; row < std::min(table.model()->rowCount(), kRows); ++row) {
        for (int column = 0; column < table.model()->columnCount(); ++column) {
            const QModelIndex cell = table.model()->index(row, column);
            const QString words = cell.data().toString();
            const bool isOwn = words.size() > kOwnText && cell.data(Qt::ToolTipRole).toString() == words;
            if (words.isEmpty() || isOwn || table.isColumnHidden(column)) {
                continue;
            }
            const QSize room(table.columnWidth(column) - ui::besideWords(cell, table.font()) - 1,
                             table.rowHeight(row));
            if (ui::fitText(words, ui::cellFont(cell, table.font(), &table), room).isCut) {
                faults << QString("%1: the cell \"%2\" is cut at %3x%4")
                              .arg(nameOf(table), words)
                              .arg(room.width())
                              .arg(room.height());
            }
        }
    }
}

/// What stands in a field, or the hint in an empty one, shows whole, or is whole where a pointer rests on it.
void checkField(const QLineEdit& field, QStringList& faults) {
    if (field.objectName() == QStringLiteral("cell_editor") ||
        qobject_cast<const QAbstractSpinBox*>(field.parentWidget()) != nullptr) {
        return;
    }
    const auto check = [&](const QString& words, const QFont& font, int room) {
        if (QFontMetrics(font).horizontalAdvance(words) > room) {
            faults << QString("%1: \"%2\" needs %3, has %4")
                          .arg(nameOf(field), words)
                          .arg(QFontMetrics(font).horizontalAdvance(words))
                          .arg(room);
        }
    };
    QStyleOptionFrame option;
    option.initFrom(&field);
    option.lineWidth = field.style()->pixelMetric(QStyle::PM_DefaultFrameWidth, &option, &field);
    const int room = field.style()->subElementRect(QStyle::SE_LineEditContents, &option, &field).width() - 4;
    const auto* hinted = qobject_cast<const ui::HintedField*>(&field);
    if (!field.text().isEmpty()) {
        if (field.toolTip() != field.text()) {
            check(field.displayText(), field.font(), room);
        }
    } else if (hinted != nullptr && !hinted->hint().isEmpty()) {
        check(hinted->shownHint(), hinted->hintFont(), hinted->hintRect().width());
    } else {
        check(field.placeholderText(), field.font(), room);
    }
}

/// Nothing scrolls sideways: neither with a bar in sight nor, where the bar is never shown, without one. The
/// line behind a table's last column takes a pixel of no words.
void checkSideways(const QAbstractScrollArea& area, QStringList& faults) {
    const QScrollBar* bar = area.horizontalScrollBar();
    const bool isNeverShown = area.horizontalScrollBarPolicy() == Qt::ScrollBarAlwaysOff;
    const int line = isNeverShown && qobject_cast<const QTableView*>(&area) != nullptr ? 1 : 0;
    if (bar->isVisible() || bar->maximum() - bar->minimum() > line) {
        faults
            << QString("%1: scrolls sideways by %2").arg(nameOf(area)).arg(bar->maximum() - bar->minimum());
    }
}

}  // namespace

QStringList layoutFaults(const QWidget& window) {
    QStringList faults;
    for (const QWidget* widget : window.findChildren<QWidget*>()) {
        if (!widget->isVisible() || widget->window() != &window) {
            continue;
        }
        checkPlace(*widget, faults);
        if (const auto* label = qobject_cast<const QLabel*>(widget)) {
            checkLabel(*label, faults);
        } else if (const auto* button = qobject_cast<const QAbstractButton*>(widget);
                   button != nullptr && !isInner(*button)) {
            if (!button->text().isEmpty() && button->sizeHint().width() > button->width()) {
                faults << QString("%1: needs %2 across, has %3")
                              .arg(nameOf(*button))
                              .arg(button->sizeHint().width())
                              .arg(button->width());
            }
        } else if (const auto* combo = qobject_cast<const QComboBox*>(widget)) {
            QStyleOptionComboBox option;
            option.initFrom(combo);
            option.rect = combo->rect();
            const QRect field = combo->style()->subControlRect(QStyle::CC_ComboBox, &option,
                                                               QStyle::SC_ComboBoxEditField, combo);
            const auto* quiet = qobject_cast<const ui::QuietCombo*>(combo);
            const bool isNarrowed = quiet != nullptr && quiet->writing().text == combo->currentText();
            if (!isNarrowed && combo->fontMetrics().horizontalAdvance(combo->currentText()) > field.width()) {
                faults << QString("%1: \"%2\" needs %3, has %4")
                              .arg(nameOf(*combo), combo->currentText())
                              .arg(combo->fontMetrics().horizontalAdvance(combo->currentText()))
                              .arg(field.width());
            }
        } else if (const auto* tabs = qobject_cast<const QTabBar*>(widget)) {
            for (int tab = 0; tab < tabs->count(); ++tab) {
                QString words = tabs->tabText(tab);
                words.remove('&');
                if (tabs->fontMetrics().horizontalAdvance(words) > tabs->tabRect(tab).width() ||
                    tabs->tabRect(tab).right() > tabs->width()) {
                    faults << QString("%1: the tab \"%2\" is cut").arg(nameOf(*tabs), words);
                }
            }
        } else if (const auto* table = qobject_cast<const QTableView*>(widget)) {
            checkHeads(*table, faults);
            if (table->wordWrap()) {
                checkCells(*table, faults);
            } else if (qobject_cast<const ui::BranchDelegate*>(table->itemDelegate()) != nullptr) {
                checkSetCells(*table, faults);
            }
        } else if (const auto* field = qobject_cast<const QLineEdit*>(widget);
                   field != nullptr && qobject_cast<const QComboBox*>(field->parentWidget()) == nullptr) {
            checkField(*field, faults);
        } else if (const auto* list = qobject_cast<const QListWidget*>(widget)) {
            for (int row = 0; row < list->count(); ++row) {
                if (list->sizeHintForIndex(list->model()->index(row, 0)).width() >
                        list->viewport()->width() &&
                    !list->wordWrap()) {
                    faults << QString("%1: \"%2\" is cut").arg(nameOf(*list), list->item(row)->text());
                }
            }
        }
        if (const auto* area = qobject_cast<const QAbstractScrollArea*>(widget)) {
            checkSideways(*area, faults);
        }
    }
    faults.removeDuplicates();
    return faults;
}

QStringList settledFaults(const QWidget& window) {
    constexpr int kTries = 8;
    constexpr int kPause_ms = 60;
    QStringList faults;
    for (int i = 0; i < kTries; ++i) {
        QTest::qWait(i == 0 ? 20 : kPause_ms);
        faults = layoutFaults(window);
        if (faults.isEmpty()) {
            break;
        }
    }
    return faults;
}

}  // namespace ww::support
