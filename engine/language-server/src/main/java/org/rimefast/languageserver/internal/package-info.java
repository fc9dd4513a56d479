/** The requests of the protocol, a class a family. */
@org.jspecify.annotations.NullMarked
package org.rimefast.languageserver.internal;
