// One part of a packed file as a stream of XML elements, without entities or a document type. Not for what
// the elements mean.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/spreadsheet/packed_file.h"

namespace ww::spreadsheet {

/// The attributes of one element, valid while it is being told. Names are without their namespace.
class XmlAttributes {
  public:
    explicit XmlAttributes(const char* const* pairs) : m_pairs(pairs) {}
    /// Nothing where there is none.
    std::optional<std::string_view> find(std::string_view name) const;
    /// Empty where there is none.
    std::string text(std::string_view name) const { return std::string(find(name).value_or("")); }

  private:
    const char* const* m_pairs;
};

/// Is told what stands in a part, in order. Element names are without their namespace.
class XmlListener {
  public:
    virtual ~XmlListener() = default;
    /// An element opens, closes; a piece of text inside one, which may come in several.
    virtual void begin(std::string_view element, const XmlAttributes& attributes) = 0;
    virtual void end(std::string_view element) = 0;
    virtual void text(std::string_view piece) = 0;
    /// A fault ends the reading.
    virtual std::optional<base::Fault> fault() const { return std::nullopt; }
};

/// Reads a part to its end. Faults: those of PackedFile::read, XML that is not well formed, a document type,
/// and the listener's own.
base::Outcome readXml(PackedFile& file, const std::string& part, XmlListener& listener);

}  // namespace ww::spreadsheet
