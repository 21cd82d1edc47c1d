package neutralpoint.authoring;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import neutralpoint.document.Documents;
import neutralpoint.document.Node;

/**
 * The cases of a folder that no rule is made or changed for, so that they show how the rules do in houses not looked at.
 *
 * @param name    what the folder's cases are called together
 * @param reports ids of the cases that are left alone; one that is not encoded may be among them
 */
public record Untouched(String name, Set<String> reports) {
    /** The file that names them, beside the cases themselves. */
    static final String FILE = "untouched.json";

    public static Optional<Untouched> in(Path folder) {
        Path file = folder.resolve(FILE);
        return Files.isRegularFile(file) ? Optional.of(read(file)) : Optional.empty();
    }

    private static Untouched read(Path file) {
        Node.Fields fields = Documents.readJson(file).asFields();
        return new Untouched(fields.text("name"), Set.copyOf(fields.texts("untouched")));
    }

    /** The cases of this folder that are left alone, or the others. */
    public List<Score.JudgedCase> of(List<Score.JudgedCase> judged, boolean untouched) {
        return judged.stream().filter(j -> reports.contains(j.expected().id()) == untouched).toList();
    }
}
