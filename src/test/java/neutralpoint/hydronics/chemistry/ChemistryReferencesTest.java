package neutralpoint.hydronics.chemistry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import neutralpoint.hydronics.References;
import neutralpoint.hydronics.chemistry.Conductivity.Rinse;
import neutralpoint.hydronics.chemistry.Hardness.Scale;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import tools.jackson.databind.JsonNode;

/** Water chemistry against what is published of it. */
class ChemistryReferencesTest {
    private static final Map<String, Scale> SCALES = Map.of("mg_Ca", Scale.MILLIGRAMS_CALCIUM_PER_LITRE,
            "Clark", Scale.CLARK_DEGREES, "French", Scale.FRENCH_DEGREES, "German", Scale.GERMAN_DEGREES);
    /** Litres per kilowatt in the middle of each column of the 2021 table. */
    private static final double[] COLUMNS_2021 = {10, 30, 60};

    @TestFactory
    List<DynamicTest> published() {
        References references = References.of("chemistry");
        conductivity(references);
        vdi2035(references);
        scaling(references);
        SCALES.forEach((name, scale) -> references.check("HCONV-" + name,
                // The leaflet rounds: 0.07 for a grain in a gallon, which is 0.0702.
                (in, factor) -> assertThat(Hardness.milligramsPerLitre(scale, factor.asDouble())).isCloseTo(1, withinPercentage(0.3))));
        corrosion(references);
        return references.tests();
    }

    private static void conductivity(References references) {
        references
                .check("WQ-06", (in, accepted) -> assertThat(Conductivity.rinse(number(in, "TDS_system"),
                        number(in, "TDS_mains")) == Rinse.ACCEPTED).isEqualTo(accepted.asBoolean()))
                .check("WQ-07", (in, share) -> {
                    assertThat(Conductivity.rinse(1000 * (1 + share.asDouble()) + 1, 1000)).isEqualTo(Rinse.FAILED);
                    assertThat(Conductivity.rinse(1000 * (1 + share.asDouble()), 1000)).isEqualTo(Rinse.REPEAT);
                })
                .check("EC-TDS2", (in, tds) -> assertThat(Conductivity.tdsMilligramsPerLitre(number(in, "EC"),
                        number(in, "k"))).isCloseTo(tds.asDouble(), within(1e-9)))
                .check("EC-TDS", (in, range) -> assertThat(List.of(Conductivity.LEAST_TDS_FACTOR,
                        Conductivity.GREATEST_TDS_FACTOR)).isEqualTo(numbers(range)));
    }

    private static void vdi2035(References references) {
        references
                .check("VDI-01", (in, limit) -> assertThat(Vdi2035.running(limit.asDouble()))
                        .isEqualTo(Vdi2035.Running.LOW_SALT))
                .check("VDI-02", (in, limit) -> assertThat(Vdi2035.running(limit.asDouble()))
                        .isEqualTo(Vdi2035.Running.SALINE))
                .check("VDI-03", (in, window) -> window(PhWindow.of(false), window))
                .check("VDI-04", (in, window) -> window(PhWindow.of(true), window))
                .check("VDI21-1", (in, limits) -> row2021(24, false, limits))
                .check("VDI21-2", (in, limits) -> row2021(24, true, limits))
                .check("VDI21-3", (in, limits) -> row2021(120, false, limits))
                .check("VDI21-4", (in, limits) -> row2021(400, false, limits))
                .check("VDI21-5", (in, limits) -> row2021(900, false, limits));
    }

    private static void row2021(double kilowatts, boolean lowContent, JsonNode limits) {
        for (int i = 0; i < COLUMNS_2021.length; i++) {
            OptionalDouble expected = limits.get(i).isNumber()
                    ? OptionalDouble.of(limits.get(i).asDouble())
                    : OptionalDouble.empty();
            assertThat(Vdi2035.millimolesPerLitre2021(kilowatts, COLUMNS_2021[i], lowContent)).isEqualTo(expected);
        }
    }

