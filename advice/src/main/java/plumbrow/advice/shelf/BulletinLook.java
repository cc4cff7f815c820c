package plumbrow.advice.shelf;

import java.time.LocalDate;
import java.time.YearMonth;

/**
 * What an endangered-species bulletin said when somebody looked it up.
 *
 * @param product the product it was looked up for
 * @param state two-letter code
 * @param county the county it was looked up for
 * @param month the month of use that it is valid for
 * @param looked the day it was looked up
 * @param by who looked it up
 * @param says its limits in its words; empty where it sets none
 */
public record BulletinLook(
        String product, String state, String county, YearMonth month, LocalDate looked, String by, String says) {}
