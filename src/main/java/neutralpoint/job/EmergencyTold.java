package neutralpoint.job;

import java.time.LocalDateTime;

/**
 * One line of a job's log of emergencies.
 *
 * @param what id of the emergency in the catalogue
 * @param over true when the line says that it is over
 */
public record EmergencyTold(LocalDateTime at, String what, boolean over) {}
