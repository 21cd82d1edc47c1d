package neutralpoint.console;

import java.nio.file.Files;
import java.nio.file.Path;
import neutralpoint.document.BadInput;
import neutralpoint.document.Json;
import neutralpoint.job.EmergencyTold;
import neutralpoint.job.Job;
import neutralpoint.job.JobFile;

/** Where a call-out is kept while it goes on. A save that fails is told, and nothing answered is lost. */
final class JobSaver extends JobInHand {
    private final Screen screen;
    private Path file;
    private boolean unsaved;

    JobSaver(Screen screen, Path file, Job job) {
        super(job);
        this.screen = screen;
        this.file = file;
    }

    /** Keeps what went wrong at once. */
    @Override
    public void add(EmergencyTold told) {
        super.add(told);
        keep(job());
    }

    Path file() {
        return file;
    }

    void keep(Job held) {
        Job job = goOn(held);
        try {
            JobFile.write(file, job);
            unsaved = false;
        } catch (BadInput e) {
            unsaved = true;
            screen.say(e.getMessage() + " Your answers are still here; \"save NAME.json\" keeps them elsewhere.");
        }
    }

    /** Keeps the job from now on under another name, if one is given. */
    void keepAs(String name, Job held) {
        if (!name.isBlank()) {
            Path other = Path.of(name);
            if (Files.exists(other)) {
                throw new BadInput(name + " exists already; give a name that is not taken.");
            }
            file = other;
        }
        keep(held);
        if (!unsaved) {
            screen.say("Kept in " + file + ".");
        }
    }

    /** Says where the job is kept; shows its text and complains if it could not be saved. */
    void close(Job held) {
        Job job = goOn(held);
        if (unsaved) {
            screen.say("This job is not saved. Copy the lines below into a file to keep it:");
            screen.line(Json.pretty(JobFile.fields(job)));
            throw new BadInput("The call-out could not be saved to " + file + "; give another file name.");
        }
        boolean empty = job.answers().isEmpty() && job.radiators().isEmpty() && job.gauge().isEmpty()
                && job.emergencies().isEmpty();
        screen.say(empty ? "Nothing was answered, so nothing was kept." : "Kept in " + file + ".");
    }
}
