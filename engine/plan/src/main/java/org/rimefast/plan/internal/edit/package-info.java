/** Changes the JSON text of plans. */
@org.jspecify.annotations.NullMarked
package org.rimefast.plan.internal.edit;
