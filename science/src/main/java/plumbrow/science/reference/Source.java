package plumbrow.science.reference;

import plumbrow.science.figure.Status;

/**
 * One printed source: a paper, a bulletin, a regulation, a page, a data file.
 *
 * @param key by which it is cited: "nagy-1987"
 * @param author who wrote or published it
 * @param year when; empty where it is not dated or changes
 * @param title as printed; empty where we have not seen it
 * @param about what it is about, where there is no title to print
 * @param where it is found: journal with volume and page, publisher, address; empty where we know of none
 * @param status verified: what is taken from it was seen there, or its abstract was; memory: cited from memory
 */
public record Source(String key, String author, String year, String title, String about, String where, Status status) {

    /** "Nagy 1987"; where there is no year, its title: "40 CFR 156.62: toxicity categories". */
    public String brief() {
        return year.isEmpty() ? (title.isEmpty() ? author + " (" + about + ")" : title) : author + " " + year;
    }

    /** "Nagy 1987, Field metabolic rate and food requirement scaling in mammals and birds, Ecol. Monogr. 57:111-128". */
    public String full() {
        String full = year.isEmpty() ? author : author + " " + year;
        full += title.isEmpty() ? " (" + about + ")" : ", " + title;
        return where.isEmpty() ? full : full + ", " + where;
    }
}
