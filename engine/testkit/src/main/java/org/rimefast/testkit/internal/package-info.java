/**
 * How random modules are made: the shell first, then what is framed, hung, wired and forgotten in
 * it. What enters: a seed. What leaves: a tree of plan values. What may never be in it: a clock, a
 * locale, or the word of a rule.
 */
@org.jspecify.annotations.NullMarked
package org.rimefast.testkit.internal;
