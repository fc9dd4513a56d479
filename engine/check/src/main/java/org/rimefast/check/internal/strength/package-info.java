/**
 * How well cases pin a rule down: what of it they have seen, and which small changes of it none of
 * them notices. Typed rules go in; changed rules and counts come out. No text is read here.
 */
@org.jspecify.annotations.NullMarked
package org.rimefast.check.internal.strength;
