// Draws the visible block of a signature as outlines. Not for placing it (report_pages.h).
#pragma once

#include "core/seal/signature_block.h"

namespace ww::ui::report {

/// A frame with the block's text; a line that is too wide is made narrower. Needs a QGuiApplication for its
/// fonts.
seal::BlockDrawing drawBlock(const seal::BlockText& text, const seal::PaperSize& size);

}  // namespace ww::ui::report
