#include "tests/ui/support/written_runs.h"

#include <QFontInfo>
#include <QPaintDevice>
#include <QPaintEngine>
#include <algorithm>

namespace ww::support {
namespace {

/// Takes texts down and paints nothing.
class RunEngine : public QPaintEngine {
  public:
    RunEngine() : QPaintEngine(AllFeatures) {}

    bool begin(QPaintDevice*) override { return true; }
    bool end() override { return true; }
    void updateState(const QPaintEngineState&) override {}
    void drawPath(const QPainterPath&) override {}
    void drawPolygon(const QPointF*, int, PolygonDrawMode) override {}
    void drawPixmap(const QRectF&, const QPixmap&, const QRectF&) override {}
    void drawTextItem(const QPointF&, const QTextItem& run) override {
        const QString words = run.text();
        const auto isMark = [](QChar c) { return c.unicode() >= 0x2066 && c.unicode() <= 0x2069; };
        m_all << words;
        const double pixels = QFontInfo(run.font()).pixelSize() * painter()->combinedTransform().m22();
        m_smallest = std::min(m_smallest.value_or(pixels), pixels);
        if ((run.renderFlags() & QTextItem::RightToLeft) != 0 &&
            !std::all_of(words.begin(), words.end(), isMark)) {
            m_fromRightToLeft << words;
        }
    }
    Type type() const override { return User; }

    const QStringList& all() const { return m_all; }
    const QStringList& fromRightToLeft() const { return m_fromRightToLeft; }
    std::optional<double> smallest() const { return m_smallest; }

  private:
    QStringList m_all;
    QStringList m_fromRightToLeft;
    std::optional<double> m_smallest;
};

class RunDevice : public QPaintDevice {
  public:
    explicit RunDevice(const QSize& size) : m_size(size) {}
    QPaintEngine* paintEngine() const override { return &m_engine; }
    const RunEngine& engine() const { return m_engine; }

  protected:
    int metric(PaintDeviceMetric which) const override {
        constexpr int kDotsPerInch = 96;
        constexpr double kMmPerInch = 25.4;
        switch (which) {
            case PdmWidth:
                return m_size.width();
            case PdmHeight:
                return m_size.height();
            case PdmWidthMM:
                return qRound(m_size.width() * kMmPerInch / kDotsPerInch);
            case PdmHeightMM:
                return qRound(m_size.height() * kMmPerInch / kDotsPerInch);
            case PdmNumColors:
                return 1 << 24;
            case PdmDepth:
                return 32;
            case PdmDpiX:
            case PdmDpiY:
            case PdmPhysicalDpiX:
            case PdmPhysicalDpiY:
                return kDotsPerInch;
            default:
                return QPaintDevice::metric(which);
        }
    }

  private:
    const QSize m_size;
    mutable RunEngine m_engine;
};

}  // namespace

QStringList runsFromRightToLeft(const QSize& size, const std::function<void(QPainter& painter)>& paint) {
    RunDevice device(size);
    {
        QPainter painter(&device);
        painter.setLayoutDirection(Qt::RightToLeft);
        paint(painter);
    }
    return device.engine().fromRightToLeft();
}

QStringList writtenRuns(QWidget& widget) {
    RunDevice device(widget.size());
    {
        QPainter painter(&device);
        painter.setLayoutDirection(widget.layoutDirection());
        widget.render(&painter);
    }
    return device.engine().all();
}

std::optional<double> smallestWritten(QWidget& widget) {
    RunDevice device(widget.size());
    {
        QPainter painter(&device);
        widget.render(&painter);
    }
    return device.engine().smallest();
}

QStringList runsFromRightToLeft(QWidget& widget) {
    return runsFromRightToLeft(widget.size(), [&](QPainter& painter) { widget.render(&painter); });
}

}  // namespace ww::support
