/** Rules as their authors see them: reading, checking, indexing, scoring and comparing them. */
package neutralpoint.authoring;
