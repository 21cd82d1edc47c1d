package neutralpoint.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import neutralpoint.authoring.DangerMatrix;
import neutralpoint.authoring.RuleReader;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.CatalogueFiles;
import neutralpoint.document.Json;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints what can be said: findings, causes, courses, cautions, dangers. */
@Command(name = "catalogue", mixinStandardHelpOptions = true, description = "Print what can be said.")
final class CatalogueCommand implements Callable<Integer> {
    enum Section { findings, causes, courses, cautions, dangers }

    private static final Path RULES = Path.of("rules");

    @Parameters(arity = "0..1", defaultValue = "findings", description = "findings, causes, courses, cautions or dangers")
    private Section section;

    @Option(names = "--format", defaultValue = "text", description = "text or json")
    private AssessCommand.Format format;

    @Override
    public Integer call() {
        if (section == Section.dangers) {
            dangers();
            return 0;
        }
        Map<String, String> entries = entries(CatalogueFiles.compiled());
        if (format == AssessCommand.Format.json) {
            System.out.print(Json.pretty(entries));
        } else {
            entries.forEach((id, words) -> System.out.println(id + "\n  " + words));
        }
        return 0;
    }

    /** Dangers with every way in which they are told, where the catalogue lies as it was written. */
    private void dangers() {
        boolean written = Files.isDirectory(RULES.resolve("catalogue"));
        DangerMatrix matrix = written ? new DangerMatrix(CatalogueFiles.fromFolder(RULES.resolve("catalogue")), RuleReader.all(RULES))
                : new DangerMatrix(CatalogueFiles.compiled(), List.of());
        List<String> untold = written ? matrix.untold() : List.of();
        if (format == AssessCommand.Format.json) {
            Map<String, Object> fields = new LinkedHashMap<>();
            fields.put("dangers", matrix.dangers());
            if (written) {
                fields.put("usedByNone", untold);
            }
            System.out.print(Json.pretty(fields));
            return;
        }
        System.out.print(matrix.text());
        if (!written) {
            System.out.println("\nHow each is told is known only in the project's own folder, beside rules/catalogue; run this there to see it.");
        } else {
            System.out.println("\nUsed by no danger:");
            (untold.isEmpty() ? List.of("nothing") : untold).forEach(line -> System.out.println("  " + line));
        }
    }

    private Map<String, String> entries(Catalogue c) {
        Map<String, String> out = new LinkedHashMap<>();
        switch (section) {
            case findings -> c.findings().values().forEach(f -> out.put(f.id(), f.ask()
                    + (f.options().isEmpty() ? " [" + f.unit() + "]" : " [" + String.join(", ", f.optionIds()) + "]")));
            case causes -> c.causes().values().forEach(x -> out.put(x.id(), x.title() + ". " + x.means()));
            case courses -> c.courses().values().forEach(x -> out.put(x.id(), x.title() + ". " + x.means()));
            case dangers -> throw new IllegalStateException("dangers are printed with their ways");
            case cautions -> c.cautions().values().forEach(x -> out.put(x.id(), x.text()));
        }
        return out;
    }
}
