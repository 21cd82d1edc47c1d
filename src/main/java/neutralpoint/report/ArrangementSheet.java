package neutralpoint.report;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import neutralpoint.catalogue.ArrangementHandling;
import neutralpoint.catalogue.ArrangementKind;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.Finding;
import neutralpoint.catalogue.Ids.TraitId;
import neutralpoint.report.schematic.SchematicFactory;
import neutralpoint.report.schematic.SystemDrawing;
import neutralpoint.report.text.DisplayOptions;
import neutralpoint.report.text.Wrap;
import neutralpoint.rulebase.Assessment;
import neutralpoint.workings.Workings;

/**
 * The double-check before anybody closes a valve: what the system is, its drawing, its figures, and beside each other
 * how an open vent and a sealed side would be handled.
 */
public final class ArrangementSheet {
    /** Below this two columns are too narrow to read; one then stands under the other. */
    private static final int TWO_COLUMNS = 76;
    private static final int GAP = 2;

    private final Assessment a;
    private final Catalogue catalogue;
    private final int width;
    private final StringBuilder out = new StringBuilder();

    /**
     * One part of the handling.
     *
     * @param lastFirst true where what was done last is undone first
     */
    private record Topic(String heading, Function<ArrangementHandling, List<String>> lines, boolean lastFirst) {}

    private static final List<Topic> TOPICS = List.of(
            new Topic("Isolate", ArrangementHandling::isolate, false),
            new Topic("Connect", ArrangementHandling::connect, false),
            new Topic("Fill, and keep it out of the mains", ArrangementHandling::fill, false),
            new Topic("Never close", ArrangementHandling::neverClose, false),
            new Topic("Level or pressure", ArrangementHandling::level, false),
            new Topic("Put back, in this order", ArrangementHandling::putBack, true));

    private ArrangementSheet(Assessment a, Catalogue catalogue, int width) {
        this.a = a;
        this.catalogue = catalogue;
        this.width = Math.max(DisplayOptions.NARROWEST, Math.min(SystemDrawing.WIDEST, width));
    }

    /**
     * @param settling the observation that would make the system more certain, if there is one
     * @param width    columns, 39 to 120; the drawing needs 60
     * @param plain    no characters beyond ASCII in the drawing
     */
    public static String of(Assessment a, Catalogue catalogue, Optional<Finding> settling, int width, boolean plain) {
        ArrangementSheet sheet = new ArrangementSheet(a, catalogue, width);
        sheet.recognised(settling);
        sheet.drawing(plain);
        sheet.checks();
        sheet.handling();
        return sheet.out.toString().stripTrailing();
    }

    private void drawing(boolean plain) {
        out.append('\n');
        if (width < SystemDrawing.NARROWEST) {
            line("The drawing needs " + SystemDrawing.NARROWEST + " columns; turn the screen or widen it to see it.", "");
        } else {
            out.append(SystemDrawing.of(SchematicFactory.of(a, catalogue), width, plain).stripTrailing()).append('\n');
        }
    }

    private void recognised(Optional<Finding> settling) {
        a.stops().forEach(s -> StopLines.of(s).forEach(l -> out.append(Wrap.keepingIndent(width, l)).append('\n')));
        Assessment.RecognisedSystem system = a.arrangement();
        line("System: " + system.inWords() + ", " + Math.round(system.share() * 100) + " in 100.", "        ");
        line("Known by: " + catalogue.arrangement(system.id()).knownBy(), "          ");
        system.features().forEach(f -> line("With: " + catalogue.arrangement(f).title(), "      "));
        system.contradictions().forEach(c -> line("- look again: " + c, "  "));
        if (!system.contradictions().isEmpty()) {
            line("Close no valve until these have been looked at again.", "");
        }
        settling.ifPresentOrElse(f -> line("Would settle it: " + f.ask() + " " + f.how(), "  "), () -> line(switch (system.status()) {
            case "settled" -> "Nothing more is needed to be sure of it.";
            case "likely" -> "Nothing left to look at would make it surer.";
            default -> "Nothing left to look at would make it surer; go by the more cautious of the two below.";
        }, ""));
    }

