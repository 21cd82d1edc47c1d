package neutralpoint.build;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import neutralpoint.authoring.ReferenceCheck;
import neutralpoint.authoring.RuleReader;
import neutralpoint.authoring.RuleSentence;
import neutralpoint.authoring.RuleText;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.CatalogueFiles;
import neutralpoint.document.Json;

/**
 * Run by the build: cross-checks the catalogue and every id the rules and Java name, then writes the compiled
 * catalogue, what the rules come to, and the rules for the rule compiler. A misspelt id ends the build with its file and line.
 */
public final class CompileCatalogue {
    private CompileCatalogue() {}

    /**
     * @param args the rules folder, the folder of compiled classes and the folder from which the rules are compiled
     */
    public static void main(String[] args) throws IOException {
        Path rules = Path.of(args[0]);
        Path out = Path.of(args[1]).resolve("neutralpoint");
        Catalogue catalogue = CatalogueFiles.fromFolder(rules.resolve("catalogue"));
        new VocabularyCheck(catalogue).check();
        List<RuleText> written = RuleReader.all(rules);
        new ReferenceCheck(catalogue).check(written);
        Files.createDirectories(out);
        Files.writeString(out.resolve("catalogue.json"), Json.line(CatalogueFiles.compile(rules.resolve("catalogue"))));
        Files.writeString(out.resolve("moves.json"), Json.line(ReferenceCheck.moves(written)));
        Files.writeString(out.resolve("absent.json"), Json.line(ReferenceCheck.absent(written)));
        Files.writeString(out.resolve("sentences.json"), Json.line(RuleSentence.made(written, catalogue)));
        Files.writeString(out.resolve("rule-count.txt"), String.valueOf(written.size()));
        stage(rules, Path.of(args[2]));
    }

    /** Lays the rule files out as the rule compiler wants them: each in the folder of its package, with none below. */
    private static void stage(Path rules, Path stage) throws IOException {
        for (Path file : RuleReader.files(rules)) {
            Path folder = Files.createDirectories(stage.resolve(rules.relativize(file).getName(0)));
            Files.copy(file, folder.resolve(file.getFileName()));
        }
    }
}
