package neutralpoint.workings;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import neutralpoint.catalogue.Ids.FindingId;
import neutralpoint.job.Job;

/**
 * A sum that the readings of a house can make.
 *
 * @param title   what is checked
 * @param missing ids of the findings it waits for; where it waits for none it is made
 * @param sum     made only then; empty where the readings do not carry it
 */
public record Check(String title, List<String> missing, Supplier<Optional<Calculation>> sum) {

    static Check of(Job job, String title, List<String> needs, Supplier<Optional<Calculation>> sum) {
        return new Check(title, needs.stream().filter(n -> !Readings.has(job, n)).toList(), sum);
    }

    /** What a sum needs that rests on the water in the system: beside its readings the content, where nothing tells it yet. */
    static List<String> withContent(Job job, String... readings) {
        return Stream.concat(Stream.of(readings),
                SystemLitres.of(job).isPresent() ? Stream.empty() : Stream.of(FindingId.SYSTEM_CONTENT_LITRES)).toList();
    }

    Optional<Calculation> made() {
        return missing.isEmpty() ? sum.get() : Optional.empty();
    }
}
