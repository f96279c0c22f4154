// Texts that belong together, joined as the language of the screen does it. Not for names inside one
// sentence, which the sentence has places for.
#pragma once

#include <QStringList>

namespace ww::ui::text {

/// "what: said", with the room that the language leaves around the colon.
QString labelled(const QString& what, const QString& said);
/// "one; other; third", the same of the semicolon; empty for no parts.
QString listed(const QStringList& parts);

}  // namespace ww::ui::text
