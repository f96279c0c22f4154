#include "tests/ui/support/tab_way.h"

#include <QApplication>
#include <QStringList>
#include <QTest>
#include <utility>

#include "tests/ui/support/spoken_name.h"
#include "ui/widgets/entry_table.h"

namespace ww::support {
namespace {

/// The parts of their nearest common parent that two widgets stand in; the same twice where one holds the
/// other. What is scrolled inside a part counts as where the part is.
std::pair<const QWidget*, const QWidget*> partsApart(const QWidget& first, const QWidget& second) {
    for (const QWidget* part = &second; part != nullptr && part->parentWidget() != nullptr;
         part = part->parentWidget()) {
        for (const QWidget* other = &first; other != nullptr; other = other->parentWidget()) {
            if (other->parentWidget() == part->parentWidget()) {
                return {other, part};
            }
        }
    }
    return {&first, &first};
}

/// Whether `second` is read before `first`: it stands above it, or on the same line where that begins.
bool isReadBefore(const QWidget& second, const QWidget& first) {
    const QRect a = first.geometry();
    const QRect b = second.geometry();
    const bool isAbove = b.bottom() < a.top() && b.left() <= a.right() && a.left() <= b.right();
    const bool isOnOneLine = b.top() <= a.center().y() && a.center().y() <= b.bottom();
    const bool isAtBegin =
        QApplication::layoutDirection() == Qt::RightToLeft ? b.left() > a.right() : b.right() < a.left();
    return isAbove || (isOnOneLine && isAtBegin);
}

}  // namespace

QList<QWidget*> wayRound(Qt::KeyboardModifiers shift) {
    constexpr int kMost = 300;
    QList<QWidget*> way{QApplication::focusWidget()};
    for (int press = 0; press < kMost; ++press) {
        const bool isTable = qobject_cast<ui::EntryTable*>(QApplication::focusWidget()) != nullptr;
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Tab,
                        (isTable ? Qt::ControlModifier : Qt::NoModifier) | shift);
        QWidget* now = QApplication::focusWidget();
        if (now == nullptr || (now == way.front() && way.size() > 1)) {
            break;
        }
        // A text is gone through link by link.
        if (now != way.back()) {
            way << now;
        }
    }
    return way;
}

QString orderFaults(const QList<QWidget*>& way) {
    QStringList faults;
    for (qsizetype i = 0; i < way.size(); ++i) {
        for (qsizetype j = i + 1; j < way.size(); ++j) {
            const auto [first, second] = partsApart(*way[i], *way[j]);
            if (first != second && isReadBefore(*second, *first)) {
                faults << spokenName(*way[j]) + " comes after " + spokenName(*way[i]);
            }
        }
    }
    return faults.join("; ");
}

}  // namespace ww::support
