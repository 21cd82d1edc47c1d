package neutralpoint.console;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import neutralpoint.job.EmergencyTold;
import neutralpoint.job.Job;

/** The job as far as it goes; whoever holds a copy of it takes over from here what went wrong meanwhile. */
class JobInHand implements EmergencyDialogue.Log {
    private Job job;
    private Set<String> traits = Set.of();

    JobInHand(Job job) {
        this.job = job;
    }

    @Override
    public Job job() {
        return job;
    }

    @Override
    public Set<String> traits() {
        return traits;
    }

    @Override
    public void add(EmergencyTold told) {
        List<EmergencyTold> log = new ArrayList<>(job.emergencies());
        log.add(told);
        job = job.withEmergencies(log);
    }

    /** What is certain of the system by the last weighing. */
    void weighed(Set<String> certain) {
        traits = certain;
    }

    /** Goes on with this job, and with every emergency that was told before. */
    Job goOn(Job held) {
        job = withEmergencies(held);
        return job;
    }

    /** A job as it was held somewhere else, with every emergency that was told meanwhile. */
    Job withEmergencies(Job held) {
        return held.emergencies().equals(job.emergencies()) ? held : held.withEmergencies(job.emergencies());
    }
}
