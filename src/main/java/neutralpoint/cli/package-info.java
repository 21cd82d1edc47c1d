/** Commands and exit codes. */
package neutralpoint.cli;
