package neutralpoint.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The start scripts for Windows and for everything else start the same program in the same way. */
class LauncherTest {
    private static final String POSIX = read("neutralpoint");
    private static final String WINDOWS = read("neutralpoint.cmd");

    @Test
    void bothGiveTheJavaMachineTheSameOptions() {
        assertThat(options(WINDOWS)).contains("-XX:+UseSerialGC").isEqualTo(options(POSIX));
    }

    @Test
    void bothNameTheSameJarsAndTheSameMainClass() {
        assertThat(found("lib/[\\w*./-]+", WINDOWS)).containsExactly("lib/*", "lib/authoring/*", "lib/quick-start.jsa")
                .isEqualTo(found("lib/[\\w*./-]+", POSIX));
        assertThat(found("neutralpoint\\.cli\\.\\w+", WINDOWS)).containsExactly(Main.class.getName())
                .isEqualTo(found("neutralpoint\\.cli\\.\\w+", POSIX));
    }

    @Test
    void theSameCommandsGetTheAuthorsJars() {
        Set<String> posix = Set.of(group("^ *([\\w|]+)\\) more=", POSIX).split("\\|"));
        assertThat(posix).contains("rules").isEqualTo(Set.of(group("in \\(([\\w ]+)\\) do .* set more=", WINDOWS).split(" ")));
    }

    @Test
    void theSameWordsTellOfALongList() {
        Set<String> posix = Pattern.compile("\" ([\\w-]+) ?\"\\*").matcher(POSIX.replace("*\"", "\"")).results().map(m -> m.group(1)).collect(Collectors.toSet());
        assertThat(posix).containsExactlyInAnyOrder("-", "--stock").isEqualTo(
                Pattern.compile("\"%%~a\"==\"([\\w-]+)\" set quickly=$", Pattern.MULTILINE).matcher(WINDOWS).results()
                        .map(m -> m.group(1)).collect(Collectors.toSet()));
    }

    @Test
    void bothTakeTheJavaThatJavaHomeNames() {
        assertThat(POSIX).contains("JAVA_HOME");
        assertThat(WINDOWS).contains("JAVA_HOME");
    }

    private static Set<String> options(String script) {
        return found("(?<=[ =\"])(-[XD][\\w:+=.-]*|--[a-z]+-[a-z-]+=[\\w-]+)", script.replaceAll("%java% ", "java "));
    }

    private static Set<String> found(String what, String script) {
        return Pattern.compile(what).matcher(script).results().map(m -> m.group()).collect(Collectors.toCollection(TreeSet::new));
    }

    private static String group(String what, String script) {
        return Pattern.compile(what, Pattern.MULTILINE).matcher(script).results().findFirst().orElseThrow().group(1);
    }

    /** The script with its paths written in one way. */
    private static String read(String name) {
        try {
            return Files.readString(Path.of("src/launcher", name)).replace('\\', '/');
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}
