package neutralpoint.rulebase;

import java.util.List;
import neutralpoint.catalogue.Course;
import neutralpoint.job.Job;

/**
 * What a question is chosen by: an assessment short of the work itself.
 *
 * @param course the course recommended
 */
public record Outlook(Job job, Assessment.RecognisedSystem arrangement, List<Assessment.CauseStanding> causes, Course course) {}
