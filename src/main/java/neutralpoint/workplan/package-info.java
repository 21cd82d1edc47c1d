/** The plan of the work: its figures with their arithmetic, its day, and the lists that go with it. */
package neutralpoint.workplan;
