/**
 * The command {@code rimefast}.
 *
 * <p>What enters: words of a command line, plan files, rule files. What leaves: reports on standard
 * output, what is wrong with the input on standard error, rule files laid out anew, and an exit
 * code. What may never be in it: a rule, a measurement or a verdict.
 */
@org.jspecify.annotations.NullMarked
package org.rimefast.cli;
