// A one-page PDF of the form in which reports are written: one cross-reference table, metadata, an array of
// annotations of its own. Not a report.
#pragma once

#include <cstdio>
#include <string>
#include <vector>

namespace ww::support {

inline std::string smallPdf(const std::string& pageText = "Share of T1: 98 %") {
    const std::string metadata =
        "<?xpacket begin='' id='W5M0MpCehiHzreSzNTczkc9d'?><x:xmpmeta xmlns:x=\"adobe:ns:meta/\"><rdf:RDF "
        "xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\"><rdf:Description "
        "xmlns:pdfaid=\"http://www.aiim.org/pdfa/ns/id/\" rdf:about=\"\" pdfaid:part=\"1\" "
        "pdfaid:conformance=\"B\"/></rdf:RDF></x:xmpmeta><?xpacket end='w'?>";
    const std::string content = "BT /F1 12 Tf 72 720 Td (" + pageText + ") Tj ET";
    const auto stream = [](const std::string& entries, const std::string& data) {
        return "<< " + entries + " /Length " + std::to_string(data.size()) + " >>\nstream\n" + data +
               "\nendstream";
    };
    const std::vector<std::string> objects = {
        "<< /Title (Weir House) >>",
        stream("/Type /Metadata /Subtype /XML", metadata),
        "<< /Type /Catalog /Pages 4 0 R /Metadata 2 0 R >>",
        "<< /Type /Pages /Kids [5 0 R] /Count 1 >>",
        "<< /Type /Page /Parent 4 0 R /MediaBox [0 0 595.000000 842.000000] /Contents 6 0 R /Annots 7 0 R "
        "/Resources << /Font << /F1 8 0 R >> >> >>",
        stream("", content),
        "[ ]",
        "<< /Type /Font /Subtype /Type1 /BaseFont /Helvetica >>",
    };
    std::string out = "%PDF-1.4\n%\xE2\xE3\xCF\xD3\n";
    std::string table = "xref\n0 " + std::to_string(objects.size() + 1) + "\n0000000000 65535 f \n";
    for (std::size_t i = 0; i < objects.size(); ++i) {
        char line[32];
        std::snprintf(line, sizeof line, "%010zu 00000 n \n", out.size());
        table += line;
        out += std::to_string(i + 1) + " 0 obj\n" + objects[i] + "\nendobj\n";
    }
    const std::size_t begin = out.size();
    const std::string id(32, '7');
    return out + table + "trailer\n<< /Size " + std::to_string(objects.size() + 1) +
           " /Info 1 0 R /Root 3 0 R /ID [ <" + id + "> <" + id + "> ] >>\nstartxref\n" +
           std::to_string(begin) + "\n%%EOF\n";
}

}  // namespace ww::support
