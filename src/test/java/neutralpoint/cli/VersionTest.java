package neutralpoint.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.xpath.XPathFactory;
import org.junit.jupiter.api.Test;

/** {@link Version} says what the pom says. */
@UsesStandardStreams
class VersionTest {

    @Test
    void theProgramTellsTheVersionThatThePomHolds() throws Exception {
        var pom = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(Path.of("pom.xml").toFile());
        String version = XPathFactory.newInstance().newXPath().evaluate("/project/version", pom);
        assertThat(version).isNotBlank();
        assertThat(Run.of("--version").out().strip()).isEqualTo("neutralpoint " + version);
    }
}
