-- What labels ask beyond rates, what lies around the fields and comes after them, who sprays and how, what was done.
-- A season of an older book has no rows here: all of this is unknown then. A blank is NULL: unknown, or none where the
-- words say so. A list that belongs to a row names it by its position; a "_read" of 0 says that nobody has looked.

CREATE TABLE use_terms (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    product    TEXT    NOT NULL,
    crop       TEXT    NOT NULL,
    rei_hours  INTEGER,
    days_between INTEGER,
    grazing_days INTEGER,
    feeding_forbidden TEXT NOT NULL,
    earliest_stage TEXT,
    latest_stage TEXT,
    highest_crop_in REAL,
    highest_weed_in REAL,
    methods_read INTEGER NOT NULL CHECK (methods_read IN (0, 1)),
    carrier_low_gal_ac REAL,
    finest     TEXT,
    coarsest   TEXT,
    boom_highest_in REAL,
    wind_lowest_mph REAL,
    wind_highest_mph REAL,
    warmest_f  REAL,
    rain_free_hours REAL,
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, product) REFERENCES product (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE use_method (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    use_terms  INTEGER NOT NULL,
    method     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, use_terms) REFERENCES use_terms (season, position) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

-- A row without textures is for all of them.
CREATE TABLE soil_rate (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    product    TEXT    NOT NULL,
    crop       TEXT    NOT NULL,
    organic_matter_from_pct REAL,
    organic_matter_below_pct REAL,
    ph_from    REAL,
    ph_below   REAL,
    forbidden  INTEGER NOT NULL CHECK (forbidden IN (0, 1)),
    low_rate   REAL,
    low_rate_unit TEXT,
    high_rate  REAL,
    high_rate_unit TEXT,
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, product) REFERENCES product (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE soil_rate_texture (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    soil_rate  INTEGER NOT NULL,
    texture    TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, soil_rate) REFERENCES soil_rate (season, position) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE setback (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    product    TEXT    NOT NULL,
    kind       TEXT    NOT NULL,
    distance_ft REAL,
    downwind_only INTEGER NOT NULL CHECK (downwind_only IN (0, 1)),
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, product) REFERENCES product (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE plant_back (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    product    TEXT    NOT NULL,
    next_crop  TEXT    NOT NULL,
    days       INTEGER,
    ph_from    REAL,
    ph_below   REAL,
    condition  TEXT    NOT NULL,
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, product) REFERENCES product (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE mix_rule (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    product    TEXT    NOT NULL,
    partner    TEXT    NOT NULL,
    word       TEXT    NOT NULL,
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, product) REFERENCES product (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

-- whole_state: 1 where it is for all counties of the state; 0 where only for those named.
CREATE TABLE special_label (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    product    TEXT    NOT NULL,
    crop       TEXT    NOT NULL,
    state      TEXT    NOT NULL,
    whole_state INTEGER NOT NULL CHECK (whole_state IN (0, 1)),
    first_day  TEXT,
    last_day   TEXT,
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, product) REFERENCES product (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE special_label_county (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    special_label INTEGER NOT NULL,
    county     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, special_label) REFERENCES special_label (season, position) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE product_care (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    product    TEXT    NOT NULL,
    confirmed  TEXT,
    restricted_use TEXT NOT NULL,
    bulletin   TEXT    NOT NULL,
    groundwater TEXT   NOT NULL,
    bees       TEXT    NOT NULL,
    saturated_soil TEXT NOT NULL,
    rain_ahead_hours INTEGER,
    wear_read  INTEGER NOT NULL CHECK (wear_read IN (0, 1)),
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, product) REFERENCES product (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE product_wear (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    product_care INTEGER NOT NULL,
    gear       TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, product_care) REFERENCES product_care (season, position) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

-- Fields whose surroundings somebody has looked over.
CREATE TABLE surveyed_field (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    field      TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, field) REFERENCES field (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE feature (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    field      TEXT    NOT NULL,
    kind       TEXT    NOT NULL,
    name       TEXT    NOT NULL,
    shape      TEXT    CHECK (shape IN ('spot', 'line', 'area')),
    nearest_ft REAL,
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, field) REFERENCES field (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

-- Polygons and rings are counted from 0, as in boundary_point; a spot and a line have only polygon 0 and ring 0.
CREATE TABLE feature_point (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    feature    INTEGER NOT NULL,
    polygon    INTEGER NOT NULL,
    ring       INTEGER NOT NULL,
    longitude  REAL    NOT NULL,
    latitude   REAL    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, feature) REFERENCES feature (season, position) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE also_in (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    field      TEXT    NOT NULL,
    state      TEXT    NOT NULL,
    county     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, field) REFERENCES field (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE next_crop (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    field      TEXT    NOT NULL,
    crop       TEXT    NOT NULL,
    planted    TEXT,
    planted_as TEXT    NOT NULL,
    fed        INTEGER CHECK (fed IN (0, 1)),
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, field) REFERENCES field (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE known_resistance (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    field      TEXT    NOT NULL,
    weed       TEXT    NOT NULL,
    action_group TEXT  NOT NULL,
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, field) REFERENCES field (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE person (
    season     INTEGER NOT NULL REFERENCES season ON DELETE CASCADE,
    position   INTEGER NOT NULL,
    name       TEXT    NOT NULL,
    licence    TEXT,
    state      TEXT,
    valid_until TEXT,
    PRIMARY KEY (season, position),
    UNIQUE (season, name)
) STRICT, WITHOUT ROWID;

-- One row, or none where nothing of it is known.
CREATE TABLE crew (
    season     INTEGER NOT NULL REFERENCES season ON DELETE CASCADE,
    position   INTEGER NOT NULL CHECK (position = 1),
    gear_read  INTEGER NOT NULL CHECK (gear_read IN (0, 1)),
    display    TEXT    NOT NULL,
    PRIMARY KEY (season, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE crew_gear (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    crew       INTEGER NOT NULL,
    gear       TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, crew) REFERENCES crew (season, position) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE spray_plan (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    field      TEXT    NOT NULL,
    course     TEXT    NOT NULL,
    pass       INTEGER NOT NULL,
    tank       TEXT,
    method     TEXT,
    carrier_gal_ac REAL,
    droplets   TEXT,
    boom_in    REAL,
    drift_reduction_pct REAL,
    crop_stage TEXT,
    crop_height_in REAL,
    weed_height_in REAL,
    bloom      TEXT    NOT NULL,
    applicator TEXT,
    PRIMARY KEY (season, position),
    UNIQUE (season, field, course, pass),
    FOREIGN KEY (season, field, course, pass) REFERENCES pass (season, field, course, number) ON DELETE CASCADE,
    FOREIGN KEY (season, applicator) REFERENCES person (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE done (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    field      TEXT    NOT NULL,
    date       TEXT    NOT NULL,
    product    TEXT    NOT NULL,
    rate       REAL    NOT NULL,
    rate_unit  TEXT    NOT NULL,
    share_pct  REAL    NOT NULL,
    applicator TEXT,
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, field) REFERENCES field (season, name) ON DELETE CASCADE,
    FOREIGN KEY (season, product) REFERENCES product (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;
