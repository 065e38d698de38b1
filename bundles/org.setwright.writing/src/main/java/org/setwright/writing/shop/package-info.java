/** Adding settings of the shop's own to a book, from how its rules already speak of them. */
package org.setwright.writing.shop;
