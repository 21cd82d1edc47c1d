package neutralpoint;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.mapping;
import static java.util.stream.Collectors.toList;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.reflect.Modifier;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Data flows one way: each package knows only those before it. One name is one thing. */
class ArchitectureTest {
    private static final List<String> ORDER = List.of("document",
            "hydronics", "hydronics.water", "hydronics.pipework", "hydronics.expansion", "hydronics.emitter", "hydronics.chemistry",
            "job", "catalogue", "workings", "rulebase.fact", "rulebase", "consult",
            "workplan.figures", "workplan",
            "report.text", "report.chart", "report.schematic", "report",
            "authoring", "console", "cli", "build");

    private static final JavaClasses CLASSES = new ClassFileImporter().withImportOption(new ImportOption.DoNotIncludeTests())
            .importPackages("neutralpoint");

    @Test
    void everyPackageHasItsPlaceInTheOrder() {
        assertThat(written().map(JavaClass::getPackageName).distinct()).containsExactlyInAnyOrderElementsOf(ORDER.stream().map(ArchitectureTest::full).toList());
    }

    @TestFactory
    Stream<DynamicTest> eachPackageKnowsOnlyThoseBeforeIt() {
        return ORDER.stream().limit(ORDER.size() - 1L).map(name -> DynamicTest.dynamicTest(name, () -> {
            String[] later = ORDER.subList(ORDER.indexOf(name) + 1, ORDER.size()).stream().map(ArchitectureTest::full).toArray(String[]::new);
            noClasses().that().resideInAPackage(full(name)).should().dependOnClassesThat().resideInAnyPackage(later).check(CLASSES);
        }));
    }

    @Test
    void noPackagesRunInACircle() {
        slices().matching("neutralpoint.(**)").should().beFreeOfCycles().check(CLASSES);
    }

    @Test
    void noTwoTypesShareASimpleName() {
        Map<String, List<String>> byName = written().collect(groupingBy(JavaClass::getSimpleName, TreeMap::new, mapping(JavaClass::getName, toList())));
        assertThat(byName.values()).allSatisfy(types -> assertThat(types).hasSize(1));
    }

    @Test
    void noTypeHidesOneOfTheLanguage() {
        assertThat(written().map(JavaClass::getSimpleName).filter(ArchitectureTest::isInTheLanguage)).isEmpty();
    }

    private static boolean isInTheLanguage(String simpleName) {
        try {
            return Modifier.isPublic(Class.forName("java.lang." + simpleName).getModifiers());
        } catch (ClassNotFoundException e) {
            return false;
        }
    }

    /** The types people wrote, without what the compilers of Java and of the rules add to them. */
    private static Stream<JavaClass> written() {
        return CLASSES.stream().filter(c -> !c.isAnonymousClass() && !c.isLocalClass() && !c.getSimpleName().isEmpty() && !c.getSimpleName().equals("package-info"));
    }

    private static String full(String name) {
        return "neutralpoint." + name;
    }
}
