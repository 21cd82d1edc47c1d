package neutralpoint.job;

import neutralpoint.document.BadInput;
import neutralpoint.document.Where;

/** Units as people write them. */
public final class Units {
    private Units() {}

    static double inUnit(Quantity q, String wanted, String what, Where where) {
        if (q.unit().isEmpty() || q.unit().equals(wanted)) {
            return q.value();
        }
        throw new BadInput(where, "\"" + what + "\" is read in " + wanted + ", not in " + q.unit() + ".");
    }

    public static String shown(double value) {
        return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
    }
}
