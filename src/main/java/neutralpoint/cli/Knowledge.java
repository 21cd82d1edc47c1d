package neutralpoint.cli;

import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.CatalogueFiles;
import neutralpoint.catalogue.JobCheck;
import neutralpoint.consult.QuestionChooser;
import neutralpoint.rulebase.Assessor;
import neutralpoint.rulebase.RuleBase;

/** The catalogue and everything that is built on it, loaded once for a command; the rules load while jobs are read. */
final class Knowledge {
    private final Catalogue catalogue;
    private final CompletableFuture<RuleBase> rules;
    private final CompletableFuture<Assessor> assessor;

    private Knowledge(Catalogue catalogue, CompletableFuture<RuleBase> rules) {
        this.catalogue = catalogue;
        this.rules = rules;
        this.assessor = rules.thenApply(loaded -> new Assessor(loaded, catalogue));
    }

    static Knowledge load() {
        CompletableFuture<RuleBase> loading = CompletableFuture.supplyAsync(RuleBase::load);
        return new Knowledge(CatalogueFiles.compiled(), loading);
    }

    RuleBase rules() {
        return loaded(rules);
    }

    Catalogue catalogue() {
        return catalogue;
    }

    JobCheck check() {
        return new JobCheck(catalogue);
    }

    Assessor assessor() {
        return loaded(assessor);
    }

    QuestionChooser lookahead() {
        return new QuestionChooser(assessor(), catalogue);
    }

    private static <T> T loaded(CompletableFuture<T> loading) {
        try {
            return loading.join();
        } catch (CompletionException e) {
            throw e.getCause() instanceof RuntimeException cause ? cause : e;
        }
    }
}
