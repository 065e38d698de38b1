package org.setwright.editions.signing;

/** Something that keeps an edition from going out. @param what one sentence @param remedy one sentence */
public record Lack(String what, String remedy) {
}
