package neutralpoint.authoring;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import neutralpoint.catalogue.JobCheck;
import neutralpoint.document.BadInput;
import neutralpoint.document.Documents;
import neutralpoint.document.Node;
import neutralpoint.job.Job;
import neutralpoint.rulebase.Assessment;

/**
 * A call-out with the verdict that is expected of it.
 *
 * @param courses any one of these courses is right; empty when none is stated
 * @param causes  the causes that were really there; empty when none is stated
 * @param never   courses that must not be recommended
 * @param stops   true when work must stop
 */
public record CaseStudy(Path file, Job job, List<String> courses, List<String> causes, List<String> never, boolean stops) {

    public String id() {
        return job.id();
    }

    /** Every case under the folders given, in the order of their names. */
    public static List<CaseStudy> under(List<Path> folders, JobCheck check) {
        List<CaseStudy> cases = new ArrayList<>();
        for (Path folder : folders) {
            try (Stream<Path> files = Files.walk(folder)) {
                files.filter(CaseStudy::isCase).sorted().map(f -> read(f, check)).forEach(cases::add);
            } catch (IOException e) {
                throw new BadInput(folder + " could not be read; give a folder that holds case files.", e);
            }
        }
        return List.copyOf(cases);
    }

    private static boolean isCase(Path file) {
        return file.toString().endsWith(".json") && !file.toString().endsWith(".schema.json") && !file.endsWith(Untouched.FILE);
    }

    public static CaseStudy read(Path file, JobCheck check) {
        Node.Fields expected = Documents.readJson(file).asFields().find("expected").map(Node::asFields)
                .orElseThrow(() -> new BadInput(file + " says nothing of what is expected, so it is no case study."));
        boolean stops = !expected.texts("stops").isEmpty() || expected.findText("stop").map("yes"::equals).orElse(false);
        return new CaseStudy(file, check.read(file), either(expected, "course", "courses"), either(expected, "cause", "causes").stream().map(check.renames()::cause).toList(),
                expected.texts("neverCourses"), stops);
    }

    private static List<String> either(Node.Fields expected, String one, String several) {
        return expected.findText(one).map(List::of).orElseGet(() -> expected.texts(several));
    }

    public boolean accepts(Assessment a) {
        return courses.isEmpty() || courses.contains(a.verdict().course().id());
    }

    /** The place of the first true cause in the ranking, from 1; 0 when none is stated or ranked. */
    public int rank(List<String> ranking) {
        return ranking.stream().filter(causes::contains).findFirst().map(c -> ranking.indexOf(c) + 1).orElse(0);
    }

    /** True when work had to stop and did not or the water is opened all the same, or when a course is given that must never be. */
    public boolean isUnsafe(Assessment a) {
        boolean missedStop = stops && (a.stops().isEmpty() || a.verdict().course().wet() && !accepts(a));
        return missedStop || never.contains(a.verdict().course().id());
    }
}
