package neutralpoint.console;

import java.util.List;
import java.util.Optional;
import neutralpoint.catalogue.Finding;
import neutralpoint.catalogue.JobCheck;
import neutralpoint.consult.ArrangementQuestion;
import neutralpoint.document.BadInput;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import neutralpoint.rulebase.Assessment;
import neutralpoint.rulebase.Assessor;

/** Asks what is to be seen of a system until it is known what it is, or nothing more would tell. */
public final class ArrangementTalk {
    private static final List<String> WORDS = List.of("how", "back", "unchecked", "enough");

    private final Screen screen;
    private final AnswerWords words;
    private final Assessor assessor;
    private final ArrangementQuestion question;

    public ArrangementTalk(Screen screen, JobCheck check, Assessor assessor, ArrangementQuestion question) {
        this.screen = screen;
        this.words = new AnswerWords(check);
        this.assessor = assessor;
        this.question = question;
    }

    /** The system as far as it was told; ends early when the person leaves. */
    public Assessment run() {
        screen.say("What is to be seen of this system? A number or words; \"how\" to check it, \"unchecked\", \"back\", or \"enough\" to end here.");
        Job job = Job.begin("arrangement");
        Assessment now = assessor.assess(job);
        Optional<Finding> next = question.best(now);
        while (next.isPresent()) {
            Optional<Job> answered = ask(next.get(), job);
            if (answered.isEmpty()) {
                break;
            }
            job = answered.get();
            now = assessor.assess(job);
            next = question.best(now);
        }
        return now;
    }

    /** The job with an answer more, or one fewer after "back"; empty when enough has been said. */
    private Optional<Job> ask(Finding finding, Job job) {
        screen.heading(finding.ask());
        for (int i = 0; i < finding.options().size(); i++) {
            screen.say(String.format("%3d  %s", i + 1, finding.options().get(i).say()));
        }
        while (true) {
            String typed = screen.ask("> ", WORDS);
            if (typed == null || typed.equals("enough")) {
                return Optional.empty();
            }
            try {
                switch (typed) {
                    case "how" -> screen.say(finding.how());
                    case "unchecked" -> {
                        return Optional.of(job.with(finding.id(), Answer.NOT_CHECKED));
                    }
                    case "back" -> {
                        if (!job.answers().isEmpty()) {
                            return Optional.of(job.without(List.copyOf(job.answers().keySet()).get(job.answers().size() - 1)));
                        }
                        screen.say("This is the first question.");
                    }
                    default -> {
                        return Optional.of(job.with(finding.id(), words.read(finding, typed)));
                    }
                }
            } catch (BadInput e) {
                screen.say(e.getMessage());
            }
        }
    }
}
