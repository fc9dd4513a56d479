package org.rimefast.check.cases;

/**
 * Why a case could not be run.
 *
 * @param message one sentence that says what is wrong
 * @param remedy one sentence that says what to do; may be empty
 */
public record CaseProblem(String message, String remedy) {}
