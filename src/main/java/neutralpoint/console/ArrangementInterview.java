package neutralpoint.console;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import neutralpoint.catalogue.Catalogue;
import neutralpoint.catalogue.Finding;
import neutralpoint.catalogue.JobCheck;
import neutralpoint.consult.ArrangementQuestionChooser;
import neutralpoint.document.BadInput;
import neutralpoint.job.Answer;
import neutralpoint.job.Job;
import neutralpoint.rulebase.Assessment;
import neutralpoint.rulebase.Assessor;

/** Asks what is to be seen of a system until it is known what it is, or nothing more would tell. */
public final class ArrangementInterview {
    private static final List<String> WORDS = List.of("how", "back", "unchecked", "enough");

    private final JobInHand inHand = new JobInHand(Job.begin("arrangement"));
    private final Screen screen;
    private final AnswerWords words;
    private final Assessor assessor;
    private final ArrangementQuestionChooser question;

    public ArrangementInterview(Screen screen, Catalogue catalogue, Assessor assessor, ArrangementQuestionChooser question) {
        this.screen = new EmergencyScreen(screen, new EmergencyDialogue(screen, catalogue, inHand, LocalDateTime::now));
        this.words = new AnswerWords(new JobCheck(catalogue));
        this.assessor = assessor;
        this.question = question;
    }

    /** The system as far as it was told; ends early when the person leaves. */
    public Assessment run() {
        screen.say("What is to be seen of this system? A number or words; \"how\" to check it, \"unchecked\", \"back\", or \"enough\" to end here.");
        Job job = inHand.job();
        Assessment now = assessor.assess(job);
        Optional<Finding> next = question.best(now);
        while (next.isPresent()) {
            Optional<Job> answered = ask(next.get(), job);
            if (answered.isEmpty()) {
                break;
            }
            job = inHand.goOn(answered.get());
            now = assessor.assess(job);
            inHand.weighed(now.arrangement().traits());
            next = question.best(now);
        }
        return job.equals(inHand.job()) ? now : assessor.assess(inHand.job());
    }

    /** The job with an answer more, or one fewer after "back"; empty when enough has been said. */
    private Optional<Job> ask(Finding finding, Job job) {
        screen.heading(finding.ask());
        for (int i = 0; i < finding.options().size(); i++) {
            screen.say(String.format("%3d  %s", i + 1, finding.options().get(i).say()));
        }
        while (true) {
            String typed = screen.ask("> ", WORDS).orElse("enough");
            if (typed.equals("enough")) {
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
