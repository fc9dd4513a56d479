/**
 * From characters to statements.
 *
 * <p>What enters: rule text. What leaves: the records of {@code internal.syntax}, and diagnostics
 * for what is no sentence. {@link org.rimefast.lang.internal.grammar.StatementReader} is the only
 * door; nothing of the parser generator passes through it.
 */
@org.jspecify.annotations.NullMarked
package org.rimefast.lang.internal.grammar;
