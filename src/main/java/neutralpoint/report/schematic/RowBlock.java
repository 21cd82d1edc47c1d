package neutralpoint.report.schematic;

/** Something that takes up rows of a drawing. */
sealed interface RowBlock permits InlinePart, Branch {
    int height();
}
