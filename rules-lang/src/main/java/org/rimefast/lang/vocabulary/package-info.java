/**
 * The words a rule may use, with their types.
 *
 * <p>A vocabulary is closed: a word that is not in it is a compile error. It holds no behaviour; an
 * engine attaches behaviour to each word by its id.
 */
@org.jspecify.annotations.NullMarked
package org.rimefast.lang.vocabulary;
