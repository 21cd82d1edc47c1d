package neutralpoint.job;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import neutralpoint.document.BadInput;
import neutralpoint.document.Decimals;
import neutralpoint.document.Nearest;
import neutralpoint.document.Node;
import neutralpoint.hydronics.emitter.RadiatorReading;

/** The table of radiators: its columns, how a row is read and checked, and how it is written. */
public final class RadiatorTable {
    private static final String CELSIUS = "celsius";

    private RadiatorTable() {}

    /**
     * One column.
     *
     * @param field  its name in a job file
     * @param title  its title in a table
     * @param unit   of a number; empty for a word
     */
    public record Column(String field, String title, String unit, double lowest, double highest) {}

    public static final List<Column> COLUMNS = List.of(
            new Column("name", "name", "", 0, 0),
            new Column("floor", "floor", "", 0, 0),
            new Column("leg", "leg", "", 0, 0),
            new Column("runMetres", "run", "m", 0, 200),
            new Column("type", "type", "", 0, 0),
            new Column("heightMillimetres", "height", "mm", 100, 2500),
            new Column("lengthMillimetres", "length", "mm", 100, 6000),
            new Column("valves", "valves", "", 0, 0),
            new Column("topCelsius", "top", CELSIUS, -5, 110),
            new Column("baseCelsius", "base", CELSIUS, -5, 110),
            new Column("flowTailCelsius", "flow tail", CELSIUS, -5, 110),
            new Column("returnTailCelsius", "return tail", CELSIUS, -5, 110));

    private static final Set<String> FIELDS = Set.copyOf(COLUMNS.stream().map(Column::field).toList());

    /** Reads the rows and refuses a name that comes twice. */
    public static List<Radiator> read(List<Node> rows) {
        List<Radiator> radiators = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (Node row : rows) {
            Radiator radiator = row(row.asFields().only(FIELDS));
            if (!names.add(radiator.name())) {
                throw new BadInput(row.where(), "\"" + radiator.name() + "\" is in the table twice; give each radiator a name of its own.");
            }
            radiators.add(radiator);
        }
        return List.copyOf(radiators);
    }

    /**
     * Rows put into a table. One of a name that is there takes the place of the row before, which completes it; others
     * come after it.
     */
    public static List<Radiator> together(List<Radiator> table, List<Radiator> rows) {
        Map<String, Radiator> byName = new LinkedHashMap<>();
        table.forEach(r -> byName.put(r.name(), r));
        rows.forEach(r -> byName.merge(r.name(), r, (before, fresh) -> fresh.completedBy(before)));
        return List.copyOf(byName.values());
    }

    private static Radiator row(Node.Fields row) {
        String name = row.text("name").replaceAll("[\\s\\p{Cntrl}]+", " ").strip();
        if (name.isEmpty()) {
            throw new BadInput(row.where(), "this radiator has no name; give the room it is in.");
        }
        Temperatures t = new Temperatures(number(row, "topCelsius"), number(row, "baseCelsius"), number(row, "flowTailCelsius"),
                number(row, "returnTailCelsius"));
        refuseImpossible(row, name, t);
        return new Radiator(name, word(row, "floor", Radiator.FLOORS), row.findText("leg").orElse("").strip(),
                number(row, "runMetres"), body(row, name), word(row, "valves", Radiator.VALVES), t);
    }

    /** Type and size are only kept together, so a part of them is asked to be completed rather than passed over. */
    private static Optional<RadiatorSize> body(Node.Fields row, String name) {
        String type = word(row, "type", RadiatorSize.TYPES);
        OptionalDouble height = number(row, "heightMillimetres");
        OptionalDouble length = number(row, "lengthMillimetres");
        List<String> missing = new ArrayList<>();
        if (type.equals("unknown")) {
            missing.add("type");
        }
        if (height.isEmpty()) {
            missing.add("height");
        }
        if (length.isEmpty()) {
            missing.add("length");
        }
        if (missing.size() == 3) {
            return Optional.empty();
        }
        if (!missing.isEmpty()) {
            throw new BadInput(row.where(), name + ": type, height and length are given together; "
                    + String.join(" and ", missing) + (missing.size() == 1 ? " is" : " are") + " missing.");
        }
        return Optional.of(new RadiatorSize(type, (int) Math.round(height.getAsDouble()), (int) Math.round(length.getAsDouble())));
    }

    private static String word(Node.Fields row, String field, Collection<String> valid) {
        String word = row.findText(field).orElse("").strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", "-");
        if (word.isEmpty()) {
            return "unknown";
        }
        if (!valid.contains(word)) {
            throw new BadInput(row.get(field).where(), "\"" + word + "\" is not a known word for " + field + Nearest.hint(word, valid));
        }
        return word;
    }

    private static OptionalDouble number(Node.Fields row, String field) {
        Optional<Node> node = row.find(field).filter(n -> !(n instanceof Node.Empty) && !(n instanceof Node.Text t && t.text().isBlank()));
        if (node.isEmpty()) {
            return OptionalDouble.empty();
        }
        Column c = COLUMNS.stream().filter(x -> x.field().equals(field)).findFirst().orElseThrow();
        return OptionalDouble.of(UnitConversion.plausible(node.get(), c.title(), c.unit(), c.lowest(), c.highest()));
    }

    /** The water in the flow tail is the hottest there is: nothing on the radiator can be hotter. */
    private static void refuseImpossible(Node.Fields row, String name, Temperatures t) {
        double hottest = Math.max(t.flowTailCelsius().orElse(200), t.returnTailCelsius().orElse(t.flowTailCelsius().orElse(200)));
        refuse(row, name, "base", t.baseCelsius(), hottest);
        refuse(row, name, "top", t.topCelsius(), hottest);
    }

    private static void refuse(Node.Fields row, String name, String what, OptionalDouble reading, double hottest) {
        if (reading.isPresent() && RadiatorReading.isHotterThanItsFeed(reading.getAsDouble(), hottest)) {
            throw new BadInput(row.get(what + "Celsius").where(), name + ": the " + what + " at " + Decimals.given(reading.getAsDouble())
                    + " cannot be hotter than its tails at " + Decimals.given(hottest) + " celsius; read both again.");
        }
    }

    /** A radiator as JSON fields; what is not known is left out. */
    public static Map<String, Object> fields(Radiator r) {
        Map<String, Object> out = new LinkedHashMap<>();
        out.put("name", r.name());
        out.put("floor", r.floor());
        if (!r.leg().isEmpty()) {
            out.put("leg", r.leg());
        }
        put(out, "runMetres", r.runMetres());
        r.body().ifPresent(b -> {
            out.put("type", b.type());
            out.put("heightMillimetres", b.heightMillimetres());
            out.put("lengthMillimetres", b.lengthMillimetres());
        });
        if (!r.valves().equals("unknown")) {
            out.put("valves", r.valves());
        }
        put(out, "topCelsius", r.temperatures().topCelsius());
        put(out, "baseCelsius", r.temperatures().baseCelsius());
        put(out, "flowTailCelsius", r.temperatures().flowTailCelsius());
        put(out, "returnTailCelsius", r.temperatures().returnTailCelsius());
        return out;
    }

    private static void put(Map<String, Object> out, String field, OptionalDouble value) {
        value.ifPresent(v -> out.put(field, v));
    }
}
