package neutralpoint.report.schematic;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import neutralpoint.Shared;
import neutralpoint.catalogue.ArrangementKind;
import neutralpoint.catalogue.Component;
import org.apache.commons.lang3.StringUtils;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** A drawing an engineer recognises: parts in the order water meets them, and the neutral point where feed or vessel joins. */
class SystemDrawingTest {
    private static final Path GOLDEN = Path.of("src/test/resources/drawings");
    private static final List<Integer> WIDTHS = List.of(60, 80, 120);
    private static final int TRIES_EACH = 60;

    private static Schematic usual(String system, Set<String> features) {
        return Schematic.usual(Shared.CATALOGUE.arrangement(system), features);
    }

    private static List<String> systems() {
        return Shared.CATALOGUE.systems().stream().map(ArrangementKind::id).toList();
    }

    private static List<String> features() {
        return Shared.CATALOGUE.features().stream().map(ArrangementKind::id).toList();
    }

    /** The drawings that were looked at and found right; a file is named after system, features and width. */
    @TestFactory
    Stream<DynamicTest> drawnAsLookedAt() throws IOException {
        List<Path> files = Shared.files(GOLDEN.toString(), ".txt");
        List<String> names = files.stream().map(f -> f.getFileName().toString()).toList();
        assertThat(names).containsAll(systems().stream()
                .flatMap(s -> WIDTHS.stream().map(w -> s + "." + w + ".txt")).toList());
        return files.stream().map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> {
            List<String> name = List.of(file.getFileName().toString().split("\\."));
            List<String> kinds = List.of(name.get(0).split("\\+"));
            Schematic sketch = usual(kinds.get(0), Set.copyOf(kinds.subList(1, kinds.size())));
            assertThat(SystemDrawing.of(sketch, Integer.parseInt(name.get(1)), false)).isEqualTo(Files.readString(file));
        }));
    }

    @TestFactory
    Stream<DynamicTest> nothingOverlapsAndEachPartIsNamedOnceInAnyOrder() {
        return systems().stream().map(system -> DynamicTest.dynamicTest(system, () -> {
            for (int seed = 0; seed < TRIES_EACH; seed++) {
                Schematic sketch = random(system, new Random(seed));
                for (int width : List.of(60, 67, 80, 120)) {
                    requireSound(sketch, width, "seed " + seed + ", width " + width + ", " + sketch);
                }
            }
        }));
    }

    @TestFactory
    Stream<DynamicTest> theUsualOrderCanBeDrawnWithEveryPairOfFeatures() {
        return systems().stream().map(system -> DynamicTest.dynamicTest(system, () -> {
            for (String one : features()) {
                for (String other : features()) {
                    Schematic sketch = usual(system, new HashSet<>(List.of(one, other)));
                    WIDTHS.forEach(width -> requireSound(sketch, width, width + " " + sketch));
                }
            }
        }));
    }

    private static void requireSound(Schematic sketch, int width, String about) {
        String drawing = SystemDrawing.of(sketch, width, false);
        assertThat(drawing.lines()).as(about).allMatch(line -> line.length() <= width);
        String picture = SystemDrawing.picture(sketch, width);
        for (Component part : sketch.order()) {
            String name = SystemDrawing.labels(sketch, width).name(part);
            assertThat(StringUtils.countMatches(picture, name)).as(name + ": " + about + "\n" + picture).isEqualTo(1);
        }
        assertThat(StringUtils.countMatches(picture, Labels.NEUTRAL)).as(about)
                .isEqualTo(sketch.neutralPoint().isPresent() ? 1 : 0);
        assertThat(StringUtils.countMatches(picture, "(not")).as(about)
                .isEqualTo((int) sketch.order().stream().filter(sketch.unknown()::contains).count());
    }

    /** Up the flow, across, and down the return: the names stand in the order water meets the parts. */
    @TestFactory
    Stream<DynamicTest> partsStandInTheOrderWaterMeetsThem() {
        return systems().stream().map(system -> DynamicTest.dynamicTest(system, () -> {
            for (int seed = 0; seed < TRIES_EACH; seed++) {
                Schematic sketch = random(system, new Random(seed));
                List<String> rows = SystemDrawing.picture(sketch, 80).lines().toList();
                List<Integer> at = sketch.order().stream().map(part -> rowOf(rows, SystemDrawing.labels(sketch, 80).name(part))).toList();
                int turn = sketch.order().indexOf(sketch.order().stream().filter(Component::bridges).reduce((a, b) -> b)
                        .orElse(sketch.order().get(sketch.order().size() - 1)));
                for (int i = 1; i < at.size(); i++) {
                    boolean rises = i <= turn;
                    boolean first = i == turn + 1;
                    assertThat(rises ? at.get(i - 1) - at.get(i) : first ? 1 : at.get(i) - at.get(i - 1))
                            .as("seed " + seed + ", " + sketch.order().get(i) + " of " + sketch).isPositive();
                }
            }
        }));
    }

    private static int rowOf(List<String> rows, String name) {
        return rows.indexOf(rows.stream().filter(row -> row.contains(name)).findFirst().orElseThrow());
    }

    private static Schematic random(String system, Random random) {
        List<Component> parts = new ArrayList<>(EnumSet.complementOf(EnumSet.of(Component.BOILER)));
        parts.removeIf(part -> random.nextInt(6) == 0);
        parts.removeAll(random.nextBoolean() ? List.of(Component.COMBINED_TEE) : List.of(Component.FEED_TEE, Component.VENT_TEE));
        Collections.shuffle(parts, random);
        parts.add(0, Component.BOILER);
        Map<Component, String> figures = new EnumMap<>(Component.class);
        Set<Component> unknown = EnumSet.noneOf(Component.class);
        for (Component part : Component.values()) {
            if (random.nextInt(3) == 0) {
                figures.put(part, random.nextBoolean() ? "0.9 bar" : "450 mm above the water line, and measured with care");
            }
            if (random.nextInt(4) == 0) {
                unknown.add(part);
            }
        }
        Set<String> features = new HashSet<>(features());
        features.removeIf(feature -> random.nextInt(3) != 0);
        List<String> floors = List.of("second floor", "first floor", "ground floor", "basement").subList(0, random.nextInt(5));
        return new Schematic(system, features, parts, floors, figures, unknown);
    }

    /** Textbook order boiler, vent, feed, pump: all the circuit stands above static, and only the pump's suction at it. */
    @Test
    void withTheFeedJustBeforeThePumpAllIsAboveStatic() {
        String words = onOneLine(SystemDrawing.of(usual("open-vented-separate", Set.of("y-plan")), 60, false));
        assertThat(words).contains("from its outlet to ◆: three-port valve, cylinder, radiators, boiler, vent tee.")
                .contains("Below static, from ◆ to the pump's inlet: only the pipe between them.")
                .contains("Water rises in the vent");
    }

    /** The same house with the pump between boiler and tees: nothing is above static, and air is drawn in at the vent. */
    @Test
    void withThePumpBeforeTheTeesTheRadiatorsAreBelowStatic() {
        Schematic wrong = usual("open-vented-separate", Set.of()).withOrder(List.of(Component.BOILER, Component.PUMP, Component.FEED_TEE,
                Component.VENT_TEE, Component.CYLINDER, Component.RADIATORS));
        assertThat(onOneLine(SystemDrawing.of(wrong, 60, false)))
                .contains("Below static, from ◆ to the pump's inlet: vent tee, cylinder, radiators, boiler.")
                .contains("Water falls in the vent");
    }

    @Test
    void anOpenFeedOnASealedSystemIsPointedOut() {
        Schematic trap = usual("converted-to-sealed", Set.of()).withOrder(List.of(Component.BOILER, Component.FEED_TEE, Component.VESSEL_TEE,
                Component.PUMP, Component.RADIATORS));
        assertThat(trap.neutralPoint()).contains(Component.FEED_TEE);
        assertThat(onOneLine(SystemDrawing.of(trap, 80, false))).contains("An open feed and a vessel are both shown.");
    }

    @Test
    void withoutFeedVesselOrPumpTheWordsSaySo() {
        Schematic bare = usual("sealed-separate", Set.of());
        assertThat(SystemDrawing.of(bare.withOrder(List.of(Component.BOILER, Component.PUMP)), 80, false))
                .contains("the neutral point cannot be marked").contains("▲");
        assertThat(SystemDrawing.of(bare.withOrder(List.of(Component.BOILER, Component.VESSEL_TEE)), 80, false))
                .contains("the pressure is static everywhere");
    }

    @Test
    void whatWasNotSeenAndWhatWasMeasuredStandBesideThePart() {
        Schematic sketch = usual("sealed-separate", Set.of()).withUnknown(Set.of(Component.PUMP)).withFigures(Map.of(Component.GAUGE, "0.9 bar"));
        assertThat(SystemDrawing.of(sketch, 60, false)).contains("? pump (not seen)").containsPattern("gauge[^\n]*\n[^\n]*0\\.9 bar");
    }

    @TestFactory
    Stream<DynamicTest> plainIsTheSameSignForSign() {
        return systems().stream().map(system -> DynamicTest.dynamicTest(system, () -> {
            Schematic sketch = usual(system, Set.copyOf(features()));
            String drawn = SystemDrawing.of(sketch, 80, false);
            String plain = SystemDrawing.of(sketch, 80, true);
            assertThat(plain).hasSameSizeAs(drawn).matches(s -> s.chars().allMatch(c -> c < 128), "plain characters only");
            for (int i = 0; i < drawn.length(); i++) {
                if (drawn.charAt(i) < 128) {
                    assertThat(plain.charAt(i)).isEqualTo(drawn.charAt(i));
                }
            }
        }));
    }

    @Test
    void whatCannotBeDrawnIsRefused() {
        Schematic sketch = usual("sealed-separate", Set.of());
        assertThatThrownBy(() -> SystemDrawing.of(sketch, 59, false)).hasMessage("the width 59 must be from 60 to 120 columns.");
        assertThatThrownBy(() -> SystemDrawing.of(sketch, 121, false)).hasMessageContaining("121");
        assertThatThrownBy(() -> usual("microbore", Set.of())).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("microbore");
        assertThatThrownBy(() -> sketch.withOrder(List.of(Component.PUMP))).hasMessageContaining("begin with the boiler");
        assertThatThrownBy(() -> sketch.withOrder(List.of(Component.BOILER, Component.PUMP, Component.PUMP))).hasMessageContaining("each part once");
        assertThatThrownBy(() -> sketch.withOrder(List.of(Component.BOILER, Component.COMBINED_TEE, Component.FEED_TEE))).hasMessageContaining("not both");
        assertThatThrownBy(() -> sketch.withFigures(Map.of(Component.PUMP, "a\nb"))).hasMessageContaining("1 to 60 characters on one line");
    }

    @Test
    void theSheetRefusesToDrawOverSomething() {
        Canvas canvas = new Canvas(1, 5);
        canvas.put(0, 1, "│");
        canvas.level(0, 0, 2);
        assertThat(canvas.text()).isEqualTo("─│─\n");
        assertThatThrownBy(() -> canvas.put(0, 2, "x")).isInstanceOf(IllegalStateException.class).hasMessageContaining("would cover");
        assertThatThrownBy(() -> canvas.put(0, 4, "xy")).isInstanceOf(IllegalStateException.class).hasMessageContaining("off the sheet");
    }

    private static String onOneLine(String drawing) {
        return drawing.replaceAll("\\s+", " ");
    }
}
