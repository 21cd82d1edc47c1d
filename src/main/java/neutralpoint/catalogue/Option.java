package neutralpoint.catalogue;

/**
 * One possible answer.
 *
 * @param id    what files hold
 * @param say   what is shown
 * @param usual how often it is met compared with the other options, before anything else is known
 */
public record Option(String id, String say, double usual) {}
