/** The conversation at the keyboard: prompts, commands, tables. Knows no rules. */
package neutralpoint.console;
