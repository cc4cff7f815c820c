-- The log of what was put on the fields stands by itself: lines are added and struck, never changed and never removed.
-- It belongs to the fields and not to a season, so that bringing a season in again leaves it as it is.

CREATE TABLE log_line (
    number     INTEGER NOT NULL PRIMARY KEY,
    field      TEXT    NOT NULL,
    date       TEXT    NOT NULL,
    product    TEXT    NOT NULL,
    rate       REAL    NOT NULL,
    rate_unit  TEXT    NOT NULL,
    share_pct  REAL    NOT NULL,
    applicator TEXT,
    source     TEXT    NOT NULL,
    written_at TEXT
) STRICT;

-- A line that was wrong: who says so, and why. Both lines stay.
CREATE TABLE log_strike (
    line       INTEGER NOT NULL PRIMARY KEY REFERENCES log_line (number),
    who        TEXT    NOT NULL,
    why        TEXT    NOT NULL,
    struck_at  TEXT    NOT NULL
) STRICT;

-- A line that two seasons of an older book have is one line; a line that one season has twice is two.
INSERT INTO log_line (field, date, product, rate, rate_unit, share_pct, applicator, source)
SELECT field, date, product, rate, rate_unit, share_pct, applicator, source
FROM (SELECT season, position, field, date, product, rate, rate_unit, share_pct, applicator, source,
             row_number() OVER (PARTITION BY field, date, product, rate, rate_unit, share_pct, again
                                ORDER BY season, position) AS seen
      FROM (SELECT *, row_number() OVER (PARTITION BY season, field, date, product, rate, rate_unit, share_pct
                                         ORDER BY position) AS again
            FROM done))
WHERE seen = 1
ORDER BY season, position;

DROP TABLE done;

CREATE TRIGGER log_line_is_not_changed BEFORE UPDATE ON log_line
BEGIN
    SELECT RAISE(ABORT, 'a line of the log once written down stays as it was');
END;

CREATE TRIGGER log_line_is_not_removed BEFORE DELETE ON log_line
BEGIN
    SELECT RAISE(ABORT, 'a line of the log once written down stays as it was');
END;

CREATE TRIGGER log_strike_is_not_changed BEFORE UPDATE ON log_strike
BEGIN
    SELECT RAISE(ABORT, 'a line of the log once struck stays struck');
END;

CREATE TRIGGER log_strike_is_not_removed BEFORE DELETE ON log_strike
BEGIN
    SELECT RAISE(ABORT, 'a line of the log once struck stays struck');
END;

-- What somebody looked for around a field; no kind for everything. In an older book a field was taken as looked over once
-- a single thing was noted: that is not kept, since nobody said so.
CREATE TABLE looked_for (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    field      TEXT    NOT NULL,
    kind       TEXT,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, field) REFERENCES field (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

INSERT INTO looked_for (season, position, field)
SELECT season, row_number() OVER (PARTITION BY season ORDER BY position), field
FROM surveyed_field
WHERE NOT EXISTS (SELECT 1 FROM feature
                  WHERE feature.season = surveyed_field.season AND feature.field = surveyed_field.field);

DROP TABLE surveyed_field;
