// What the screens paint: contrast of words measured from pixels, distance of the colours of states for every
// kind of eye. Not for the ring around what has the keys (ring_test.cpp).
#include <gtest/gtest.h>

#include <QAbstractItemView>
#include <QCheckBox>
#include <QComboBox>
#include <QDialog>
#include <QImage>
#include <QLabel>
#include <QLineEdit>
#include <QPainter>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QStyleOptionButton>
#include <QVBoxLayout>
#include <map>
#include <set>
#include <type_traits>

#include "tests/ui/support/color_math.h"
#include "tests/ui/support/desk_window.h"
#include "tests/ui/support/each_page.h"
#include "ui/theme/state_shape.h"
#include "ui/theme/theme.h"
#include "ui/widgets/hinted_field.h"

namespace ww::ui {
namespace {

using support::contrastRatio;
using support::DeskWindow;
using theme::Display;

constexpr Display kDisplays[] = {Display::Office, Display::Daylight, Display::PlantRoomDark};

constexpr int kScale = 2;

/// The window as painted, each pixel of it kScale by kScale, so that thin strokes reach their color.
QImage painted(QWidget& window) {
    QImage picture(window.size() * kScale, QImage::Format_RGB32);
    picture.setDevicePixelRatio(kScale);
    window.render(&picture);
    picture.setDevicePixelRatio(1);
    return picture;
}

QRect scaled(const QRect& part) {
    return {part.topLeft() * kScale, part.size() * kScale};
}

/// How many pixels of a part of a picture have each color; counted by runs, as most of it is one color.
std::map<QRgb, int> colorsOf(const QImage& picture, const QRect& part) {
    std::map<QRgb, int> counts;
    const QRect box = part & picture.rect();
    for (int y = box.top(); y <= box.bottom(); ++y) {
        const auto* line = reinterpret_cast<const QRgb*>(picture.constScanLine(y));
        for (int x = box.left(); x <= box.right();) {
            const QRgb color = line[x];
            const int from = x;
            while (x <= box.right() && line[x] == color) {
                ++x;
            }
            counts[color] += x - from;
        }
    }
    return counts;
}

QRgb commonest(const std::map<QRgb, int>& counts) {
    const auto most = std::max_element(counts.begin(), counts.end(),
                                       [](const auto& a, const auto& b) { return a.second < b.second; });
    return most == counts.end() ? 0 : most->first;
}

/// Contrast of the color that stands out most against another.
double mostContrast(const std::map<QRgb, int>& counts, QRgb against) {
    double most = 0;
    for (const auto& [color, count] : counts) {
        most = std::max(most, contrastRatio(QColor(against), QColor(color)));
    }
    return most;
}

/// Contrast of what is written in a part of a picture against its commonest color.
double writtenContrast(const QImage& picture, const QRect& part) {
    const std::map<QRgb, int> counts = colorsOf(picture, part);
    return mostContrast(counts, commonest(counts));
}

/// A text on the screen and where it stands in the window, px.
struct Written {
    QString words;
    QRect box;
};

void addCells(const QAbstractItemView& view, const QWidget& window, std::vector<Written>& all) {
    const QWidget* port = view.viewport();
    const QAbstractItemModel* model = view.model();
    for (int row = 0; model != nullptr && row < model->rowCount(view.rootIndex()); ++row) {
        for (int column = 0; column < model->columnCount(view.rootIndex()); ++column) {
            const QModelIndex cell = model->index(row, column, view.rootIndex());
            const QRect box = view.visualRect(cell);
            if (port->rect().contains(box) && !cell.data().toString().trimmed().isEmpty()) {
                all.push_back(
                    {cell.data().toString(),
                     QRect(port->mapTo(&window, box.topLeft()), box.size()).adjusted(2, 2, -2, -2)});
            }
        }
    }
}

/// Everything written in a window that is wholly in sight: labels, buttons, fields, choices, cells.
std::vector<Written> writtenOn(const QWidget& window) {
    std::vector<Written> all;
    for (const QWidget* widget : window.findChildren<QWidget*>()) {
        if (!widget->isVisible() || widget->visibleRegion().boundingRect() != widget->rect()) {
            continue;
        }
        QString words;
        if (const auto* label = qobject_cast<const QLabel*>(widget)) {
            words = label->text();
        } else if (const auto* button = qobject_cast<const QAbstractButton*>(widget)) {
            words = button->text();
        } else if (const auto* field = qobject_cast<const QLineEdit*>(widget)) {
            words = field->text();
        } else if (const auto* choice = qobject_cast<const QComboBox*>(widget)) {
            words = choice->currentText();
        } else if (const auto* view = qobject_cast<const QAbstractItemView*>(widget)) {
            addCells(*view, window, all);
        }
        if (!words.trimmed().isEmpty()) {
            const QRect inner = widget->rect().adjusted(4, 4, -4, -4);
            all.push_back({words, QRect(widget->mapTo(&window, inner.topLeft()), inner.size())});
        }
    }
    return all;
}

// WCAG 2.2: 1.4.6 asks 7:1 of text, 1.4.3 4.5:1.
TEST(PaintedColors, everyWordStandsOutOnEveryPage) {
    int screens = 0;
    for (const Display display : kDisplays) {
        DeskWindow desk;
        desk.window.setDisplay(display);
        desk.enter("20.5");
        desk.enter("99");
        const double wanted = display == Display::Office ? 4.5 : 7.0;
        support::eachPage(desk.window, [&](const QString& page) {
            QTest::qWait(30);
            ++screens;
            const QImage picture = painted(desk.window);
            for (const Written& written : writtenOn(desk.window)) {
                EXPECT_GE(writtenContrast(picture, scaled(written.box)), wanted)
                    << theme::name(display).toStdString() << ", " << page.toStdString() << ": "
                    << written.words.toStdString();
            }
        });
    }
    EXPECT_GE(screens, 12);
}

/// Contrast of a frame in a picture, at the middle of each side, against what lies around it; the least.
double frameContrast(const QImage& picture, const QRect& box) {
    constexpr int kOutside = 2;
    constexpr int kInside = 5;
    const QPoint middle = box.center();
    const QRect sides[] = {{middle.x(), box.top() - kOutside, 1, kOutside + kInside},
                           {middle.x(), box.bottom() + 1 - kInside, 1, kOutside + kInside},
                           {box.left() - kOutside, middle.y(), kOutside + kInside, 1},
                           {box.right() + 1 - kInside, middle.y(), kOutside + kInside, 1}};
    const QRect corners[] = {{middle.x(), box.top() - kOutside, 1, 1},
                             {middle.x(), box.bottom() + kOutside, 1, 1},
                             {box.left() - kOutside, middle.y(), 1, 1},
                             {box.right() + kOutside, middle.y(), 1, 1}};
    double least = 21;
    for (int side = 0; side < 4; ++side) {
        const QRgb around = commonest(colorsOf(picture, scaled(corners[side])));
        least = std::min(least, mostContrast(colorsOf(picture, scaled(sides[side])), around));
    }
    return least;
}

/// The part of a control that its frame is painted around, in the control; empty where it has none. Of what
/// is ticked or chosen that is the box or the circle.
QRect framedPart(const QWidget& control) {
    const bool isBox = qobject_cast<const QCheckBox*>(&control) != nullptr;
    if (isBox || qobject_cast<const QRadioButton*>(&control) != nullptr) {
        QStyleOptionButton option;
        option.initFrom(&control);
        option.text = static_cast<const QAbstractButton&>(control).text();
        return control.style()->subElementRect(
            isBox ? QStyle::SE_CheckBoxIndicator : QStyle::SE_RadioButtonIndicator, &option, &control);
    }
    const bool isFramed = qobject_cast<const QLineEdit*>(&control) ||
                          qobject_cast<const QComboBox*>(&control) ||
                          qobject_cast<const QPushButton*>(&control);
    return isFramed ? control.rect() : QRect();
}

/// Contrast of the lower side of a frame, which may be dashed, against what lies below it.
double lineBelow(const QImage& picture, const QRect& box) {
    constexpr int kInside = 5;
    const QRect side(box.left(), box.bottom() + 1 - kInside, box.width(), kInside);
    const QRect below(box.left(), box.bottom() + 2, box.width(), 1);
    return mostContrast(colorsOf(picture, scaled(side)), commonest(colorsOf(picture, scaled(below))));
}

bool takesTyping(const QWidget& control) {
    const auto* line = qobject_cast<const QLineEdit*>(&control);
    return control.isEnabled() && (line == nullptr || !line->isReadOnly());
}

// WCAG 2.2, 1.4.11: 3:1 of what shows where a control is, and of shapes that say something.
TEST(PaintedColors, framesAndShapesStandOut) {
    for (const Display display : kDisplays) {
        DeskWindow desk;
        desk.window.setDisplay(display);
        int boxes = 0;
        support::eachPage(desk.window, [&](const QString& page) {
            QTest::qWait(30);
            const QImage picture = painted(desk.window);
            for (const QWidget* control : desk.window.findChildren<QWidget*>()) {
                const QRect part = framedPart(*control);
                const QRect box(control->mapTo(&desk.window, part.topLeft()), part.size());
                if (part.isEmpty() || !control->isVisible() ||
                    control->visibleRegion().boundingRect() != control->rect() ||
                    !desk.window.rect().contains(box.adjusted(-3, -3, 3, 3))) {
                    continue;
                }
                boxes += qobject_cast<const QCheckBox*>(control) != nullptr ? 1 : 0;
                EXPECT_GE(takesTyping(*control) ? frameContrast(picture, box) : lineBelow(picture, box), 3.0)
                    << theme::name(display).toStdString() << ", " << page.toStdString() << ": "
                    << control->metaObject()->className() << " " << control->accessibleName().toStdString();
            }
        });
        EXPECT_GE(boxes, 1) << "no box to tick was looked at";
        const theme::Tokens& tokens = theme::tokens(display);
        for (const QColor& under : {tokens.paper, tokens.panel}) {
            for (const auto state :
                 {balancing::State::NotRead, balancing::State::Short, balancing::State::Over,
                  balancing::State::OnShare, balancing::State::Drifted, balancing::State::AtStop,
                  balancing::State::Doubtful}) {
                QImage picture(16 * kScale, 16 * kScale, QImage::Format_RGB32);
                picture.fill(under);
                {
                    QPainter painter(&picture);
                    painter.setRenderHint(QPainter::Antialiasing);
                    theme::paintState(painter, picture.rect(), state, true, tokens);
                }
                EXPECT_GE(mostContrast(colorsOf(picture, picture.rect()), under.rgb()), 3.0)
                    << theme::name(display).toStdString() << ", state " << static_cast<int>(state);
            }
        }
    }
}

/// How much of the left side of a control has a frame that stands out from what lies beside it, 0 to 1.
double framedOnTheLeft(const QImage& picture, const QRect& box) {
    constexpr int kCorner = 6;
    constexpr int kInside = 4;
    constexpr int kOutside = 2;
    const QRgb beside = picture.pixel(kScale * QPoint(box.left() - kOutside, box.center().y()));
    int framed = 0;
    int all = 0;
    for (int y = box.top() + kCorner; y <= box.bottom() - kCorner; ++y) {
        ++all;
        framed += mostContrast(colorsOf(picture, scaled({box.left(), y, kInside, 1})), beside) >= 3.0 ? 1 : 0;
    }
    return static_cast<double>(framed) / all;
}

template <class Field>
Field* fieldSaying(const QString& words, QLayout& layout) {
    auto* field = new Field;
    if constexpr (std::is_same_v<Field, QComboBox>) {
        field->addItem(words);
    } else if constexpr (std::is_same_v<Field, QPlainTextEdit>) {
        field->setPlainText(words);
    } else {
        field->setText(words);
    }
    layout.addWidget(field);
    return field;
}

// Interface design, 3.3: a disabled control stays readable, and its dashed frame says that it is off. What
// can only be read has a line below it.
TEST(PaintedColors, whatTakesNoTypingIsToldApartFromWhatDoes) {
    for (const Display display : kDisplays) {
        SCOPED_TRACE(theme::name(display).toStdString());
        DeskWindow desk;
        desk.window.setDisplay(display);
        QDialog page(&desk.window);
        auto* column = new QVBoxLayout(&page);
        const QString words = QStringLiteral("HHH 12.4 kPa");
        auto* first = new QPushButton(words, &page);  // has the keys
        column->addWidget(first);
        const std::vector<QWidget*> taking{fieldSaying<QLineEdit>(words, *column),
                                           fieldSaying<QComboBox>(words, *column),
                                           fieldSaying<QPlainTextEdit>(words, *column)};
        const std::vector<QWidget*> off{fieldSaying<QLineEdit>(words, *column),
                                        fieldSaying<QComboBox>(words, *column),
                                        fieldSaying<QPlainTextEdit>(words, *column)};
        auto* line = fieldSaying<QLineEdit>(words, *column);
        auto* text = fieldSaying<QPlainTextEdit>(words, *column);
        line->setReadOnly(true);
        text->setReadOnly(true);
        const std::vector<QWidget*> readable{line, text};
        for (QWidget* field : off) {
            field->setEnabled(false);
        }
        page.resize(400, 700);
        page.show();
        first->setFocus();
        QTest::qWait(50);
        const QImage picture = painted(page);
        const double wanted = display == Display::Office ? 4.5 : 7.0;
        const auto check = [&](const std::vector<QWidget*>& fields, double least, double most) {
            for (const QWidget* field : fields) {
                const QRect box = field->geometry();
                const double framed = framedOnTheLeft(picture, box);
                EXPECT_GE(framed, least) << field->metaObject()->className();
                EXPECT_LE(framed, most) << field->metaObject()->className();
                EXPECT_GE(lineBelow(picture, box), 3.0) << field->metaObject()->className();
                EXPECT_GE(writtenContrast(picture, scaled(box.adjusted(6, 5, -30, -5))), wanted)
                    << field->metaObject()->className();
            }
        };
        check(taking, 0.95, 1.0);
        check(off, 0.2, 0.9);
        check(readable, 0.0, 0.05);
    }
}

// A hint is a text like any other.
TEST(PaintedColors, hintsStandOutAlsoWhereTheirFieldIsOff) {
    for (const Display display : kDisplays) {
        DeskWindow desk;
        desk.window.setDisplay(display);
        for (const bool isOn : {true, false}) {
            QDialog page(&desk.window);
            auto* column = new QVBoxLayout(&page);
            auto* first = new QPushButton(&page);
            auto* field = new HintedField(QStringLiteral("HHH tag or number"), &page);
            column->addWidget(first);
            column->addWidget(field);
            field->setEnabled(isOn);
            page.show();
            first->setFocus();
            QTest::qWait(50);
            EXPECT_GE(writtenContrast(painted(page), scaled(field->geometry().adjusted(6, 5, -6, -5))),
                      display == Display::Office ? 4.5 : 7.0)
                << theme::name(display).toStdString() << (isOn ? "" : ", off");
        }
    }
}

TEST(PaintedColors, statesAreToldApartByEveryKindOfEye) {
    for (const Display display : {Display::Daylight, Display::PlantRoomDark}) {
        const theme::Tokens& t = theme::tokens(display);
        const QColor colors[] = {t.shortShare, t.over, t.doubt, t.ink};
        for (std::size_t i = 0; i < std::size(colors); ++i) {
            for (std::size_t j = i + 1; j < std::size(colors); ++j) {
                EXPECT_GE(support::smallestDistance(colors[i], colors[j]), 9.5) << i << " and " << j;
            }
        }
        EXPECT_GE(support::smallestDistance(t.shortShare, t.over), 17.0);
    }
}

}  // namespace
}  // namespace ww::ui
