package neutralpoint.cli;

import java.util.concurrent.CompletableFuture;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.CatalogueFiles;
import neutralpoint.catalogue.JobCheck;
import neutralpoint.consult.Lookahead;
import neutralpoint.rulebase.Assessor;
import neutralpoint.rulebase.RuleBase;

/** The catalogue and everything that is built on it, loaded once for a command. */
record Knowledge(Catalogue catalogue, JobCheck check, Assessor assessor, Lookahead lookahead) {

    static Knowledge load() {
        CompletableFuture<RuleBase> rules = CompletableFuture.supplyAsync(RuleBase::load);
        Catalogue catalogue = CatalogueFiles.compiled();
        Assessor assessor = new Assessor(rules.join(), catalogue);
        return new Knowledge(catalogue, new JobCheck(catalogue), assessor, new Lookahead(assessor, catalogue));
    }
}
