package neutralpoint.document;

import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.TokenStreamFactory;
import tools.jackson.dataformat.yaml.YAMLFactory;

/** The YAML reader, in a class of its own: only authors read YAML, and a call-out starts without its library. */
final class Yaml {
    private Yaml() {}

    static TokenStreamFactory factory(StreamReadConstraints limits) {
        return YAMLFactory.builder().streamReadConstraints(limits).build();
    }
}
