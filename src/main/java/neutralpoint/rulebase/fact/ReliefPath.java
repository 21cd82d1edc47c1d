package neutralpoint.rulebase.fact;

import java.util.Set;

/**
 * The way from the heat source to the air, by feed and vent or by vessel and safety valve.
 *
 * @param state  open, doubtful or shut; open means only that nothing found speaks against it
 * @param shutAt where it is shut: any of feed-and-vent, vent, flow, vessel, safety-valve, safety-valve-stuck
 */
public record ReliefPath(String state, Set<String> shutAt) {}
