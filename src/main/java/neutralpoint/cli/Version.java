package neutralpoint.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;
import picocli.CommandLine.IVersionProvider;

/** The version the build was given, which stands in {@code pom.xml} alone. */
public final class Version implements IVersionProvider {

    @Override
    public String[] getVersion() {
        return new String[] {"neutralpoint " + number()};
    }

    static String number() {
        try (InputStream in = Version.class.getResourceAsStream("/neutralpoint/version.properties")) {
            Properties properties = new Properties();
            properties.load(in);
            return properties.getProperty("version");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
