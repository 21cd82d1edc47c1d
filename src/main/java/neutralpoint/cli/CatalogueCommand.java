package neutralpoint.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.CatalogueFiles;
import neutralpoint.document.Json;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints what can be said: findings, causes, courses, cautions. */
@Command(name = "catalogue", mixinStandardHelpOptions = true, description = "Print what can be said.")
final class CatalogueCommand implements Callable<Integer> {
    enum Section { findings, causes, courses, cautions }

    @Parameters(arity = "0..1", defaultValue = "findings", description = "findings, causes, courses or cautions")
    private Section section;

    @Option(names = "--format", defaultValue = "text", description = "text or json")
    private AssessCommand.Format format;

    @Override
    public Integer call() {
        Map<String, String> entries = entries(CatalogueFiles.compiled());
        if (format == AssessCommand.Format.json) {
            System.out.print(Json.pretty(entries));
        } else {
            entries.forEach((id, words) -> System.out.println(id + "\n  " + words));
        }
        return 0;
    }

    private Map<String, String> entries(Catalogue c) {
        Map<String, String> out = new LinkedHashMap<>();
        switch (section) {
            case findings -> c.findings().values().forEach(f -> out.put(f.id(), f.ask()
                    + (f.options().isEmpty() ? " [" + f.unit() + "]" : " [" + String.join(", ", f.optionIds()) + "]")));
            case causes -> c.causes().values().forEach(x -> out.put(x.id(), x.title() + ". " + x.means()));
            case courses -> c.courses().values().forEach(x -> out.put(x.id(), x.title() + ". " + x.means()));
            case cautions -> c.cautions().values().forEach(x -> out.put(x.id(), x.text()));
        }
        return out;
    }
}
