-- How seed comes up, and stands that were counted. In an older book nobody has entered either: emergence is typical for the
-- crop. What stood as stand_pct stays as it is, the yield that a seed keeps besides what too few plants cost.

ALTER TABLE seed ADD COLUMN emergence_pct INTEGER;

CREATE TABLE stand_count (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    field      TEXT    NOT NULL,
    planted    TEXT    NOT NULL,
    counted    TEXT    NOT NULL,
    plants_ac  INTEGER NOT NULL,
    gaps_pct   INTEGER,
    replant_payment_usd_ac REAL,
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    UNIQUE (season, field),
    FOREIGN KEY (season, field) REFERENCES field (season, name) ON DELETE CASCADE,
    FOREIGN KEY (season, plants_ac) REFERENCES law (season, position) ON DELETE CASCADE,
    FOREIGN KEY (season, gaps_pct) REFERENCES law (season, position) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;
