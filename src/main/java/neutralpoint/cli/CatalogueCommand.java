package neutralpoint.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import neutralpoint.authoring.DangerMatrix;
import neutralpoint.authoring.DangerMatrixText;
import neutralpoint.authoring.RuleReader;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.CatalogueFiles;
import neutralpoint.document.BadInput;
import neutralpoint.document.Json;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints what can be said: findings, causes, courses, cautions, dangers. */
@Command(name = "catalogue", mixinStandardHelpOptions = true, description = "Print what can be said.")
final class CatalogueCommand implements Callable<Integer> {
    enum Section { findings, causes, courses, cautions, dangers }

    @Parameters(arity = "0..1", defaultValue = "findings", description = "findings, causes, courses, cautions or dangers")
    private Section section;

    @Option(names = "--format", defaultValue = "text", description = "text or json")
    private AssessCommand.AssessmentFormat format;

    @Option(names = "--rules", paramLabel = "DIR", description = "dangers: folder of rules (default: rules, where it is)")
    private Path rules;

    @Override
    public Integer call() {
        if (section == Section.dangers) {
            return dangers();
        }
        Map<String, String> entries = entries(CatalogueFiles.compiled());
        if (format == AssessCommand.AssessmentFormat.json) {
            System.out.print(Json.pretty(entries));
        } else {
            entries.forEach((id, words) -> System.out.println(id + "\n  " + words));
        }
        return 0;
    }

    private int dangers() {
        DangerMatrix matrix = written();
        if (format == AssessCommand.AssessmentFormat.json) {
            System.out.print(Json.pretty(DangerMatrixText.json(matrix)));
        } else {
            DangerMatrixText.lines(matrix).forEach(System.out::println);
        }
        return 0;
    }

    /** Of the catalogue as it is written where the project's folder is at hand, and otherwise of the compiled one. */
    private DangerMatrix written() {
        Path project = rules == null ? Path.of("rules") : rules;
        Path folder = project.resolve("catalogue");
        if (Files.isRegularFile(folder.resolve("dangers.yaml"))) {
            return DangerMatrix.of(CatalogueFiles.fromFolder(folder), RuleReader.all(project));
        }
        if (rules != null) {
            throw new BadInput(rules + " has no catalogue/dangers.yaml; run this from the project's own folder, or give --rules DIR.");
        }
        return DangerMatrix.of(CatalogueFiles.compiled(), List.of());
    }

    private Map<String, String> entries(Catalogue c) {
        Map<String, String> out = new LinkedHashMap<>();
        switch (section) {
            case findings -> c.findings().values().forEach(f -> out.put(f.id(), f.ask()
                    + (f.options().isEmpty() ? " [" + f.unit() + "]" : " [" + String.join(", ", f.optionIds()) + "]")));
            case causes -> c.causes().values().forEach(x -> out.put(x.id(), x.title() + ". " + x.means()));
            case courses -> c.courses().values().forEach(x -> out.put(x.id(), x.title() + ". " + x.means()));
            case cautions -> c.cautions().values().forEach(x -> out.put(x.id(), x.text()));
            case dangers -> throw new IllegalStateException("dangers are printed as a matrix");
        }
        return out;
    }
}
