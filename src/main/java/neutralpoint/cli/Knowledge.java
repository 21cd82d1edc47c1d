package neutralpoint.cli;

import java.util.concurrent.CompletableFuture;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.CatalogueFiles;
import neutralpoint.catalogue.JobCheck;
import neutralpoint.consult.Lookahead;
import neutralpoint.rulebase.Assessor;
import neutralpoint.rulebase.RuleBase;

/** The catalogue and everything that is built on it, loaded once for a command. */
record Knowledge(RuleBase rules, Catalogue catalogue, JobCheck check, Assessor assessor, Lookahead lookahead) {

    static Knowledge load() {
        CompletableFuture<RuleBase> loading = CompletableFuture.supplyAsync(RuleBase::load);
        Catalogue catalogue = CatalogueFiles.compiled();
        RuleBase rules = loading.join();
        Assessor assessor = new Assessor(rules, catalogue);
        return new Knowledge(rules, catalogue, new JobCheck(catalogue), assessor, new Lookahead(assessor, catalogue));
    }
}
