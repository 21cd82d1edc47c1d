package neutralpoint.document;

import java.io.StringWriter;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.core.util.Separators;

/** Writes maps, lists, strings and numbers as JSON, fields in the order of the map. */
public final class Json {
    private static final Separators SEPARATORS = Separators.createDefaultInstance()
            .withObjectNameValueSpacing(Separators.Spacing.AFTER)
            .withArrayEmptySeparator("").withObjectEmptySeparator("");

    private Json() {}

    /** On one line, for JSON Lines. */
    public static String line(Object value) {
        return write(value, ObjectWriteContext.empty());
    }

    /** Indented, with a line break at the end, for files. */
    public static String pretty(Object value) {
        DefaultIndenter indent = new DefaultIndenter("  ", "\n");
        PrettyPrinter printer = new DefaultPrettyPrinter(SEPARATORS).withArrayIndenter(indent).withObjectIndenter(indent);
        ObjectWriteContext context = new ObjectWriteContext.Base() {
            @Override
            public PrettyPrinter getPrettyPrinter() {
                return printer;
            }

            @Override
            public boolean hasPrettyPrinter() {
                return true;
            }
        };
        return write(value, context) + "\n";
    }

    private static String write(Object value, ObjectWriteContext context) {
        StringWriter out = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(context, out)) {
            write(value, json);
        }
        return out.toString();
    }

    private static void write(Object value, JsonGenerator json) {
        if (value instanceof Map<?, ?> map) {
            json.writeStartObject();
            map.forEach((name, field) -> {
                json.writeName(name.toString());
                write(field, json);
            });
            json.writeEndObject();
        } else if (value instanceof Collection<?> items) {
            json.writeStartArray();
            items.forEach(item -> write(item, json));
            json.writeEndArray();
        } else if (value instanceof Integer n) {
            json.writeNumber(n);
        } else if (value instanceof Double n) {
            writeNumber(n, json);
        } else if (value instanceof Boolean b) {
            json.writeBoolean(b);
        } else if (value instanceof Optional<?> field) {
            field.ifPresentOrElse(present -> write(present, json), json::writeNull);
        } else if (value instanceof OptionalDouble n) {
            n.ifPresentOrElse(present -> writeNumber(present, json), json::writeNull);
        } else {
            json.writeString(value.toString());
        }
    }

    private static void writeNumber(double value, JsonGenerator json) {
        if (value == Math.rint(value) && Math.abs(value) < 1e9) {
            json.writeNumber((long) value);
        } else {
            json.writeNumber(BigDecimal.valueOf(value).stripTrailingZeros().toPlainString());
        }
    }
}
