/** What the templates of pages are handed: texts in the order in which they are shown. */
@org.jspecify.annotations.NullMarked
package org.rimefast.report.internal.page;
