package neutralpoint.authoring;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import neutralpoint.document.BadInput;
import neutralpoint.document.Where;
import org.drools.drl.ast.descr.AccumulateDescr;
import org.drools.drl.ast.descr.AndDescr;
import org.drools.drl.ast.descr.BaseDescr;
import org.drools.drl.ast.descr.ExprConstraintDescr;
import org.drools.drl.ast.descr.NotDescr;
import org.drools.drl.ast.descr.PackageDescr;
import org.drools.drl.ast.descr.PatternDescr;
import org.drools.drl.ast.descr.RuleDescr;
import org.drools.drl.parser.DrlParser;
import org.drools.drl.parser.DroolsParserException;
import org.kie.internal.builder.conf.LanguageLevelOption;

/** Reads rule files as written, with the rule engine's own parser. */
public final class RuleReader {
    private RuleReader() {}

    /** Every rule under a folder, in the order of files and lines; refuses a name used twice. */
    public static List<RuleText> all(Path rules) {
        Map<String, RuleText> byId = new LinkedHashMap<>();
        for (Path file : files(rules)) {
            for (RuleText rule : read(file, rules.relativize(file))) {
                RuleText before = byId.put(rule.id(), rule);
                if (before != null) {
                    throw new BadInput(rule.where(), "the rule \"" + rule.id() + "\" is also in " + before.where()
                            + "; rule ids are unique.");
                }
            }
        }
        return List.copyOf(byId.values());
    }

    /** The rule files under a folder, in the order of their names. */
    public static List<Path> files(Path rules) {
        try (Stream<Path> files = Files.walk(rules)) {
            return files.filter(f -> f.toString().endsWith(".drl")).sorted().toList();
        } catch (IOException e) {
            throw new BadInput(rules + " could not be read; give the folder that holds the rules.", e);
        }
    }

    private static List<RuleText> read(Path file, Path within) {
        PackageDescr parsed = parse(file);
        String folder = within.getNameCount() > 1 ? within.getName(0).toString() : "";
        if (!parsed.getNamespace().equals("rules." + folder)) {
            throw new BadInput(new Where(file.toString(), 1), "the package should be rules." + folder + ", like the folder.");
        }
        String subject = within.subpath(1, within.getNameCount()).toString().replace('\\', '/').replaceFirst("\\.drl$", "");
        List<RuleText> rules = new ArrayList<>();
        for (RuleDescr rule : parsed.getRules()) {
            Where where = new Where(file.toString(), rule.getLine());
            rules.add(new RuleText(rule.getName(), folder, subject, where,
                    notes(rule), patterns(rule, file), conclusion(rule, file)));
        }
        return rules;
    }

    private static Conclusion conclusion(RuleDescr rule, Path file) {
        // The engine gives the line of the word "then"; what is inserted stands on the next.
        return Conclusion.read(rule.getConsequence().toString(), new Where(file.toString(), rule.getConsequenceLine() + 1));
    }

    private static PackageDescr parse(Path file) {
        DrlParser parser = new DrlParser(LanguageLevelOption.DRL6);
        try {
            PackageDescr parsed = parser.parse(false, Files.readString(file));
            if (parser.hasErrors()) {
                var error = parser.getErrors().get(0);
                int line = error.getLines().length == 0 ? 1 : Math.max(1, error.getLines()[0]);
                throw new BadInput(new Where(file.toString(), line), "this cannot be read as a rule: " + error.getMessage());
            }
            return parsed;
        } catch (IOException | DroolsParserException e) {
            throw new BadInput(file + " could not be read as rules.", e);
        }
    }

    private static Map<String, String> notes(RuleDescr rule) {
        Map<String, String> notes = new LinkedHashMap<>();
        rule.getAnnotations().forEach(a -> notes.put(a.getName(), String.valueOf(a.getSingleValueStripped())));
        return notes;
    }

    private static List<RuleText.Pattern> patterns(RuleDescr rule, Path file) {
        List<RuleText.Pattern> patterns = new ArrayList<>();
        for (BaseDescr descr : rule.getLhs().getDescrs()) {
            boolean absent = descr instanceof NotDescr;
            Object inner = absent ? ((NotDescr) descr).getDescrs().get(0) : descr;
            Where where = new Where(file.toString(), descr.getLine());
            if (!(inner instanceof PatternDescr pattern)) {
                throw new BadInput(where, "only plain conditions may be used, such as Observed(finding == \"…\", answer == \"…\").");
            }
            patterns.add(pattern(pattern, absent, where));
        }
        return patterns;
    }

    /** A condition; one that counts over many facts is shown as what it counts, with the count it asks for. */
    private static RuleText.Pattern pattern(PatternDescr pattern, boolean absent, Where where) {
        if (!(pattern.getSource() instanceof AccumulateDescr accumulate)) {
            return new RuleText.Pattern(pattern.getObjectType(), constraints(pattern), absent, where);
        }
        PatternDescr counted = (PatternDescr) ((AndDescr) accumulate.getInput()).getDescrs().get(0);
        if (!counted.getObjectType().equals("RadiatorSurvey")) {
            throw new BadInput(where, "only RadiatorSurvey may be counted, not " + counted.getObjectType() + "; Radiators has a count of its own.");
        }
        List<String> constraints = new ArrayList<>(constraints(counted));
        constraints.addAll(constraints(pattern));
        return new RuleText.Pattern(counted.getObjectType(), List.copyOf(constraints), absent, where);
    }

    private static List<String> constraints(PatternDescr pattern) {
        return pattern.getConstraint().getDescrs().stream().map(c -> ((ExprConstraintDescr) c).getExpression().strip()).toList();
    }
}
