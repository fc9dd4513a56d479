/** How reports are laid out: wrapping, grouping and order. */
@org.jspecify.annotations.NullMarked
package org.rimefast.report.internal;
