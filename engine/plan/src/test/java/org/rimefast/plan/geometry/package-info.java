@org.jspecify.annotations.NullMarked
package org.rimefast.plan.geometry;
