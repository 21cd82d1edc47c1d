package neutralpoint.workings;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import neutralpoint.Shared;
import neutralpoint.job.Job;
import org.junit.jupiter.api.Test;

/** Balance is read from the tails: who drops too little has too much, and the one that drops most is the index radiator. */
class BalanceWorkingsTest {
    private static Optional<Calculation> balance(String rows, String findings) {
        Job job = Shared.job("{\"radiators\": [" + rows + "], \"findings\": {" + findings + "}}");
        return BalanceWorkings.of(job, SurveyedRadiator.of(job));
    }

    private static String row(String name, double flow, double back, String more) {
        return "{\"name\": \"" + name + "\", \"topCelsius\": " + (flow - 2) + ", \"baseCelsius\": " + (back + 1)
                + ", \"flowTailCelsius\": " + flow + ", \"returnTailCelsius\": " + back + more + "}";
    }

    private static final String SIZED = ", \"type\": \"type-22\", \"heightMillimetres\": 600, \"lengthMillimetres\": 1000";

    /** Hall drops 4, lounge 7, back bedroom 25: the bedroom is the index radiator, and the hall is closed down first. */
    @Test
    void theNearOnesAreClosedDownMostOverFedFirstAndTheIndexRadiatorIsLeft() {
        Calculation w = balance(String.join(",", row("lounge", 70, 63, ""), row("back bedroom", 70, 45, ""), row("hall", 70, 66, "")), "").orElseThrow();
        assertThat(w.grade()).isEqualTo(Calculation.Grade.WARN);
        assertThat(w.says()).isEqualTo("Unbalanced: the index radiator is back bedroom; close down in this order: hall, lounge.");
        assertThat(w.sums()).startsWith("wanted drop 11 degrees for every radiator").anyMatch(l -> l.startsWith("back bedroom: drops 25"));
    }

    @Test
    void equalDropsAreBalanced() {
        Calculation w = balance(String.join(",", row("lounge", 70, 59, ""), row("hall", 70, 60, ""), row("study", 70, 58, "")), "").orElseThrow();
        assertThat(w.grade()).isEqualTo(Calculation.Grade.PASS);
        assertThat(w.says()).isEqualTo("Balanced: every drop is within 2 degrees of 11.");
    }

    /** A condensing boiler that runs at a drop of 20 wants 20 at every radiator. */
    @Test
    void theBoilersOwnDropIsWantedWhereItWasRead() {
        Calculation w = balance(String.join(",", row("lounge", 70, 51, ""), row("hall", 70, 50, ""), row("study", 70, 51, "")),
                "\"boiler-flow-return-kelvin\": 20").orElseThrow();
        assertThat(w.says()).isEqualTo("Balanced: every drop is within 2 degrees of 20.");
    }

    /**
     * Type 22, 600 x 1000: 32 + 2763 x 0.6 = 1690 W at 50 K. Tails 70 and 59 over a room of 20 are 44.5 K: 1690 x (44.5/50)^1.3
     * = 1452 W. Over 11 K that is 60 000 x 1452 / (980 x 4180 x 11) = 1.93 litres a minute.
     */
    @Test
    void aSizedRadiatorIsToldItsFlow() {
        Calculation w = balance(String.join(",", row("lounge", 70, 59, SIZED), row("hall", 70, 60, SIZED), row("study", 70, 58, SIZED)), "").orElseThrow();
        assertThat(w.sums()).anyMatch(l -> l.startsWith("lounge: drops 11, wants 1.93 litres a minute"));
    }

    @Test
    void twoRadiatorsShareNothingOut() {
        assertThat(balance(String.join(",", row("lounge", 70, 59, ""), row("hall", 70, 66, "")), "")).isEmpty();
    }

    /** Sludge and gas come first: a blocked radiator cannot be balanced. */
    @Test
    void aBlockedRadiatorIsLeftOut() {
        String blocked = "{\"name\": \"study\", \"topCelsius\": 68, \"baseCelsius\": 38, \"flowTailCelsius\": 70, \"returnTailCelsius\": 58}";
        List<String> sums = balance(String.join(",", row("lounge", 70, 59, ""), row("hall", 70, 60, ""), row("box room", 70, 59, ""), blocked), "")
                .orElseThrow().sums();
        assertThat(sums).noneMatch(l -> l.startsWith("study"));
    }
}
