/**
 * Examples of what the rules of a standard say.
 *
 * <p>What enters: what a text says of a plan and of the verdicts that rules must give on it. What
 * leaves: the same, typed. What may never be in it: a plan, a verdict, a file that is read.
 */
@org.jspecify.annotations.NullMarked
package org.rimefast.lang.cases;
