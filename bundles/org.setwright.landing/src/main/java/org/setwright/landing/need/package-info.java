/** What conductors a job needs: derived from its facts and its settled settings, each with a reason and a source. */
package org.setwright.landing.need;
