// A balance report laid out on pages: each page is a list of strokes that any painter repeats, so that paper
// and preview are the same. Not for the file (report_writer.h).
#pragma once

#include <QPagedPaintDevice>
#include <QPainter>
#include <QString>
#include <functional>
#include <optional>
#include <vector>

#include "core/project/project.h"
#include "core/report/report.h"
#include "core/seal/signature_block.h"

namespace ww::ui::report {

/// Painters work in dots of 1/1200 inch from the upper left corner of the paper.
inline constexpr int kDotsPerInch = 1200;
inline constexpr double kDotsPerPoint = kDotsPerInch / 72.0;
inline constexpr double kDotsPerMillimetre = kDotsPerInch / 25.4;

using Stroke = std::function<void(QPainter&)>;

struct Page {
    bool isLandscape = false;
    std::vector<int> sections;  ///< numbers of the sections that begin or go on here
    std::vector<Stroke> strokes;
};

/// Where a signature's block is to stand; the page is left white there.
struct SignatureSpace {
    seal::Role role{};
    seal::PaperPlace place;
};

/// The pages of one report. Letter paper for US units, A4 otherwise.
struct ReportPages {
    bool isLetter = false;
    std::vector<Page> pages;
    std::vector<QString> names;          ///< of each page, for a list: the titles of its sections
    std::vector<SignatureSpace> spaces;  ///< one for each signer

    /// Size of a page in dots.
    QSizeF size(std::size_t page) const;
};

/// Told again and again how many pages there are so far; false: the work is given up.
using Watch = std::function<bool(std::size_t pages)>;

/// Lays the report out, on any thread. Every page of a simulated job is marked as such. Needs a
/// QGuiApplication for its fonts. Equal input gives equal pages.
ReportPages layOut(const ww::report::Report& report, const project::Project& project);
/// The same while somebody waits; nothing where it was given up.
std::optional<ReportPages> layOut(const ww::report::Report& report, const project::Project& project,
                                  const Watch& watch);

/// Paints one page into `target`, which should have the page's proportions.
void renderPage(QPainter& painter, const ReportPages& pages, std::size_t page, const QRectF& target);

/// Paints all pages on a device of pages, a printer or a PDF writer; the device has at least one page. False
/// where it was given up: the pages are not all there.
bool paintPages(const ReportPages& pages, QPagedPaintDevice& device, const Watch& watch = {});

}  // namespace ww::ui::report
