package neutralpoint.build;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import neutralpoint.catalogue.AnswerType;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.Finding;
import neutralpoint.document.BadInput;
import neutralpoint.document.Nearest;
import neutralpoint.document.Where;

/** Holds every id that a rule names against the catalogue; the rule compiler cannot, they are strings to it. */
final class RuleIdCheck {
    private static final Pattern FACT = Pattern.compile("(Observed|Lacks|Measured|Radiators)\\s*\\(([^)]*(?:\\([^)]*\\)[^)]*)*)\\)");
    private static final Pattern FINDING = Pattern.compile("finding\\s*==\\s*\"([^\"]*)\"");
    private static final Pattern ANSWER = Pattern.compile("answer\\s*(?:==|!=)\\s*\"([^\"]*)\"|answer\\s+(?:not\\s+)?in\\s*\\(([^)]*)\\)");
    private static final Pattern QUOTED = Pattern.compile("\"([^\"]*)\"");
    private static final Pattern CAUSE = Pattern.compile("\\bcause\\s*(?:==|!=)\\s*\"([^\"]*)\"");
    private static final Pattern TRAIT = Pattern.compile("raits\\s+(?:not\\s+)?contains\\s+\"([^\"]*)\"");
    private static final Pattern EVIDENCE = Pattern.compile("Evidence\\.\\w+\\(\\s*\"([^\"]*)\"");
    private static final Pattern CAUTION = Pattern.compile("new Attach\\(\\s*\"([^\"]*)\"");
    private static final Pattern COURSE = Pattern.compile(
            "(?:new Bars\\(|new Remedy\\(|Stop\\.clearBy\\(|\\bcourse\\s*(?:==|!=)\\s*)\\s*\"([^\"]*)\"");
    private static final Pattern BARS = Pattern.compile("new Bars\\(\\s*\"([^\"]*)\"");
    private static final Pattern SOURCE = Pattern.compile("@source\\(\"([^\"]*)\"\\)");
    private static final Pattern RULE = Pattern.compile("^rule \"([^\"]*)\"");
    private static final Pattern PACKAGE = Pattern.compile("^package\\s+(\\S+?);?\\s*$");

    private final Catalogue catalogue;
    private final Set<String> hypotheses = new HashSet<>();
    private final Map<String, Where> names = new HashMap<>();
    private final Map<String, Set<String>> moves = new TreeMap<>();
    private final Set<String> read = new HashSet<>();

    RuleIdCheck(Catalogue catalogue) {
        this.catalogue = catalogue;
        hypotheses.addAll(catalogue.causes().keySet());
        hypotheses.addAll(catalogue.arrangements().keySet());
    }

    void check(List<Path> files) throws IOException {
        for (Path file : files) {
            checkFile(file);
        }
    }

    /** How many rules were read. */
    int count() {
        return names.size();
    }

    /** For each finding, the causes and arrangements that some rule moves, and the courses one bars, because of it. */
    Map<String, Set<String>> moves() {
        return moves;
    }

    private void checkFile(Path file) throws IOException {
        List<String> lines = Files.readAllLines(file);
        String current = "";
        Set<String> notes = new HashSet<>();
        for (int i = 0; i < lines.size(); i++) {
            Where where = new Where(file.toString(), i + 1);
            String line = lines.get(i);
            Matcher pack = PACKAGE.matcher(line);
            if (pack.find() && !pack.group(1).equals("rules." + file.getParent().getFileName())) {
                throw new BadInput(where, "the package should be rules." + file.getParent().getFileName() + ", like the folder.");
            }
            Matcher rule = RULE.matcher(line);
            if (rule.find()) {
                current = rule.group(1);
                notes.clear();
                read.clear();
                Where before = names.put(current, where);
                if (before != null) {
                    throw new BadInput(where, "the rule \"" + current + "\" is also in " + before + "; rule ids are unique.");
                }
            }
            if (line.strip().startsWith("@")) {
                notes.add(line.strip().replaceFirst("@(\\w+).*", "$1"));
            }
            if (line.strip().equals("when") && !notes.containsAll(Set.of("says", "because", "source"))) {
                throw new BadInput(where, "the rule \"" + current + "\" needs @says, @because and @source.");
            }
            checkLine(line.strip().startsWith("@") ? onlySource(line) : line, where);
        }
    }

    private static String onlySource(String line) {
        return line.strip().startsWith("@source") ? line : "";
    }

    private void checkLine(String line, Where where) {
        all(SOURCE, line).forEach(id -> known(id, catalogue.sources().keySet(), "source", where));
        for (String id : all(EVIDENCE, line)) {
            known(id, hypotheses, "cause or arrangement", where);
            remember(id);
        }
        all(BARS, line).forEach(this::remember);
        all(CAUSE, line).forEach(id -> known(id, catalogue.causes().keySet(), "cause", where));
        all(TRAIT, line).forEach(id -> known(id, catalogue.traits(), "trait", where));
        all(CAUTION, line).forEach(id -> known(id, catalogue.cautions().keySet(), "caution", where));
        all(COURSE, line).forEach(id -> known(id, catalogue.courses().keySet(), "course", where));
        Matcher fact = FACT.matcher(line);
        while (fact.find()) {
            for (String id : all(FINDING, fact.group(2))) {
                known(id, catalogue.findings().keySet(), "finding", where);
                checkAnswers(catalogue.finding(id), fact.group(2), where);
                read.add(id);
            }
        }
    }

    private void remember(String moved) {
        read.forEach(finding -> moves.computeIfAbsent(finding, f -> new TreeSet<>()).add(moved));
    }

    private static void checkAnswers(Finding finding, String constraints, Where where) {
        Matcher answer = ANSWER.matcher(constraints);
        Set<String> valid = new HashSet<>(finding.optionIds());
        if (finding.type() == AnswerType.SEVERAL_OF) {
            valid.add("none");
        }
        while (answer.find()) {
            List<String> words = answer.group(1) != null ? List.of(answer.group(1)) : all(QUOTED, answer.group(2));
            words.forEach(word -> known(word, valid, "answer of " + finding.id(), where));
        }
    }

    private static void known(String id, Collection<String> valid, String what, Where where) {
        if (!valid.contains(id)) {
            throw new BadInput(where, "\"" + id + "\" is not a known " + what + Nearest.hint(id, valid));
        }
    }

    private static List<String> all(Pattern pattern, String text) {
        List<String> found = new ArrayList<>();
        Matcher m = pattern.matcher(text);
        while (m.find()) {
            found.add(m.group(1));
        }
        return found;
    }
}
