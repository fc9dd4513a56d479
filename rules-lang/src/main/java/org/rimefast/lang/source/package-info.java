/** Rule text as its author sees it: files, spans with start and end, and what is wrong where. */
@org.jspecify.annotations.NullMarked
package org.rimefast.lang.source;
