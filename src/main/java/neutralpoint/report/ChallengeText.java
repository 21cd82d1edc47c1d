package neutralpoint.report;

import java.util.List;
import neutralpoint.consult.Challenge;
import neutralpoint.report.text.Wrap;
import neutralpoint.rulebase.Assessment;
import neutralpoint.rulebase.WeighedEvidence;

/** The answer to somebody who is sure of something else, or of the same. */
public final class ChallengeText {
    private static final int MOST_SIGNS = 5;

    private final int width;
    private final StringBuilder out = new StringBuilder();

    private ChallengeText(int width) {
        this.width = width;
    }

    public static String of(Assessment now, Challenge c, int width) {
        ChallengeText text = new ChallengeText(width);
        text.write(now, c);
        return text.out.toString();
    }

    private void write(Assessment now, Challenge c) {
        now.stops().forEach(s -> StopLines.of(s).forEach(l -> out.append(Wrap.keepingIndent(width, l)).append('\n')));
        if (!now.stops().isEmpty()) {
            line("Whatever the cause, that comes first.", "");
            out.append('\n');
        }
        line("You say: " + c.title() + " (" + c.stands() + ")", "");
        line("Judged: " + now.verdict().course().title() + " (" + now.verdict().certainty().word() + ")" + now.verdict().chief()
                .map(chief -> ", for " + chief.cause().title() + " (" + chief.inWords() + ")")
                .orElse("") + "; " + now.arrangement().inWords(), "");
        if (c.isTheVerdict()) {
            line("You agree. What follows is what to doubt in it.", "");
        }
        c.refusals().forEach(r -> line("No. " + r, ""));
        signs("For it", c.supports(), "Nothing found speaks for it.");
        signs("Against it", c.against(), "Nothing found speaks against it.");
        if (!c.unexplained().isEmpty()) {
            heading("What it leaves unexplained");
            c.unexplained().forEach(u -> line("- " + u.rule().says(), "  "));
        }
        heading("The look that would tell");
        c.look().ifPresentOrElse(l -> {
            line(l.finding().ask(), "");
            line(l.finding().how(), "");
            line("If \"" + l.answer().say() + "\": " + l.after() + ".", "");
        }, () -> line("None is left that would change it.", ""));
    }

    private void signs(String title, List<WeighedEvidence> signs, String none) {
        heading(title);
        if (signs.isEmpty()) {
            line(none, "");
        }
        signs.stream().limit(MOST_SIGNS).forEach(e -> line(String.format("%+3d  %s", Math.round(e.decibans()), e.rule().says()), "     "));
    }

    private void heading(String words) {
        out.append('\n');
        line(words, "");
    }

    private void line(String words, String indent) {
        out.append(Wrap.to(width, "", indent, words)).append('\n');
    }
}
