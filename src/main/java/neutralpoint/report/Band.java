package neutralpoint.report;

/** Something that takes up rows of a drawing. */
sealed interface Band permits Stub, Rung {
    int height();
}
