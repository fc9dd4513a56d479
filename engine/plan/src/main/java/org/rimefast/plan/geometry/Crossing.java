package org.rimefast.plan.geometry;

import org.rimefast.plan.Face;

/** Where two runs cross, as seen from the room: the face, and along and up it in millimetres. */
public record Crossing(Face face, double along, double up) {}
