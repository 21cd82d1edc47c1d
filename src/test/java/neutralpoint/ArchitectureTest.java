package neutralpoint;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Data flows one way: each package knows only those before it. */
class ArchitectureTest {
    private static final List<String> ORDER = List.of("document", "job", "catalogue", "hydronics", "workings", "rulebase", "consult",
            "workplan", "report", "authoring", "console", "cli", "build");

    @TestFactory
    List<DynamicTest> eachPackageKnowsOnlyThoseBeforeIt() {
        var classes = new ClassFileImporter().withImportOption(new ImportOption.DoNotIncludeTests())
                .importPackages("neutralpoint");
        return ORDER.stream().map(name -> DynamicTest.dynamicTest(name, () -> {
            String[] later = ORDER.subList(ORDER.indexOf(name) + 1, ORDER.size()).stream()
                    .map(p -> "neutralpoint." + p + "..").toArray(String[]::new);
            if (later.length > 0) {
                noClasses().that().resideInAPackage("neutralpoint." + name + "..")
                        .should().dependOnClassesThat().resideInAnyPackage(later).allowEmptyShould(true).check(classes);
            }
        })).toList();
    }
}
