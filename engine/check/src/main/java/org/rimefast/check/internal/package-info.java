/** What both evaluators share: the laws of intervals and of three-valued logic. */
@org.jspecify.annotations.NullMarked
package org.rimefast.check.internal;
