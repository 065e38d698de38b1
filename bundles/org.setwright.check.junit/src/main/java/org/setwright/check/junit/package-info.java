/**
 * The job cases of rule books as tests of the JUnit Platform. {@link org.setwright.check.junit.CaseTestEngine} is found by
 * any launcher that has it on its class path.
 */
package org.setwright.check.junit;
