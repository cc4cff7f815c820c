-- What the season of weeds is reckoned from: climate of places, days of crops, ratings of herbicides, how tillage was run.
-- A season of an older book has no rows here: its weeds are weighed by what passes leave. A blank is NULL.

ALTER TABLE known_resistance ADD COLUMN share_pct REAL;

-- A place is a field's name or a county as "IA: Alder".
CREATE TABLE month_climate (
    season     INTEGER NOT NULL REFERENCES season ON DELETE CASCADE,
    position   INTEGER NOT NULL,
    place      TEXT    NOT NULL,
    month      INTEGER NOT NULL CHECK (month BETWEEN 1 AND 12),
    mean_f     REAL    NOT NULL,
    low_f      REAL,
    high_f     REAL,
    rain_in    REAL    NOT NULL,
    rain_days  REAL    NOT NULL,
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE weather_day (
    season     INTEGER NOT NULL REFERENCES season ON DELETE CASCADE,
    position   INTEGER NOT NULL,
    place      TEXT    NOT NULL,
    day        TEXT    NOT NULL,
    low_f      REAL    NOT NULL,
    high_f     REAL    NOT NULL,
    rain_in    REAL    NOT NULL,
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE crop_timing (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    field      TEXT    NOT NULL,
    up         TEXT,
    closed     TEXT,
    days_late  INTEGER NOT NULL,
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, field) REFERENCES field (season, name) ON DELETE CASCADE,
    FOREIGN KEY (season, days_late) REFERENCES law (season, position) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE like_weed (
    season     INTEGER NOT NULL REFERENCES season ON DELETE CASCADE,
    position   INTEGER NOT NULL,
    weed       TEXT    NOT NULL,
    like_weed  TEXT    NOT NULL,
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE weed_rating (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    product    TEXT    NOT NULL,
    weed       TEXT    NOT NULL,
    timing     TEXT    NOT NULL,
    rate       REAL    NOT NULL,
    rate_unit  TEXT    NOT NULL,
    height_in  REAL,
    seen_days  INTEGER,
    control    INTEGER NOT NULL,
    basis      TEXT    NOT NULL,
    as_for     TEXT,
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, product) REFERENCES product (season, name) ON DELETE CASCADE,
    FOREIGN KEY (season, control) REFERENCES law (season, position) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE tillage_work (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    field      TEXT    NOT NULL,
    course     TEXT    NOT NULL,
    pass       INTEGER NOT NULL,
    tool       TEXT    NOT NULL,
    depth_in   REAL    NOT NULL,
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, field) REFERENCES field (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE floor_depth (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    field      TEXT    NOT NULL,
    tool       TEXT    NOT NULL,
    place      TEXT    NOT NULL,
    depth_in   REAL    NOT NULL,
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, field) REFERENCES field (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;
