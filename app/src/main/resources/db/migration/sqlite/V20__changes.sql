-- Every change of a season, row by row: who, when, why, what from and what to. Only ever added to; what is taken back stays, and
-- the taking back is a change of its own. Rows are JSON objects of the texts that the workbook's columns show, without the blank
-- ones: a column that comes later does not touch what stands here.
CREATE TABLE season_change (
    number     INTEGER NOT NULL PRIMARY KEY,
    season     INTEGER NOT NULL,
    at         TEXT,
    who        TEXT    NOT NULL,
    why        TEXT    NOT NULL,
    way        TEXT    NOT NULL CHECK (way IN ('desk', 'command', 'program', 'workbook', 'undo', 'redo')),
    takes_back INTEGER REFERENCES season_change (number),
    CHECK ((takes_back IS NOT NULL) = (way IN ('undo', 'redo')))
) STRICT;

CREATE TABLE season_change_row (
    change INTEGER NOT NULL REFERENCES season_change (number),
    nth    INTEGER NOT NULL,
    sheet  TEXT    NOT NULL,
    place  INTEGER NOT NULL,
    before TEXT,
    after  TEXT,
    PRIMARY KEY (change, nth),
    CHECK (before IS NOT NULL OR after IS NOT NULL)
) STRICT, WITHOUT ROWID;

CREATE INDEX season_change_of_season ON season_change (season);

CREATE TRIGGER season_change_is_not_changed BEFORE UPDATE ON season_change
BEGIN
    SELECT RAISE(ABORT, 'what was changed stays written down as it was');
END;

CREATE TRIGGER season_change_is_not_removed BEFORE DELETE ON season_change
BEGIN
    SELECT RAISE(ABORT, 'what was changed stays written down as it was');
END;

CREATE TRIGGER season_change_is_not_replaced BEFORE INSERT ON season_change
WHEN EXISTS (SELECT 1 FROM season_change WHERE number = NEW.number)
BEGIN
    SELECT RAISE(ABORT, 'what was changed stays written down as it was');
END;

CREATE TRIGGER season_change_row_is_not_changed BEFORE UPDATE ON season_change_row
BEGIN
    SELECT RAISE(ABORT, 'what was changed stays written down as it was');
END;

CREATE TRIGGER season_change_row_is_not_removed BEFORE DELETE ON season_change_row
BEGIN
    SELECT RAISE(ABORT, 'what was changed stays written down as it was');
END;

CREATE TRIGGER season_change_row_is_not_replaced BEFORE INSERT ON season_change_row
WHEN EXISTS (SELECT 1 FROM season_change_row WHERE change = NEW.change AND nth = NEW.nth)
BEGIN
    SELECT RAISE(ABORT, 'what was changed stays written down as it was');
END;
