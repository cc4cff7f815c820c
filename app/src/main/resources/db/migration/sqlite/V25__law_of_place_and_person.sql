-- Licences by kind and category, further licences, bulletins looked up, land beside the soil, rates by land and stage. In an older
-- book nobody has entered any of it: unknown.

ALTER TABLE person ADD COLUMN licence_kind TEXT;
ALTER TABLE person ADD COLUMN covers TEXT;
ALTER TABLE person ADD COLUMN for_hire TEXT NOT NULL DEFAULT 'unknown';

CREATE TABLE licence (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    person     TEXT    NOT NULL,
    licence    TEXT    NOT NULL,
    state      TEXT    NOT NULL,
    valid_until TEXT,
    licence_kind TEXT,
    covers     TEXT,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, person) REFERENCES person (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE bulletin (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    product    TEXT    NOT NULL,
    state      TEXT    NOT NULL,
    county     TEXT    NOT NULL,
    month      TEXT    NOT NULL,
    looked_up  TEXT    NOT NULL,
    looked_up_by TEXT  NOT NULL,
    says       TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, product) REFERENCES product (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE field_land (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    field      TEXT    NOT NULL,
    erodible   TEXT    NOT NULL,
    residue_pct REAL,
    ground_water_ft REAL,
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, field) REFERENCES field (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

ALTER TABLE special_label ADD COLUMN beside_main INTEGER NOT NULL DEFAULT 0 CHECK (beside_main IN (0, 1));

ALTER TABLE soil_rate ADD COLUMN erodible TEXT NOT NULL DEFAULT 'unknown';
ALTER TABLE soil_rate ADD COLUMN residue_from_pct REAL;
ALTER TABLE soil_rate ADD COLUMN residue_below_pct REAL;
ALTER TABLE soil_rate ADD COLUMN earliest_stage TEXT;
ALTER TABLE soil_rate ADD COLUMN latest_stage TEXT;
