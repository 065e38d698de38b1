/** The machines of a job: compressor, indoor unit, auxiliary heat. */
package org.setwright.trade.equipment;
