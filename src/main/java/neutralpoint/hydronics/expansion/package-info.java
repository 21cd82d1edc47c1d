/** What gives way when water warms: the vent, the feed-and-expansion cistern, the vessel. */
package neutralpoint.hydronics.expansion;
