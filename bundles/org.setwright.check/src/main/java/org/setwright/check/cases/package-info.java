/** Job cases run against what they expect: {@link org.setwright.check.cases.CaseCheck} holds a job's points, met or not. */
package org.setwright.check.cases;
