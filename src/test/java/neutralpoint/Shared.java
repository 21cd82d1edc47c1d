package neutralpoint;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import neutralpoint.authoring.CaseStudy;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.CatalogueFiles;
import neutralpoint.catalogue.JobCheck;
import neutralpoint.document.Documents;
import neutralpoint.job.Job;
import neutralpoint.job.JobFile;
import neutralpoint.rulebase.Assessment;
import neutralpoint.rulebase.Assessor;
import neutralpoint.rulebase.RuleBase;

/** The catalogue and the rules, loaded once for all tests. */
public final class Shared {
    public static final Catalogue CATALOGUE = CatalogueFiles.compiled();
    public static final RuleBase RULES = RuleBase.load();
    public static final Assessor ASSESSOR = new Assessor(RULES, CATALOGUE);

    private Shared() {}

    public static Job job(String json) {
        return new JobCheck(CATALOGUE).check(JobFile.draft(Documents.json("test", json, 1), "test"));
    }

    public static List<Path> files(String folder, String ending) {
        try (Stream<Path> files = Files.walk(Path.of(folder))) {
            return files.filter(f -> f.toString().endsWith(ending) && !f.toString().contains("schema")).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The case studies that are there to teach with. */
    public static List<Path> teachingCases() {
        return files("cases", ".json").stream().filter(f -> f.getParent().endsWith("cases")).toList();
    }

    /** The case studies and the published reports. */
    public static List<CaseStudy> allCases() {
        return Cases.ALL;
    }

    /** A case study judged, once for all tests. */
    public static Assessment assessed(CaseStudy study) {
        return Cases.ASSESSED.computeIfAbsent(study.file(), file -> ASSESSOR.assess(study.job()));
    }

    /** Read when first asked for. */
    private static final class Cases {
        static final List<CaseStudy> ALL =
                CaseStudy.under(List.of(Path.of("cases"), Path.of("src/test/resources/published")), new JobCheck(CATALOGUE));
        static final Map<Path, Assessment> ASSESSED = new ConcurrentHashMap<>();
    }

    /** Copies a folder with all it holds. */
    public static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path target = to.resolve(from.relativize(file));
                Files.createDirectories(target.getParent());
                Files.copy(file, target);
            }
        }
    }
}
