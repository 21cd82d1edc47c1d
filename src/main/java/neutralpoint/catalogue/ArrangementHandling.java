package neutralpoint.catalogue;

import java.util.List;

/**
 * How the feed, the vent or the sealed side of one arrangement is handled before a valve is closed. The lines of a
 * feature are added to those of its system.
 *
 * @param arrangement the system or feature it is for
 * @param isolate     what to isolate, and how
 * @param connect     where a flushing pump or a hose goes on
 * @param fill        how it is filled, and what keeps heating water out of the mains
 * @param neverClose  what must never be closed
 * @param level       the level or the fill pressure to set, in words
 * @param putBack     what to put back: line for line what {@code isolate} closed
 */
public record ArrangementHandling(String arrangement, List<String> isolate, List<String> connect, List<String> fill,
        List<String> neverClose, List<String> level, List<String> putBack, String because, String source) {}
