-- What was changed in the book since a season was last brought in from outside: a workbook that lacks it does not go over it
-- unasked. What was put back is noted too, since a workbook written out in between would bring it in again.
CREATE TABLE desk_change (
    season     INTEGER NOT NULL,
    kind       TEXT    NOT NULL,
    field      TEXT    NOT NULL,
    name       TEXT    NOT NULL,
    PRIMARY KEY (season, kind, field, name)
) STRICT, WITHOUT ROWID;
