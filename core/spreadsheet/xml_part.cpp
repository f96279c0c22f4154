#include "core/spreadsheet/xml_part.h"

#include <expat.h>

#include "core/spreadsheet/spreadsheet_messages.h"

namespace ww::spreadsheet {

namespace {

/// Stands between the namespace and the name.
constexpr XML_Char kSeparator = '|';

std::string_view localName(const char* name) {
    const std::string_view whole(name);
    const std::size_t mark = whole.rfind(kSeparator);
    return mark == std::string_view::npos ? whole : whole.substr(mark + 1);
}

struct Telling {
    XML_Parser parser;
    XmlListener& listener;
    bool hasDoctype = false;

    void stopOnFault() const {
        if (listener.fault()) {
            XML_StopParser(parser, XML_FALSE);
        }
    }
};

void tellBegin(void* to, const XML_Char* name, const XML_Char** attributes) {
    auto* telling = static_cast<Telling*>(to);
    telling->listener.begin(localName(name), XmlAttributes(attributes));
    telling->stopOnFault();
}

void tellEnd(void* to, const XML_Char* name) {
    auto* telling = static_cast<Telling*>(to);
    telling->listener.end(localName(name));
    telling->stopOnFault();
}

void tellText(void* to, const XML_Char* piece, int length) {
    static_cast<Telling*>(to)->listener.text(std::string_view(piece, static_cast<std::size_t>(length)));
}

void refuseDoctype(void* to, const XML_Char*, const XML_Char*, const XML_Char*, int) {
    auto* telling = static_cast<Telling*>(to);
    telling->hasDoctype = true;
    XML_StopParser(telling->parser, XML_FALSE);
}

}  // namespace

std::optional<std::string_view> XmlAttributes::find(std::string_view name) const {
    for (const char* const* pair = m_pairs; *pair != nullptr; pair += 2) {
        if (localName(pair[0]) == name) {
            return pair[1];
        }
    }
    return std::nullopt;
}

base::Outcome readXml(PackedFile& file, const std::string& part, XmlListener& listener) {
    const std::unique_ptr<XML_ParserStruct, void (*)(XML_Parser)> parser(
        XML_ParserCreateNS(nullptr, kSeparator), &XML_ParserFree);
    Telling telling{parser.get(), listener};
    XML_SetUserData(parser.get(), &telling);
    XML_SetElementHandler(parser.get(), tellBegin, tellEnd);
    XML_SetCharacterDataHandler(parser.get(), tellText);
    XML_SetStartDoctypeDeclHandler(parser.get(), refuseDoctype);
    bool isSound = true;
    const auto take = [&](std::string_view bytes) {
        isSound =
            XML_Parse(parser.get(), bytes.data(), static_cast<int>(bytes.size()), XML_FALSE) == XML_STATUS_OK;
        return isSound;
    };
    const base::Outcome outcome = file.read(part, take);
    if (!outcome) {
        return outcome;
    }
    isSound = isSound && XML_Parse(parser.get(), nullptr, 0, XML_TRUE) == XML_STATUS_OK;
    if (telling.hasDoctype) {
        return base::Fault{&kSpreadsheetDoctype, "", {part}};
    }
    if (const auto fault = listener.fault()) {
        return *fault;
    }
    if (!isSound) {
        return base::Fault{
            &kSpreadsheetPartBroken, "", {part, std::to_string(XML_GetCurrentLineNumber(parser.get()))}};
    }
    return base::Done{};
}

}  // namespace ww::spreadsheet
