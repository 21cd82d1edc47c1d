package neutralpoint.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import neutralpoint.authoring.CaseStudy;
import neutralpoint.authoring.RuleReader;
import neutralpoint.authoring.RuleText;
import neutralpoint.authoring.Untouched;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.CatalogueFiles;
import neutralpoint.catalogue.JobCheck;
import neutralpoint.document.BadInput;
import picocli.CommandLine.Option;

/** The folders that those who write rules work in. */
final class AuthoringOptions {
    private static final List<Path> USUAL_CASES = List.of(Path.of("cases"), Path.of("src/test/resources/published"));

    @Option(names = "--rules", paramLabel = "DIR", defaultValue = "rules", description = "folder of rules (default: ${DEFAULT-VALUE})")
    private Path rules;

    @Option(names = "--cases", paramLabel = "DIR", arity = "1..*",
            description = "folders of cases (default: cases, and the published reports where they are)")
    private List<Path> cases;

    Path rulesFolder() {
        if (!Files.isDirectory(rules)) {
            throw new BadInput(rules + " is not a folder; run this from the project's own folder, or give --rules DIR.");
        }
        return rules;
    }

    Catalogue catalogue() {
        return CatalogueFiles.fromFolder(rulesFolder().resolve("catalogue"));
    }

    List<RuleText> rules() {
        return RuleReader.all(rulesFolder());
    }

    Map<String, RuleText> rulesById() {
        return rules().stream().collect(Collectors.toMap(RuleText::id, Function.identity(), (a, b) -> a,
                LinkedHashMap::new));
    }

    List<CaseStudy> cases(JobCheck check) {
        List<CaseStudy> found = CaseStudy.under(caseFolders(), check);
        if (found.isEmpty()) {
            throw new BadInput("there are no cases to judge; run this from the project's own folder, or give --cases DIR.");
        }
        return found;
    }

    /** By folder, the cases that no rule is changed for. */
    Map<Path, Untouched> untouched() {
        Map<Path, Untouched> found = new LinkedHashMap<>();
        caseFolders().forEach(folder -> Untouched.in(folder).ifPresent(u -> found.put(folder, u)));
        return found;
    }

    private List<Path> caseFolders() {
        return cases == null ? USUAL_CASES.stream().filter(Files::isDirectory).toList() : cases;
    }
}
