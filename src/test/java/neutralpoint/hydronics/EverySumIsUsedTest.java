package neutralpoint.hydronics;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * A sum is kept because the program makes it. Those that wait for a subject to come are listed with it; the list may only
 * grow shorter.
 */
class EverySumIsUsedTest {
    private static final String SUMS = "neutralpoint.hydronics";

    /** A whole class, or a class and its method, and what it waits for. */
    private static final Map<String, String> WAITING = new TreeMap<>();

    static {
        String house = "a hydraulic model of the house: what flows where, at which head";
        for (String sum : List.of("Affinity", "Circuit", "Fitting", "Fluid", "Friction", "Kv", "Leg", "ParallelPaths", "PipeLoss", "PumpCurve", "Root",
                "TypicalCirculator", "VelocityVerdict", "Head.metres", "HeatCarried.dropKelvin", "HeatCarried.watts", "HeatOutput.returnCelsius",
                "Water.viscosityPascalSeconds", "WaterContent.pipeLitres")) {
            WAITING.put(sum, house);
        }
        WAITING.put("DrainAndScald", "the plan's dump: how much cold has to run with hot water, and how soon it scalds");
    }

    private static final JavaClasses CLASSES = new ClassFileImporter().withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("neutralpoint");

    @Test
    void everyPublicSumIsMadeByTheProgramOrWaitsForASubject() {
        assertThat(unused().stream().filter(sum -> !waits(sum))).isEmpty();
    }

    @Test
    void nothingWaitsThatIsUsed() {
        Set<String> unused = unused();
        assertThat(WAITING.keySet()).allMatch(waiting -> unused.stream().anyMatch(sum -> sum.equals(waiting) || sum.startsWith(waiting + ".")));
    }

    private static boolean waits(String sum) {
        return WAITING.containsKey(sum) || WAITING.containsKey(sum.substring(0, sum.lastIndexOf('.')));
    }

    /** Public methods of the sums to which no path of calls leads from the rest of the program, as Class.method. */
    private static Set<String> unused() {
        Set<JavaCodeUnit> reached = new HashSet<>();
        Deque<JavaCodeUnit> next = new ArrayDeque<>();
        for (JavaClass c : CLASSES) {
            if (!isSum(c)) {
                c.getCodeUnits().forEach(next::add);
            }
        }
        while (!next.isEmpty()) {
            JavaCodeUnit unit = next.pop();
            if (reached.add(unit)) {
                unit.getAccessesFromSelf().forEach(access -> follow(access, next));
                unit.getMethodReferencesFromSelf().forEach(r -> r.getTarget().resolveMember().ifPresent(next::add));
                unit.getConstructorReferencesFromSelf().forEach(r -> r.getTarget().resolveMember().ifPresent(next::add));
            }
        }
        Set<String> unused = new TreeSet<>();
        for (JavaClass c : CLASSES) {
            if (isSum(c)) {
                c.getMethods().stream().filter(m -> m.getModifiers().contains(JavaModifier.PUBLIC) && isWritten(m) && !reached.contains(m))
                        .forEach(m -> unused.add(c.getSimpleName() + "." + m.getName()));
            }
        }
        return unused;
    }

    private static void follow(JavaAccess<?> access, Deque<JavaCodeUnit> next) {
        access.getTarget().resolveMember().ifPresent(member -> {
            if (member instanceof JavaCodeUnit unit) {
                next.add(unit);
            }
            // What a class sets up for itself runs as soon as the class is touched.
            access.getTargetOwner().getStaticInitializer().ifPresent(next::add);
        });
    }

    private static boolean isSum(JavaClass c) {
        return c.getPackageName().startsWith(SUMS);
    }

    /** Neither made by the compiler nor one of the parts of a record. */
    private static boolean isWritten(JavaMethod m) {
        boolean part = m.getOwner().isRecord() && m.getOwner().tryGetField(m.getName()).isPresent() && m.getRawParameterTypes().isEmpty();
        boolean given = Set.of("values", "valueOf", "equals", "hashCode", "toString").contains(m.getName());
        return !part && !given && !m.getModifiers().contains(JavaModifier.SYNTHETIC) && !m.getModifiers().contains(JavaModifier.BRIDGE);
    }
}
