package plumbrow.documents.binder;

import plumbrow.advice.season.Season;

/** Sheets of the annex, which run over as many pages as they need. */
final class AnnexSheet {
    private AnnexSheet() {}

    /** Odds, findings, ranges and workings of one field. */
    record OfField(FieldPages pages) implements Sheet {
        @Override
        public String name() {
            return "Annex: " + pages.field().field().name();
        }

        @Override
        public String style() {
            return "annex";
        }

        @Override
        public void write(Html html, int size) {
            html.element("div", "foot", name());
            pages.write(html);
        }
    }

    /** Where the values of the shelf stand. */
    record OfShelf(Season season) implements Sheet {
        @Override
        public String name() {
            return "Annex: sources of the shelf";
        }

        @Override
        public String style() {
            return "annex";
        }

        @Override
        public void write(Html html, int size) {
            html.element("div", "foot", name());
            ShelfSources.write(html, season);
        }
    }
}
