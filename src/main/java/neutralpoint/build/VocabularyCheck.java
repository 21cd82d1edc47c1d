package neutralpoint.build;

import java.lang.reflect.Field;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.Ids;
import neutralpoint.document.BadInput;
import neutralpoint.document.Nearest;

/** Holds every id that Java names against the catalogue. */
final class VocabularyCheck {
    private record IdKind(String title, Collection<String> valid) {}

    private final Map<Class<?>, IdKind> kinds;

    VocabularyCheck(Catalogue catalogue) {
        kinds = Map.of(Ids.FindingId.class, new IdKind("finding", catalogue.findings().keySet()),
                Ids.CauseId.class, new IdKind("cause", catalogue.causes().keySet()),
                Ids.CourseId.class, new IdKind("course", catalogue.courses().keySet()),
                Ids.ArrangementId.class, new IdKind("arrangement", catalogue.arrangements().keySet()),
                Ids.TraitId.class, new IdKind("trait", catalogue.traits()));
    }

    /** @throws BadInput naming the constant, its id and the nearest valid one */
    void check() {
        Arrays.stream(Ids.class.getDeclaredClasses()).forEach(this::check);
    }

    private void check(Class<?> vocabulary) {
        IdKind kind = Optional.ofNullable(kinds.get(vocabulary)).orElseThrow(() ->
                new IllegalStateException("The ids in " + vocabulary.getSimpleName() + " are held against nothing in the catalogue."));
        constants(vocabulary).forEach(constant -> {
            String id = value(constant);
            if (!kind.valid().contains(id)) {
                throw new BadInput("Ids." + vocabulary.getSimpleName() + "." + constant.getName() + ": \"" + id + "\" is not a known "
                        + kind.title() + Nearest.hint(id, kind.valid()));
            }
        });
    }

    private static List<Field> constants(Class<?> vocabulary) {
        return Arrays.stream(vocabulary.getDeclaredFields()).filter(f -> f.getType() == String.class).toList();
    }

    private static String value(Field constant) {
        try {
            return (String) constant.get(null);
        } catch (IllegalAccessException e) {
            throw new IllegalStateException(constant + " should be public.", e);
        }
    }
}
