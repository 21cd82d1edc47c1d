package neutralpoint.authoring;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import neutralpoint.catalogue.CatalogueFiles;
import neutralpoint.document.BadInput;
import neutralpoint.rulebase.RuleBase;
import org.drools.model.codegen.ExecutableModelProject;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;
import org.kie.api.builder.ReleaseId;

/** Compiles a folder of rules while the program runs. Takes half a minute or so; a call-out never needs it. */
public final class RuleCompiler {
    private RuleCompiler() {}

    /** @param written the rules as read, for what each finding can move */
    public static RuleBase compile(Path rules, List<RuleText> written) {
        KieServices services = KieServices.get();
        ReleaseId id = services.newReleaseId("neutralpoint", "rules-to-compare", "1");
        KieFileSystem files = services.newKieFileSystem().generateAndWritePomXML(id);
        try {
            for (Path file : RuleReader.files(rules)) {
                files.write("src/main/resources/rules/" + rules.relativize(file), Files.readString(file));
            }
        } catch (IOException e) {
            throw new BadInput(rules + " could not be read; give the folder that holds the rules.", e);
        }
        KieBuilder builder = services.newKieBuilder(files).buildAll(ExecutableModelProject.class);
        List<Message> errors = builder.getResults().getMessages(Message.Level.ERROR);
        if (!errors.isEmpty()) {
            throw new BadInput("the rules in " + rules + " do not compile: " + errors.get(0).getText());
        }
        return RuleBase.of(services.newKieContainer(id).getKieBase(), ReferenceCheck.moves(written), ReferenceCheck.absent(written),
                RuleSentence.made(written, CatalogueFiles.fromFolder(rules.resolve("catalogue"))));
    }
}
