// When an area measures what it holds.
#include "ui/widgets/patient_area.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QStackedWidget>
#include <QTest>

namespace ww::ui {
namespace {

/// Counts how often it is asked for its size.
class AskedWidget : public QWidget {
  public:
    explicit AskedWidget(int height) : m_height(height) {}
    QSize minimumSizeHint() const override {
        ++m_asked;
        return {50, m_height};
    }
    QSize sizeHint() const override { return minimumSizeHint(); }
    void setLeastHeight(int height) {
        m_height = height;
        updateGeometry();
    }
    int asked() const { return m_asked; }

  private:
    int m_height;
    mutable int m_asked = 0;
};

class PatientAreas : public testing::Test {
  protected:
    PatientAreas() {
        m_area->setWidget(m_held);
        m_area->setWidgetResizable(true);
        m_pages.addWidget(new QWidget);
        m_pages.addWidget(m_area);
        m_pages.resize(200, 120);
        m_pages.show();
        m_pages.setCurrentIndex(1);
        QTest::qWait(0);
    }
    void change(QEvent::Type type) {
        QEvent event(type);
        QApplication::sendEvent(m_area, &event);
    }

    QStackedWidget m_pages;
    PatientArea* m_area = new PatientArea;
    AskedWidget* m_held = new AskedWidget(300);
};

TEST_F(PatientAreas, whatIsNotSeenIsMeasuredWhenItIsShown) {
    EXPECT_EQ(m_held->height(), 300);
    m_pages.setCurrentIndex(0);
    QTest::qWait(0);
    m_held->setLeastHeight(500);
    const int asked = m_held->asked();
    for (int i = 0; i < 5; ++i) {
        change(QEvent::StyleChange);
        change(QEvent::LayoutRequest);
    }
    EXPECT_EQ(m_held->asked(), asked);
    m_pages.setCurrentIndex(1);
    QTest::qWait(0);
    EXPECT_EQ(m_held->height(), 500);
}

TEST_F(PatientAreas, whatIsSeenIsMeasuredOnceForAllChangesOfLook) {
    const int asked = m_held->asked();
    for (int i = 0; i < 5; ++i) {
        change(QEvent::StyleChange);
    }
    EXPECT_EQ(m_held->asked(), asked) << "not while the look changes";
    m_held->setLeastHeight(500);
    QTest::qWait(0);
    EXPECT_EQ(m_held->height(), 500);
}

}  // namespace
}  // namespace ww::ui
