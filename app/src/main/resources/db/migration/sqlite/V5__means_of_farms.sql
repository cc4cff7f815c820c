-- What farms have to work with: machines, hours, money, prices and quantities.

CREATE TABLE machine (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    farm       TEXT    NOT NULL,
    name       TEXT    NOT NULL,
    kind       TEXT    NOT NULL,
    width_ft   REAL    NOT NULL,
    speed_mph  REAL    NOT NULL,
    efficiency_pct REAL NOT NULL,
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    UNIQUE (season, farm, name),
    FOREIGN KEY (season, farm) REFERENCES farm (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE work_window (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    farm       TEXT    NOT NULL,
    name       TEXT    NOT NULL,
    kind       TEXT    NOT NULL,
    from_date  TEXT    NOT NULL,
    until_date TEXT    NOT NULL,
    fit_days   REAL    NOT NULL,
    hours_per_day REAL NOT NULL,
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    UNIQUE (season, farm, name),
    FOREIGN KEY (season, farm) REFERENCES farm (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

-- A blank limit is none.
CREATE TABLE farm_limit (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    farm       TEXT    NOT NULL,
    capital_usd REAL,
    least_in_worst_tenth_usd REAL,
    least_refuge_pct REAL,
    yield_tie  REAL    NOT NULL,
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    UNIQUE (season, farm),
    FOREIGN KEY (season, farm) REFERENCES farm (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE price_break (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    farm       TEXT    NOT NULL,
    product    TEXT    NOT NULL,
    from_quantity REAL NOT NULL,
    price_usd  REAL    NOT NULL,
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, farm) REFERENCES farm (season, name) ON DELETE CASCADE,
    FOREIGN KEY (season, product) REFERENCES product (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE supply (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    farm       TEXT    NOT NULL,
    product    TEXT    NOT NULL,
    most_quantity REAL NOT NULL,
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, farm) REFERENCES farm (season, name) ON DELETE CASCADE,
    FOREIGN KEY (season, product) REFERENCES product (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;
