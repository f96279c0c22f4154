#include "ui/text/joined.h"

#include <QCoreApplication>

namespace ww::ui::text {
namespace {

/// The texts of this file.
struct JoinedText {
    Q_DECLARE_TR_FUNCTIONS(Word)
};

}  // namespace

QString labelled(const QString& what, const QString& said) {
    return JoinedText::tr("%1: %2").arg(what, said);
}

QString listed(const QStringList& parts) {
    QString all = parts.value(0);
    for (const QString& part : parts.mid(1)) {
        all = JoinedText::tr("%1; %2").arg(all, part);
    }
    return all;
}

}  // namespace ww::ui::text
