package neutralpoint.rulebase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import neutralpoint.Shared;
import neutralpoint.rulebase.fact.Evidence;
import neutralpoint.rulebase.fact.Observed;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/**
 * How a session goes from one set of answers to another without beginning again.
 * Holds {@link Session}, {@link FreshSession}, {@link Conclusions}, {@link Facts} and {@link Derived}.
 */
class LiveSessionTest {
    private static final Observed BLACK = new Observed("bleed-water", "black");
    private static final Observed CLEAR = new Observed("bleed-water", "clear");

    private final LiveSession session = Shared.RULES.openLive();

    @AfterEach
    void close() {
        session.close();
    }

    @Test
    void whatRestsOnAnAnswerGoesWithIt() {
        told(List.of(BLACK));
        List<String> black = rules();
        told(List.of(CLEAR));
        assertThat(session.all(Evidence.class)).isNotEmpty().allSatisfy(e -> assertThat(e.fact().from()).containsOnly(CLEAR));
        told(List.of(BLACK));
        assertThat(rules()).isEqualTo(black);
        told(List.of());
        assertThat(rules()).isEmpty();
    }

    @Test
    void aConclusionFromALaterStageIsNotReadBeforeThatStageIsTold() {
        session.begin();
        session.insertAndFire(List.of(BLACK));
        List<String> first = rules();
        session.insertAndFire(List.of(CLEAR));
        assertThat(rules()).hasSizeGreaterThan(first.size());
        session.begin();
        session.insertAndFire(List.of(BLACK));
        assertThat(rules()).isEqualTo(first);
    }

    /** Nothing tells a session that a rule which asked for no such answer no longer holds. */
    @Test
    void anAnswerThatSomeRuleAsksToBeAbsentIsRefusedAndChangesNothing() {
        Observed indirect = new Observed("cylinder-style", "indirect");
        told(List.of(BLACK));
        List<String> before = rules();
        assertThat(Shared.RULES.isAskedAbsent(indirect.finding())).isTrue();
        assertThatThrownBy(() -> told(List.of(BLACK, indirect))).isInstanceOf(LiveSession.NotExchangeable.class);
        told(List.of(BLACK));
        assertThat(rules()).isEqualTo(before);
    }

    private void told(List<Observed> answers) {
        session.begin();
        session.insertAndFire(answers);
    }

    private List<String> rules() {
        return session.all(Evidence.class).stream().map(e -> e.rule().id()).toList();
    }
}
