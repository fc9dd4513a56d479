package org.rimefast.plan.geometry;

import org.rimefast.plan.Face;

/**
 * The least distance between an element and the steel of the shell.
 *
 * @param face the face whose sheet is nearest; of equally near ones, the first in the order of
 *     {@link Face}
 * @param nearest the distance and where it is; {@code onOther} lies on the sheet
 */
public record ShellNearest(Face face, Nearest nearest) {}
