/**
 * The hot pass: verdicts without text and without new memory for each element.
 *
 * <p>A typed rule becomes a tree of small nodes. All that changes while they run lives in a {@link
 * org.rimefast.check.internal.hot.Frame}, one for each thread.
 */
@org.jspecify.annotations.NullMarked
package org.rimefast.check.internal.hot;
