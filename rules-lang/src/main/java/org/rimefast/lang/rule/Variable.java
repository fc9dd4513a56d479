package org.rimefast.lang.rule;

import org.rimefast.lang.vocabulary.Noun;

/**
 * Stands for one element at a time.
 *
 * @param index 0 for the rule's subject; each quantifier and aggregate takes the number of
 *     variables that enclose it, so that sisters may share a number
 * @param noun the kind of element
 */
public record Variable(int index, Noun noun) {}
