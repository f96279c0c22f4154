#include "ui/schematic/schematic_key.h"

#include <QEvent>
#include <QPainter>
#include <QStyle>
#include <algorithm>
#include <set>
#include <tuple>

#include "ui/schematic/schematic_signs.h"
#include "ui/text/joined.h"
#include "ui/text/words.h"
#include "ui/theme/state_shape.h"
#include "ui/widgets/text_scale.h"

namespace ww::ui::schematic {
namespace {

constexpr int kSide = 16;
/// Between a sign and its words.
constexpr int kToWords = 5;
/// Between the words of one entry and the sign of the next.
constexpr int kToNext = 16;
constexpr int kLinesApart = 2;
constexpr int kWordFlags = Qt::TextWordWrap | Qt::AlignVCenter;

/// The largest word of a text, px.
int widestOf(const QFontMetrics& metrics, const QString& text) {
    int widest = 0;
    for (const QString& word : text.split(' ')) {
        widest = std::max(widest, metrics.horizontalAdvance(word));
    }
    return widest;
}

}  // namespace

SchematicKey::SchematicKey(QWidget* parent) : QWidget(parent) {
    setAccessibleName(tr("Key to the diagram"));
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    m_tokens = theme::tokens(theme::Display::Office);
}

void SchematicKey::add(Sign sign, const QString& words) {
    if (!m_entries.empty() && m_entries.back().words == words) {
        m_entries.back().signs.push_back(std::move(sign));
    } else {
        m_entries.push_back({{std::move(sign)}, words});
    }
}

void SchematicKey::show(const SchematicDrawing& drawing) {
    std::set<std::tuple<balancing::State, bool, bool>> states;
    bool hasValve = false;
    bool hasUnit = false;
    bool hasIndex = false;
    for (const BranchPicture& picture : drawing.pictures) {
        const bool isTurned =
            picture.state == balancing::State::Drifted || picture.state == balancing::State::AtStop;
        states.emplace(picture.state, picture.isSelfActing, isTurned && picture.isOver);
        hasValve = hasValve || picture.hasValve;
        hasUnit = hasUnit || picture.isTerminal;
        hasIndex = hasIndex || picture.isIndexTerminal;
    }
    const QStringList before = words();
    m_entries.clear();
    for (const auto& [state, isSelfActing, isOver] : states) {
        add(
            [shape = state, isUp = isOver](QPainter& painter, const theme::Tokens& tokens) {
                theme::paintState(painter, QRectF(-8, -8, 16, 16), shape, isUp, tokens);
            },
            text::word(state, isSelfActing, isOver));
    }
    if (hasValve) {
        constexpr double kHalf = 0.5;
        add(
            [](QPainter& painter, const theme::Tokens& tokens) {
                painter.scale(0.75, 0.75);
                paintValve(painter, {}, false, kHalf, tokens);
            },
            tr("open part of a valve"));
    }
    if (hasIndex) {
        add([](QPainter& painter,
               const theme::Tokens& tokens) { paintPipe(painter, QLineF(-8, 0, 8, 0), true, tokens); },
            tr("index circuit, * its end"));
    }
    if (hasUnit) {
        add([](QPainter& painter, const theme::Tokens& tokens) { paintUnit(painter, {}, tokens); },
            tr("unit"));
        add(
            [](QPainter& painter, const theme::Tokens& tokens) {
                painter.scale(0.5, 0.5);
                paintPump(painter, {}, tokens);
            },
            tr("pump"));
    }
    if (words() != before) {
        setAccessibleDescription(text::listed(words()));
        fitHeight();
    }
    update();
}

void SchematicKey::setTokens(const theme::Tokens& tokens) {
    m_tokens = tokens;
    update();
}

QStringList SchematicKey::words() const {
    QStringList all;
    for (const Entry& entry : m_entries) {
        all << entry.words;
    }
    return all;
}

int SchematicKey::signSide() const {
    return static_cast<int>(kSide * textScale(font()));
}

int SchematicKey::signsWidth(const Entry& entry) const {
    return static_cast<int>(entry.signs.size()) * signSide() + kToWords;
}

/// From where reading begins, in a layout from left to right.
std::vector<SchematicKey::Place> SchematicKey::places(int width) const {
    const QFontMetrics metrics(font());
    std::vector<Place> all;
    QPoint next(0, 0);
    int lineHeight = 0;
    for (const Entry& entry : m_entries) {
        const int signs = signsWidth(entry);
        const int wide = metrics.horizontalAdvance(entry.words) + 1;
        if (next.x() > 0 && next.x() + signs + wide > width) {
            next = QPoint(0, next.y() + lineHeight + kLinesApart);
            lineHeight = 0;
        }
        const int room = std::min(wide, std::max(1, width - next.x() - signs));
        const int high =
            metrics.boundingRect(QRect(0, 0, room, QWIDGETSIZE_MAX), kWordFlags, entry.words).height();
        const int height = std::max(high, signSide());
        all.push_back(
            {QRect(next, QSize(signs - kToWords, height)), QRect(next.x() + signs, next.y(), room, height)});
        lineHeight = std::max(lineHeight, height);
        next.rx() += signs + room + kToNext;
    }
    return all;
}

void SchematicKey::fitHeight() {
    int height = 0;
    for (const Place& place : places(width())) {
        height = std::max({height, place.sign.bottom() + 1, place.words.bottom() + 1});
    }
    setFixedHeight(height);
}

QSize SchematicKey::sizeHint() const {
    return {minimumSizeHint().width(), height()};
}

QSize SchematicKey::minimumSizeHint() const {
    const QFontMetrics metrics(font());
    int width = 0;
    for (const Entry& entry : m_entries) {
        width = std::max(width, signsWidth(entry) + widestOf(metrics, entry.words) + 1);
    }
    return {width, 0};
}

void SchematicKey::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const std::vector<Place> all = places(width());
    const double scale = static_cast<double>(signSide()) / kSide;
    for (std::size_t i = 0; i < all.size(); ++i) {
        const QRect signs = QStyle::visualRect(layoutDirection(), rect(), all[i].sign);
        for (std::size_t k = 0; k < m_entries[i].signs.size(); ++k) {
            painter.save();
            painter.translate(signs.left() + (static_cast<double>(k) + 0.5) * signSide(),
                              signs.top() + signs.height() / 2.0);
            painter.scale(scale, scale);
            m_entries[i].signs[k](painter, m_tokens);
            painter.restore();
        }
        painter.setPen(m_tokens.ink);
        painter.setLayoutDirection(layoutDirection());
        painter.drawText(QStyle::visualRect(layoutDirection(), rect(), all[i].words), kWordFlags,
                         m_entries[i].words);
    }
}

void SchematicKey::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    fitHeight();
}

void SchematicKey::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange) {
        updateGeometry();
        fitHeight();
    }
}

}  // namespace ww::ui::schematic
