// Keeps clang-tidy's checks off the headers of others. By itself clang-tidy 14 matches every check with all
// that the standard library, Qt and nlohmann-json declare, and then drops what it found there: two thirds of
// its time.
#include <clang/AST/ASTConsumer.h>
#include <clang/AST/ASTContext.h>
#include <clang/Basic/SourceManager.h>
#include <clang/Frontend/CompilerInstance.h>
#include <clang/Frontend/FrontendPluginRegistry.h>

namespace {

/// Gathers what isn't in a system header (by where a macro is used, not where it is from), and has the checks
/// see that.
class Ours : public clang::ASTConsumer {
public:
    explicit Ours(const clang::SourceManager& of) : sources(of) {}

    bool HandleTopLevelDecl(clang::DeclGroupRef group) override {
        for (clang::Decl* declaration : group)
            if (!sources.isInSystemHeader(declaration->getLocation())) ours.push_back(declaration);
        return true;
    }
    void HandleTranslationUnit(clang::ASTContext& context) override { context.setTraversalScope(ours); }

private:
    const clang::SourceManager& sources;
    std::vector<clang::Decl*> ours;
};

class OnlyOurs : public clang::PluginASTAction {
    std::unique_ptr<clang::ASTConsumer> CreateASTConsumer(clang::CompilerInstance& compiler,
                                                          llvm::StringRef) override {
        return std::make_unique<Ours>(compiler.getSourceManager());
    }
    bool ParseArgs(const clang::CompilerInstance&, const std::vector<std::string>&) override { return true; }
    ActionType getActionType() override { return AddBeforeMainAction; }
};

const clang::FrontendPluginRegistry::Add<OnlyOurs> registered("only-ours",
                                                              "checks see only what isn't a system header's");

} // namespace
