/**
 * The wire landing plan: which conductor is landed where, worked out from a job's facts and from what its settings came
 * to. Start at {@link org.setwright.landing.LandingPlan}.
 */
package org.setwright.landing;
