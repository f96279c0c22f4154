#include "ui/places/report/pages_maker.h"

#include <utility>

#include "core/pump_room/pump_picture.h"

namespace ww::ui {
namespace {

constexpr int kTellingMilliseconds = 200;

}  // namespace

/// What the other thread is given and gives back.
struct PagesMaker::Work {
    std::shared_ptr<Wanted> wanted;
    std::atomic<std::size_t> pages = 0;
    std::shared_ptr<const Made> made;  ///< null: given up
};

PagesMaker::PagesMaker(QObject* parent) : QObject(parent) {
    m_telling.setInterval(kTellingMilliseconds);
    connect(&m_telling, &QTimer::timeout, this, &PagesMaker::progressed);
}

PagesMaker::~PagesMaker() = default;

std::size_t PagesMaker::pagesSoFar() const {
    return m_running != nullptr ? m_running->pages.load() : 0;
}

void PagesMaker::make(Wanted wanted) {
    m_next = std::make_shared<Wanted>(std::move(wanted));
    if (isMaking()) {
        m_thread.request_stop();
    } else {
        start();
    }
}

void PagesMaker::giveUp() {
    m_next.reset();
    m_thread.request_stop();
}

void PagesMaker::start() {
    auto work = std::make_shared<Work>();
    work->wanted = std::exchange(m_next, nullptr);
    m_running = work;
    m_thread = std::jthread([this, work](const std::stop_token& stop) {
        Wanted& wanted = *work->wanted;
        // Of an earlier round the report pictures the pumps as that one left them.
        if (wanted.options.pumps == nullptr && !wanted.options.round) {
            wanted.options.pumps = std::make_shared<const pump_room::PumpPicture>(
                pump_room::pumpPicture(wanted.project, wanted.learned));
        }
        auto made = std::make_shared<Made>();
        if (!stop.stop_requested()) {
            made->report = ww::report::build(wanted.project, wanted.options);
            auto pages = report::layOut(made->report, wanted.project, [&](std::size_t count) {
                work->pages = count;
                return !stop.stop_requested();
            });
            if (pages) {
                made->pages = std::make_shared<const report::ReportPages>(std::move(*pages));
                work->made = std::move(made);
            }
        }
        QMetaObject::invokeMethod(
            this, [this] { finish(); }, Qt::QueuedConnection);
    });
    m_telling.start();
    emit progressed();
}

void PagesMaker::finish() {
    const bool wasStopped = m_thread.get_stop_token().stop_requested();
    const std::shared_ptr<const Made> done = std::exchange(m_running, nullptr)->made;
    m_telling.stop();
    if (done != nullptr && !wasStopped) {
        emit made(done);
    }
    if (m_next != nullptr && !isMaking()) {
        start();
        return;
    }
    emit progressed();
}

}  // namespace ww::ui
