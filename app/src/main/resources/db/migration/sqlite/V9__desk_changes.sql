-- What was changed in the book since a season was last brought in from outside: a workbook that lacks it does not go over it
-- unasked. brought is the checksum of what was brought in, empty where nothing was; what is put back to it is no change.
CREATE TABLE desk_change (
    season     INTEGER NOT NULL,
    kind       TEXT    NOT NULL,
    field      TEXT    NOT NULL,
    name       TEXT    NOT NULL,
    brought    TEXT    NOT NULL,
    PRIMARY KEY (season, kind, field, name)
) STRICT, WITHOUT ROWID;
