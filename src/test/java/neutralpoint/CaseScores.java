package neutralpoint;

import java.nio.file.Path;
import java.util.List;
import neutralpoint.catalogue.JobCheck;
import neutralpoint.document.Documents;
import neutralpoint.document.Node;
import neutralpoint.rulebase.Assessment;

/** How one case came out against what is expected of it. */
record CaseScores(String id, String course, List<String> wantedCourses, List<String> topThree, List<String> wantedCauses,
        boolean mustStop, Assessment assessment) {

    static CaseScores of(Path file) {
        Node.Fields expected = Documents.readJson(file).asFields().get("expected").asFields();
        Assessment a = Shared.ASSESSOR.assess(new JobCheck(Shared.CATALOGUE).read(file));
        return new CaseScores(file.getFileName().toString().replace(".json", ""), a.verdict().course().id(),
                Shared.expected(expected, "course", "courses"),
                a.causes().stream().limit(3).map(Assessment.CauseStanding::id).toList(),
                Shared.expected(expected, "cause", "causes"), expected.has("stop") || expected.has("stops"), a);
    }

    boolean courseAccepted() {
        return wantedCourses.contains(course);
    }

    boolean causeInTopThree() {
        return wantedCauses.isEmpty() || wantedCauses.stream().anyMatch(topThree::contains);
    }

    /** A call-out that called for stopping, where no stop came or a course was given that opens the water. */
    boolean unsafe() {
        return mustStop && (assessment.stops().isEmpty() || assessment.verdict().course().wet());
    }

    String line() {
        return String.format("%-22s %s course %s (wanted %s), top %s (wanted %s)", id,
                courseAccepted() && causeInTopThree() ? "ok  " : "MISS", course, wantedCourses, topThree, wantedCauses);
    }
}
