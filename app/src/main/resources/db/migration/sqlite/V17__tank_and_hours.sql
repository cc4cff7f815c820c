-- What goes into the tank and through which nozzles. An older book has no rows here: unknown. A blank is NULL.

CREATE TABLE sprayer (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    farm       TEXT    NOT NULL,
    machine    TEXT    NOT NULL,
    tank_gal   REAL    NOT NULL,
    spacing_in REAL,
    pump_gpm   REAL,
    agitation_gpm REAL,
    fill_min   REAL,
    most_left_gal REAL,
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    UNIQUE (season, farm, machine),
    FOREIGN KEY (season, farm, machine) REFERENCES machine (season, farm, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE nozzle (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    farm       TEXT    NOT NULL,
    nozzle     TEXT    NOT NULL,
    size       TEXT    NOT NULL,
    low_psi    REAL    NOT NULL,
    high_psi   REAL    NOT NULL,
    droplets   TEXT    NOT NULL,
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, farm) REFERENCES farm (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE mixing (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    product    TEXT    NOT NULL,
    formulation TEXT,
    container  REAL,
    container_unit TEXT,
    mark       REAL,
    mark_unit  TEXT,
    mix_order  TEXT,
    clean_out  TEXT,
    ams        TEXT,
    ams_low_lb REAL,
    ams_high_lb REAL,
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    UNIQUE (season, product),
    FOREIGN KEY (season, product) REFERENCES product (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE water_test (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    farm       TEXT    NOT NULL,
    tested     TEXT    NOT NULL,
    calcium_ppm REAL   NOT NULL,
    magnesium_ppm REAL NOT NULL,
    sodium_ppm REAL    NOT NULL,
    potassium_ppm REAL NOT NULL,
    iron_ppm   REAL,
    ph         REAL,
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, farm) REFERENCES farm (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE addition (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    product    TEXT    NOT NULL,
    field      TEXT,
    addition   TEXT    NOT NULL,
    rate       REAL    NOT NULL,
    basis      TEXT    NOT NULL,
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, product) REFERENCES product (season, name) ON DELETE CASCADE,
    FOREIGN KEY (season, addition) REFERENCES product (season, name) ON DELETE CASCADE,
    FOREIGN KEY (season, field) REFERENCES field (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE hour_limit (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    state      TEXT,
    product    TEXT,
    measure    TEXT    NOT NULL,
    least      REAL,
    most       REAL,
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, product) REFERENCES product (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

-- Hourly weather of places, whatever the season: a file that was taken in, and its hours. begin_h counts hours since 1970 began, UTC.
CREATE TABLE weather_file (
    number     INTEGER NOT NULL PRIMARY KEY,
    place      TEXT    NOT NULL,
    name       TEXT    NOT NULL,
    format     TEXT    NOT NULL,
    zone       TEXT    NOT NULL,
    latitude   REAL,
    longitude  REAL,
    wind_height_m REAL NOT NULL,
    source     TEXT    NOT NULL,
    sha256     TEXT    NOT NULL CHECK (length(sha256) = 64),
    taken_at   TEXT    NOT NULL,
    UNIQUE (place, sha256)
) STRICT;

CREATE TABLE weather_hour (
    file       INTEGER NOT NULL REFERENCES weather_file ON DELETE CASCADE,
    begin_h    INTEGER NOT NULL,
    forecast   INTEGER NOT NULL CHECK (forecast IN (0, 1)),
    temperature_c REAL,
    humidity_pct REAL,
    wind_mph   REAL,
    gust_mph   REAL,
    wind_from_deg REAL,
    rain_in    REAL,
    trace      INTEGER NOT NULL CHECK (trace IN (0, 1)),
    rain_chance_pct REAL,
    cloud_pct  REAL,
    PRIMARY KEY (file, begin_h)
) STRICT, WITHOUT ROWID;
