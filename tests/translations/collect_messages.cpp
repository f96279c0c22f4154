// Writes the sentences and words of core and ui that stand in tables, not in tr(), as one source file that
// lupdate reads: collect_messages SOURCE_FOLDER OUT. Run by the target update_translations.
#include <algorithm>
#include <cctype>
#include <fstream>
#include <iostream>
#include <set>

#include "tests/lint/message_rules.h"

namespace {

/// Whether something is left to translate beside the places of arguments.
bool hasWords(std::string text) {
    for (std::size_t at = text.find('{'); at != std::string::npos; at = text.find('{', at)) {
        const std::size_t end = text.find('}', at);
        if (end == std::string::npos) {
            break;
        }
        text.erase(at, end - at + 1);
    }
    return std::any_of(text.begin(), text.end(), [](unsigned char c) { return std::isalpha(c) != 0; });
}

bool isShown(const ww::lint::SourceFile& file) {
    return file.isCode() && (file.path.starts_with("core/") || file.path.starts_with("ui/"));
}

}  // namespace

int main(int argc, char** argv) {
    if (argc != 3) {
        std::cerr << "usage: collect_messages SOURCE_FOLDER OUT\n";
        return 2;
    }
    std::set<std::string> sentences;
    std::set<std::string> terms;
    for (const ww::lint::SourceFile& file : ww::lint::readSourceTree(argv[1])) {
        if (!isShown(file)) {
            continue;
        }
        for (const ww::lint::MessageInCode& message : ww::lint::messagesOf(file)) {
            if (hasWords(message.text)) {
                sentences.insert(message.text);
            }
        }
        const std::vector<std::string> words = ww::lint::termsOf(file);
        terms.insert(words.begin(), words.end());
    }
    std::ofstream out(argv[2]);
    out << "#include <QtGlobal>\n";
    for (const std::string& sentence : sentences) {
        out << "static const char* const message = QT_TRANSLATE_NOOP(\"Message\", \"" << sentence << "\");\n";
    }
    for (const std::string& term : terms) {
        out << "static const char* const term = QT_TRANSLATE_NOOP(\"Term\", \"" << term << "\");\n";
    }
    out.flush();
    if (!out) {
        std::cerr << "cannot write " << argv[2] << "\n";
        return 1;
    }
    return 0;
}
