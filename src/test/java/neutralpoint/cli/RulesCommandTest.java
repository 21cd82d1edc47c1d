package neutralpoint.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import neutralpoint.Shared;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What those who write rules see. */
@UsesStandardStreams
class RulesCommandTest {
    private static final String RULE = "black-bleed-water-speaks-for-sludge-throughout";

    @TempDir
    private Path folder;

    @Test
    void theListBeginsWithTheCounts() {
        assertThat(Run.of("rules").out().lines().limit(4)).anyMatch(l -> l.matches(" +\\d+ causes")).anyMatch(l -> l.matches(" +\\d+ findings"));
        assertThat(Run.of("rules", "pump").out()).contains("evidence: pump").doesNotContain("caution:");
    }

    @Test
    void oneRuleIsShownWholeWithItsCases() {
        assertThat(Run.of("rules", "show", RULE).out()).contains("Black bleed water speaks well for sludge throughout.", "Because: Magnetite",
                "speaks for sludge-throughout, well (6 decibans)", "Fires:   bleed-water: black\n", "bleed-water: orange;", "alder-bank", "comes close and does not fire it", "sludge-throughout.drl");
    }

    @Test
    void aMisspeltRuleSubjectOrFolderIsOneSentence() {
        assertThat(Run.of("rules", "show", "blak" + RULE.substring(5)).err()).isEqualTo("\"blak" + RULE.substring(5)
                + "\" is not a known rule; did you mean \"" + RULE + "\"?\n");
        assertThat(Run.of("rules", "pumpp").err()).contains("did you mean \"pump\"?");
        Run noFolder = Run.of("rules", "--rules", "nowhere");
        assertThat(noFolder.code()).isEqualTo(2);
        assertThat(noFolder.err()).isEqualTo("nowhere is not a folder; run this from the project's own folder, or give --rules DIR.\n");
    }

    @Test
    void aNewRuleHasItsHeadingsAndIsRefusedUntilItsBecauseIsWritten() throws IOException {
        Shared.copy(Path.of("rules"), folder);
        String[] args = {"rules", "new", "--rules", folder.toString(), "trial-speaks-for-pump-seized", "--finding",
            "bleed-water", "--answer", "black", "--cause", "pump-seized", "--strength", "SOME"};
        assertThat(Run.of(args).code()).isZero();
        assertThat(folder.resolve("evidence/pump/pump-seized.drl")).content().contains("rule \"trial-speaks-for-pump-seized\"",
                "@sign(\"Black or dark grey water\")", "@because(\"\")", "insert(Evidence.supports(\"pump-seized\", SOME, $sign));");
        assertThat(Run.of(args).err()).contains("is already in");
        assertThat(Run.of("rules", "effect", "--against", folder.toString(), "--no-questions").err())
                .contains("needs @because");
    }

    /** Few rules and few cases, since both sides are compiled. */
    @Test
    void theEffectOfAChangeIsShownAsGainsAndLosses() throws IOException {
        Path before = folder.resolve("before");
        for (String part : List.of("catalogue", "arrangement", "evidence/open-vent/plugged-feed-and-vent-tee.drl")) {
            Shared.copy(Path.of("rules", part), before.resolve(part));
        }
        Path now = folder.resolve("now");
        Shared.copy(before, now);
        Path vent = now.resolve("evidence/open-vent/plugged-feed-and-vent-tee.drl");
        Files.writeString(vent, Files.readString(vent).replace("Evidence.settles(\"plugged-feed-and-vent-tee\"",
                "Evidence.excludes(\"plugged-feed-and-vent-tee\""));
        for (String house : List.of("alder-bank", "bracken-close", "kestrel-rise")) {
            Shared.copy(Path.of("cases/by-cause", house + ".json"), folder.resolve("cases").resolve(house + ".json"));
        }
        Run effect = Run.of("rules", "effect", "--rules", now.toString(), "--against", before.toString(), "--cases",
                folder.resolve("cases").toString(), "--no-questions");
        assertThat(effect.out()).contains("Losses", "alder-bank").contains("1 of 3 cases moved: 0 gains, 1 losses");
    }
}
