package org.setwright.engine.throughput;

import java.util.function.IntToLongFunction;

/**
 * One way to run jobs.
 *
 * @param job runs the job with this number and returns something that depends on the result, so that the work is not left out
 */
record Contestant(String name, IntToLongFunction job) {
}