    private void checks() {
        heading("Checks");
        a.workedOut().forEach(w -> line(String.format("%-4s  %s", w.grade().word(), w.says()), "      "));
        Workings.waiting(a.known(), isSealed()).forEach(check -> line("open  " + check.title() + ": "
                + check.missing().stream().map(id -> catalogue.finding(id).ask()).collect(Collectors.joining(" ")), "      "));
    }

    private void handling() {
        if (a.paths().reliefState().equals("shut")) {
            heading("Isolate, connect and fill");
            line("Nothing, while the way of relief is shut or missing: what it wants first stands at the top.", "");
            return;
        }
        ArrangementKind open = likeliest(TraitId.OPEN_VENTED);
        ArrangementKind sealed = likeliest(TraitId.SEALED);
        boolean isSealed = isSealed();
        boolean sure = a.arrangement().status().equals("settled") || a.arrangement().status().equals("likely");
        String left = "IF OPEN-VENTED" + (sure && !isSealed ? " (this one)" : "") + ": " + title(open);
        String right = "IF SEALED" + (sure && isSealed ? " (this one)" : "") + ": " + title(sealed);
        ArrangementHandling openCare = catalogue.handlingOf(open.id()).orElseThrow();
        ArrangementHandling sealedCare = catalogue.handlingOf(sealed.id()).orElseThrow();
        out.append('\n');
        if (width >= TWO_COLUMNS) {
            beside(List.of(left), List.of(right));
            TOPICS.forEach(t -> {
                heading(t.heading());
                beside(dashed(t, openCare, !isSealed || !sure), dashed(t, sealedCare, isSealed || !sure));
            });
        } else {
            under(left, openCare, !isSealed || !sure);
            out.append('\n');
            under(right, sealedCare, isSealed || !sure);
        }
        heading("Why");
        line(openCare.because(), "");
        line(sealedCare.because(), "");
    }

    private void under(String title, ArrangementHandling care, boolean withFeatures) {
        line(title, "");
        TOPICS.forEach(t -> {
            heading(t.heading());
            dashed(t, care, withFeatures).forEach(l -> line(l, "  "));
        });
    }

    /** The lines of a system and, where they apply, of its features. */
    private List<String> dashed(Topic topic, ArrangementHandling care, boolean withFeatures) {
        List<String> lines = new ArrayList<>(topic.lines().apply(care));
        if (withFeatures) {
            a.arrangement().features().forEach(f -> catalogue.handlingOf(f).ifPresent(c -> lines.addAll(topic.lines().apply(c))));
        }
        if (topic.lastFirst()) {
            Collections.reverse(lines);
        }
        return lines.stream().map(l -> "- " + l).toList();
    }

    private void beside(List<String> left, List<String> right) {
        int half = (width - GAP) / 2;
        List<String> l = wrapped(left, half);
        List<String> r = wrapped(right, width - half - GAP);
        for (int i = 0; i < Math.max(l.size(), r.size()); i++) {
            String row = (i < l.size() ? l.get(i) : "") + " ".repeat(half + GAP - (i < l.size() ? l.get(i).length() : 0));
            out.append((row + (i < r.size() ? r.get(i) : "")).stripTrailing()).append('\n');
        }
    }

    private static List<String> wrapped(List<String> paragraphs, int columns) {
        return paragraphs.stream().flatMap(p -> Wrap.to(columns, "", "  ", p).lines()).toList();
    }

    private ArrangementKind likeliest(String trait) {
        Map<String, Double> shares = a.arrangement().shares();
        return catalogue.systems().stream().filter(s -> s.traits().contains(trait))
                .max(Comparator.comparingDouble((ArrangementKind s) -> shares.getOrDefault(s.id(), 0.0))
                        .thenComparing(ArrangementKind::id, Comparator.reverseOrder())).orElseThrow();
    }

    private boolean isSealed() {
        return catalogue.arrangement(a.arrangement().id()).traits().contains(TraitId.SEALED);
    }

    private static String title(ArrangementKind kind) {
        return kind.title().toLowerCase(Locale.ROOT).replaceFirst("^(open-vented|sealed), ", "");
    }

    private void heading(String words) {
        out.append('\n');
        line(words, "");
    }

    private void line(String words, String indent) {
        out.append(Wrap.to(width, "", indent, words)).append('\n');
    }
}