    private static void scaling(References references) {
        references
                .check("LSI-25", (in, index) -> assertThat(Langelier.index(analysis(in), number(in, "T_C")))
                        .isCloseTo(index.asDouble(), within(0.05)))
                .check("LSI-82", (in, index) -> assertThat(Langelier.index(analysis(in), number(in, "T_C")))
                        .isCloseTo(index.asDouble(), within(0.05)))
                .check("LSI-A", (in, a) -> assertThat(Langelier.solids(number(in, "TDS")))
                        .isCloseTo(a.asDouble(), within(0.0001)))
                .check("LSI-B", (in, b) -> assertThat(Langelier.temperature(number(in, "T_C")))
                        .isCloseTo(b.asDouble(), within(0.0005)))
                .check("LSI-C", (in, c) -> assertThat(Langelier.calcium(number(in, "Ca")))
                        .isCloseTo(c.asDouble(), within(0.0005)))
                .check("LSI-D", (in, d) -> assertThat(Langelier.alkalinity(number(in, "Alk")))
                        .isCloseTo(d.asDouble(), within(0.0005)))
                .check("LSI-pHs25", (in, ph) -> assertThat(Langelier.saturationPh(analysis(in), 25))
                        .isCloseTo(ph.asDouble(), within(0.001)))
                .check("LSI-pHs82", (in, ph) -> assertThat(Langelier.saturationPh(analysis(in), 82))
                        .isCloseTo(ph.asDouble(), within(0.001)))
                .check("RSI-25", (in, index) -> assertThat(Langelier.ryznar(analysis(in), 25))
                        .isCloseTo(index.asDouble(), within(0.001)))
                .check("RSI-82", (in, index) -> assertThat(Langelier.ryznar(analysis(in), 82))
                        .isCloseTo(index.asDouble(), within(0.001)))
                .check("RSI-CLASS", (in, bands) -> assertThat(List.of(Langelier.SCALE_BELOW,
                        Langelier.NO_FILM_ABOVE, Langelier.CORRODES_ABOVE)).isEqualTo(numbers(bands)))
                // The pool form folds up to 1000 mg/L of solids into its constant, so that much is taken here.
                .check("LSI-POOL", (in, index) -> assertThat(Langelier.index(
                        new Langelier.Analysis(number(in, "pH"), 1000, number(in, "Ca"), number(in, "alk")),
                        (number(in, "T_F") - 32) / 1.8)).isCloseTo(index.asDouble(), within(0.35)));
    }

    private static void corrosion(References references) {
        references
                .check("COR-CU2", (in, range) -> {
                    assertThat(Corrosion.copper(range.get(0).asDouble(), false)).isEqualTo(Corrosion.Copper.PLATES_OUT);
                    assertThat(Corrosion.copper(range.get(1).asDouble() - 0.01, false))
                            .isEqualTo(Corrosion.Copper.PLATES_OUT);
                })
                .check("COR-CU-AL", (in, level) -> assertThat(Corrosion.copper(level.asDouble(), true))
                        .isEqualTo(Corrosion.Copper.ATTACKS_ALUMINIUM))
                .check("COR-CU", (in, level) -> assertThat(Corrosion.copper(level.asDouble(), false))
                        .isEqualTo(Corrosion.Copper.CORROSION_OR_FLUX))
                .check("COR-AL-PH", (in, window) -> window(PhWindow.ALUMINIUM_PASSIVE, window))
                .check("COR-PH-H", (in, window) -> window(PhWindow.SWISS_PRACTICE, window))
                .check("COR-BG50", (in, guide) -> {
                    assertThat(Corrosion.ironAboveGuide(number(guide, "Fe_total"), 0)).isTrue();
                    assertThat(Corrosion.ironAboveGuide(number(guide, "Fe_total") - 0.1, 0)).isFalse();
                    assertThat(Corrosion.ironAboveGuide(number(guide, "Fe_sol"), number(guide, "Fe_sol"))).isTrue();
                    assertThat(Corrosion.copper(number(guide, "Cu"), false))
                            .isEqualTo(Corrosion.Copper.CORROSION_OR_FLUX);
                });
    }

    private static void window(PhWindow window, JsonNode limits) {
        assertThat(List.of(window.lowest(), window.highest())).isEqualTo(numbers(limits));
    }

    private static Langelier.Analysis analysis(JsonNode in) {
        return new Langelier.Analysis(number(in, "pH"), number(in, "TDS"), number(in, "Ca_CaCO3"),
                number(in, "Alk_CaCO3"));
    }

    private static double number(JsonNode in, String name) {
        return in.get(name).asDouble();
    }

    private static List<Double> numbers(JsonNode list) {
        return list.valueStream().map(JsonNode::asDouble).toList();
    }
}
