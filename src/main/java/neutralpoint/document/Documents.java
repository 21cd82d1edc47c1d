package neutralpoint.document;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.TokenStreamFactory;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.json.JsonFactory;

/** Reads JSON and YAML strictly into {@link Node}s; every refusal names the file and the line. */
public final class Documents {
    /** The largest file that is read, in bytes. A call-out is a few kilobytes. */
    public static final int LARGEST_FILE_BYTES = 2_000_000;

    private static final StreamReadConstraints LIMITS = StreamReadConstraints.builder()
            .maxNestingDepth(16)
            .maxStringLength(20_000)
            .maxNameLength(200)
            .maxNumberLength(40)
            .maxDocumentLength(LARGEST_FILE_BYTES)
            .build();

    private Documents() {}

    /** Reads a JSON file, refusing one that is missing, unreadable, too large or not JSON. */
    public static Node readJson(Path file) {
        return json(file.toString(), readBytes(file));
    }

    /** Reads a YAML file under the same limits. */
    public static Node readYaml(Path file) {
        return yaml(file.toString(), decode(file.toString(), readBytes(file)));
    }

    public static Node json(String name, byte[] bytes) {
        return json(name, decode(name, bytes), 1);
    }

    /** Reads one JSON value; {@code firstLine} is the line of the file the text begins on. */
    public static Node json(String name, String text, int firstLine) {
        if (text.isBlank()) {
            throw new BadInput(new Where(name, 0), "the file is empty; a call-out in JSON belongs there.");
        }
        JsonFactory factory = JsonFactory.builder().streamReadConstraints(LIMITS).build();
        return parse(factory, name, text, firstLine, "JSON");
    }

    public static Node yaml(String name, String text) {
        return parse(Yaml.factory(LIMITS), name, text, 1, "YAML");
    }

    public static String decode(String name, byte[] bytes) {
        if (bytes.length > LARGEST_FILE_BYTES) {
            throw tooLarge(name);
        }
        try {
            String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
            return text.startsWith("\uFEFF") ? text.substring(1) : text;
        } catch (CharacterCodingException e) {
            throw new BadInput(name + " is not UTF-8 text; save it again as UTF-8.", e);
        }
    }

    public static byte[] readBytes(Path file) {
        try {
            if (Files.isDirectory(file)) {
                throw new BadInput(file + " is a folder; name a file in it.");
            }
            if (Files.size(file) > LARGEST_FILE_BYTES) {
                throw tooLarge(file.toString());
            }
            return Files.readAllBytes(file);
        } catch (NoSuchFileException e) {
            throw new BadInput(file + " does not exist; check the name and the folder.", e);
        } catch (AccessDeniedException e) {
            throw new BadInput(file + " may not be read; check who owns it and its permissions.", e);
        } catch (IOException e) {
            throw new BadInput(file + " could not be read (" + e.getMessage() + ").", e);
        }
    }

    private static BadInput tooLarge(String name) {
        return new BadInput(name + " is larger than " + LARGEST_FILE_BYTES / 1_000_000
                + " MB; a call-out is a few kilobytes, so this is not one.");
    }

    private static Node parse(TokenStreamFactory factory, String name, String text, int firstLine, String language) {
        try (JsonParser parser = factory.createParser(ObjectReadContext.empty(), text)) {
            TreeReader reader = new TreeReader(parser, name, firstLine);
            JsonToken first = parser.nextToken();
            Node root = first == null ? new Node.Empty(new Where(name, 0)) : reader.value(first);
            if (parser.nextToken() != null) {
                throw new BadInput(reader.here(), "there is more text after the end of the " + language + "; remove it.");
            }
            return root;
        } catch (StreamConstraintsException e) {
            throw new BadInput(name + " is nested too deeply or holds a value too long for a call-out.", e);
        } catch (JacksonException e) {
            int line = e.getLocation() == null ? 0 : Math.max(0, e.getLocation().getLineNr());
            String what = e.getOriginalMessage().toLowerCase(java.util.Locale.ROOT).contains("end-of-input")
                    ? "the " + language + " breaks off before it is complete; the file may be cut short."
                    : "this is not valid " + language + "; look for a missing quote, comma, bracket or indent near here.";
            throw new BadInput(new Where(name, line == 0 ? 0 : line + firstLine - 1), what);
        }
    }

    private record TreeReader(JsonParser parser, String file, int firstLine) {

        Where here() {
            return new Where(file, parser.currentTokenLocation().getLineNr() + firstLine - 1);
        }

        Node value(JsonToken token) {
            Where where = here();
            return switch (token) {
                case START_OBJECT -> fields(where);
                case START_ARRAY -> items(where);
                case VALUE_STRING -> new Node.Text(where, parser.getString());
                case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT ->
                        new Node.Numeral(where, parser.getDoubleValue(), parser.getString());
                case VALUE_TRUE -> new Node.Flag(where, true);
                case VALUE_FALSE -> new Node.Flag(where, false);
                default -> new Node.Empty(where);
            };
        }

        private Node fields(Where where) {
            Map<String, Node> fields = new LinkedHashMap<>();
            Map<String, Where> names = new LinkedHashMap<>();
            while (parser.nextToken() != JsonToken.END_OBJECT) {
                String name = parser.currentName();
                Where place = here();
                if (fields.containsKey(name)) {
                    throw new BadInput(place, "\"" + name + "\" stands twice; keep one of them.");
                }
                names.put(name, place);
                fields.put(name, value(parser.nextToken()));
            }
            return new Node.Fields(where, fields, names);
        }

        private Node items(Where where) {
            List<Node> items = new ArrayList<>();
            for (JsonToken t = parser.nextToken(); t != JsonToken.END_ARRAY; t = parser.nextToken()) {
                items.add(value(t));
            }
            return new Node.Items(where, List.copyOf(items));
        }
    }
}
