package plumbrow.documents.label.part;

import java.util.List;
import java.util.Optional;
import plumbrow.documents.label.LabelContent;
import plumbrow.documents.label.LabelKind;
import plumbrow.documents.label.Of;
import plumbrow.documents.label.Soil;
import plumbrow.documents.label.grammar.CropWords;
import plumbrow.documents.label.grammar.Measure;
import plumbrow.documents.label.grammar.MeasureText;
import plumbrow.documents.label.grammar.RateText;
import plumbrow.documents.label.text.Column;
import plumbrow.documents.label.text.Grid;
import plumbrow.documents.label.text.LabelText;
import plumbrow.documents.label.text.Topic;
import plumbrow.documents.paper.Passage;
import plumbrow.documents.paper.Quote;
import plumbrow.documents.sheet.Amount;
import plumbrow.documents.sheet.Amount.Qualifier;

/** Rates, limits and times that stand in tables of crops or soils. */
final class TablePart implements Part {
    @Override
    public void read(LabelText label, Readings readings) {
        for (Grid grid : label.grids()) {
            if (grid.topic() != Topic.ROTATION && grid.column(Column.PLANT_BACK) < 0) {
                for (List<Passage> record : grid.records()) {
                    new TableRow(grid, record).read(readings);
                }
            }
        }
    }

    /** One record of a table. */
    private record TableRow(Grid grid, List<Passage> record) {

        void read(Readings readings) {
            for (int i = 0; i < record.size(); i++) {
                if (!record.get(i).isEmpty()) {
                    cell(i, readings);
                }
            }
        }

        private void cell(int at, Readings readings) {
            switch (grid.columns().get(at)) {
                case RATE -> rate(at, new Soil(text(Column.TEXTURE), matter().orElse(null)), readings);
                case ORGANIC_RATE ->
                    rate(
                            at,
                            new Soil(
                                    text(Column.TEXTURE),
                                    SoilWords.share(grid.heads().get(at)).orElse(null)),
                            readings);
                case SEASON_MAX -> most(at, LabelKind.SEASON_MAX, readings);
                case SINGLE_MAX -> most(at, LabelKind.SINGLE_MAX, readings);
                case APPLICATIONS -> count(at, readings);
                case PRE_HARVEST -> time(at, LabelKind.PRE_HARVEST, readings);
                case GRAZING -> time(at, LabelKind.GRAZING, readings);
                case REENTRY -> time(at, LabelKind.REENTRY, readings);
                case REAPPLICATION -> time(at, LabelKind.REAPPLICATION, readings);
                case PLANT_BACK, TIMING, METHOD, CROP, TEXTURE, ORGANIC_MATTER, OTHER -> {}
            }
        }

        private String text(Column column) {
            int at = grid.column(column);
            return at < 0
                    ? ""
                    : record.get(at)
                            .text()
                            .replaceAll("\\s+", " ")
                            .replaceAll("[*†‡]+$", "")
                            .replaceAll("^\\([^)]{3,60}\\):?\\s+", "");
        }

        private Optional<Amount> matter() {
            String words = text(Column.ORGANIC_MATTER);
            return words.isEmpty() ? Optional.empty() : SoilWords.share(words);
        }

        private String crop() {
            return grid.column(Column.CROP) < 0 ? grid.crop() : text(Column.CROP);
        }

        private Quote quote(int at) {
            Passage.Builder all = new Passage.Builder();
            for (int i = 0; i < record.size(); i++) {
                if (i == at || !grid.columns().get(i).isValue()) {
                    all.cell(record.get(i));
                }
            }
            return all.build().quote();
        }

        private Optional<RateText> amount(int at) {
            String head = grid.heads().get(at);
            boolean unit = RateText.bare("1", head).isPresent();
            String cell = RateText.METRIC
                    .matcher(record.get(at).text().replaceAll("\\s+", " "))
                    .replaceAll("");
            return RateText.bare(cell.strip(), unit ? head : grid.caption());
        }

        private void rate(int at, Soil soil, Readings readings) {
            Optional<RateText> rate = amount(at);
            String words = record.get(at).text();
            if (rate.isEmpty()) {
                if (words.matches(".*\\d.*")) {
                    readings.unclear(LabelKind.USE_RATE, "no unit is found for '" + words + "'", quote(at));
                }
                return;
            }
            if (!rate.get().doubt().isEmpty() || rate.get().of() != Of.PRODUCT) {
                String why = rate.get().doubt().isEmpty()
                        ? "the rate is not of the product"
                        : rate.get().doubt();
                readings.unclear(LabelKind.USE_RATE, why, quote(at));
                return;
            }
            String timing = text(Column.TIMING);
            String under = timing.isEmpty() ? RatePart.timing(grid.caption()).orElse("") : timing;
            readings.state(
                    LabelKind.USE_RATE,
                    new LabelContent.Use(crop(), soil, rate.get().amount(), under, text(Column.METHOD)),
                    quote(at));
        }

        private void most(int at, LabelKind kind, Readings readings) {
            Optional<RateText> rate = amount(at);
            if (rate.isEmpty()) {
                return;
            }
            if (!rate.get().doubt().isEmpty()) {
                readings.unclear(kind, rate.get().doubt(), quote(at));
                return;
            }
            String per = kind == LabelKind.SINGLE_MAX
                    ? "application"
                    : grid.heads().get(at).toLowerCase(java.util.Locale.ROOT).contains("season") ? "season" : "year";
            readings.state(
                    kind,
                    new LabelContent.Most(
                            crop(),
                            MeasureText.as(Qualifier.AT_MOST, rate.get().amount()),
                            rate.get().of(),
                            rate.get().of() == Of.PRODUCT ? "" : rate.get().stuff(),
                            per),
                    quote(at));
        }

        private void count(int at, Readings readings) {
            String words = record.get(at).text().strip();
            if (words.matches("\\d{1,2}[*†‡]{0,2}")) {
                String head = grid.heads().get(at).toLowerCase(java.util.Locale.ROOT);
                readings.state(
                        LabelKind.APPLICATIONS,
                        new LabelContent.Count(
                                crop(),
                                Integer.parseInt(words.replaceAll("\\D", "")),
                                head.contains("year") || head.contains("annual") ? "year" : "season"),
                        quote(at));
            }
        }

        private void time(int at, LabelKind kind, Readings readings) {
            String words = record.get(at).text().replaceAll("[*†‡]+$", "").strip();
            String head = grid.heads().get(at).toLowerCase(java.util.Locale.ROOT);
            String unit = head.contains("hour")
                            || head.contains("(hr")
                            || (kind == LabelKind.REENTRY && !head.contains("day"))
                    ? " hours"
                    : " days";
            String full = words.matches("\\d{1,3}") ? words + unit : words;
            if (kind == LabelKind.GRAZING && words.matches("(?i)(?:do not|not allowed|not permitted|prohibited).*")) {
                readings.state(kind, new LabelContent.Ban(crop(), words), quote(at));
                return;
            }
            MeasureText.first(full, Measure.TIME).ifPresent(time -> {
                if (time.doubt().isEmpty() && time.amount().qualifier() != Qualifier.RANGE) {
                    readings.state(
                            kind,
                            new LabelContent.Interval(
                                    CropWords.in(crop()).isPresent()
                                            ? crop()
                                            : grid.crop().isEmpty() ? crop() : grid.crop(),
                                    MeasureText.as(Qualifier.EXACTLY, time.amount()),
                                    ""),
                            quote(at));
                } else {
                    readings.unclear(kind, "'" + words + "' is not one time", quote(at));
                }
            });
        }
    }
}
