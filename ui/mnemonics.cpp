#include "ui/mnemonics.h"

#include <QAbstractButton>
#include <QLabel>
#include <QMenu>
#include <QStackedWidget>

namespace ww::ui {
namespace {

qsizetype markOf(const QString& words) {
    for (qsizetype i = 0; i + 1 < words.size(); ++i) {
        if (words[i] == '&') {
            if (words[i + 1] != '&') {
                return i;
            }
            ++i;
        }
    }
    return -1;
}

/// The widgets that are seen together with `root`, and the pages within it that are seen one by one.
void gather(QWidget& root, QList<QWidget*>& together, QList<QWidget*>& pages) {
    for (QObject* child : root.children()) {
        auto* widget = qobject_cast<QWidget*>(child);
        if (widget == nullptr || widget->isWindow()) {
            continue;
        }
        if (qobject_cast<QStackedWidget*>(&root) != nullptr) {
            pages << widget;
            continue;
        }
        together << widget;
        gather(*widget, together, pages);
    }
}

}  // namespace

QString withFreeLetter(const QString& words, QSet<QChar>& taken) {
    const qsizetype mark = markOf(words);
    if (mark < 0) {
        return words;
    }
    if (const QChar wanted = words[mark + 1].toUpper(); !taken.contains(wanted)) {
        taken << wanted;
        return words;
    }
    QString plain = words;
    plain.remove(mark, 1);
    for (qsizetype i = 0; i < plain.size(); ++i) {
        // The place of a number or a name that is filled in later has no letter.
        const bool isPlace = i > 0 && plain[i - 1] == '%';
        if (plain[i].isLetter() && !isPlace && !taken.contains(plain[i].toUpper())) {
            taken << plain[i].toUpper();
            return plain.insert(i, '&');
        }
    }
    return plain;
}

QString withoutLetter(QString words) {
    return words.replace('&', QStringLiteral("&&"));
}

QSet<QChar> settleMenus(QMenuBar& bar) {
    QSet<QChar> taken;
    for (QAction* top : bar.actions()) {
        top->setText(withFreeLetter(top->text(), taken));
        QSet<QChar> within;
        if (top->menu() != nullptr) {
            for (QAction* action : top->menu()->actions()) {
                action->setText(withFreeLetter(action->text(), within));
            }
        }
    }
    return taken;
}

void settleLetters(QWidget& place, QSet<QChar> taken) {
    QList<QWidget*> together;
    QList<QWidget*> pages;
    gather(place, together, pages);
    for (QWidget* widget : together) {
        if (auto* label = qobject_cast<QLabel*>(widget); label != nullptr && label->buddy() != nullptr) {
            label->setText(withFreeLetter(label->text(), taken));
        } else if (auto* button = qobject_cast<QAbstractButton*>(widget)) {
            button->setText(withFreeLetter(button->text(), taken));
        }
    }
    for (QWidget* page : pages) {
        settleLetters(*page, taken);
    }
}

}  // namespace ww::ui
