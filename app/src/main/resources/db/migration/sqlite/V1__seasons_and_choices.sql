-- A season is a set of rows keyed by its harvest year; it is replaced as a whole, never row by row.
-- "position" keeps the order in which rows were entered. A blank is NULL: unknown, or none where the words say so.
-- 0x506C756D reads "Plum": by this number a book is told from any other file of the same format.
PRAGMA application_id = 1349285229;

CREATE TABLE season (
    season     INTEGER NOT NULL PRIMARY KEY,
    as_of      TEXT    NOT NULL,
    adviser    TEXT    NOT NULL
) STRICT;

-- How an uncertain quantity is spread: a form and its numbers in the order in which the form is spoken.
CREATE TABLE law (
    season     INTEGER NOT NULL REFERENCES season ON DELETE CASCADE,
    position   INTEGER NOT NULL,
    form       TEXT    NOT NULL
        CHECK (form IN ('number', 'pert', 'triangular', 'normal', 'weibull', 'price', 'past', 'chance')),
    a          REAL,
    b          REAL,
    c          REAL,
    PRIMARY KEY (season, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE law_past (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    law        INTEGER NOT NULL,
    value      REAL    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, law) REFERENCES law (season, position) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE farm (
    season     INTEGER NOT NULL REFERENCES season ON DELETE CASCADE,
    position   INTEGER NOT NULL,
    name       TEXT    NOT NULL,
    grower     TEXT    NOT NULL,
    crop_share REAL    NOT NULL,
    cost_share REAL    NOT NULL,
    PRIMARY KEY (season, position),
    UNIQUE (season, name)
) STRICT, WITHOUT ROWID;

CREATE TABLE field (
    season     INTEGER NOT NULL REFERENCES season ON DELETE CASCADE,
    position   INTEGER NOT NULL,
    name       TEXT    NOT NULL,
    farm       TEXT    NOT NULL,
    acres      REAL    NOT NULL,
    state      TEXT    NOT NULL,
    county     TEXT    NOT NULL,
    crop       TEXT    NOT NULL,
    texture    TEXT,
    organic_matter_pct REAL,
    ph         REAL,
    slope_pct  REAL,
    PRIMARY KEY (season, position),
    UNIQUE (season, name),
    FOREIGN KEY (season, farm) REFERENCES farm (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

-- Polygons and rings are counted from 0; ring 0 is the outline, the others are holes in it.
CREATE TABLE boundary_point (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    field      TEXT    NOT NULL,
    polygon    INTEGER NOT NULL,
    ring       INTEGER NOT NULL,
    longitude  REAL    NOT NULL,
    latitude   REAL    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, field) REFERENCES field (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE crop_year (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    field      TEXT    NOT NULL,
    year       INTEGER NOT NULL,
    crop       TEXT    NOT NULL,
    yield_bu_ac REAL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, field) REFERENCES field (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

-- states_read and counties_read: 1 where somebody has looked, even if he found none; 0 where nobody has.
CREATE TABLE product (
    season     INTEGER NOT NULL REFERENCES season ON DELETE CASCADE,
    position   INTEGER NOT NULL,
    name       TEXT    NOT NULL,
    kind       TEXT    NOT NULL,
    price_usd  REAL    NOT NULL,
    priced_per TEXT    NOT NULL,
    on_hand    REAL,
    on_hand_unit TEXT,
    registration TEXT,
    states_read INTEGER NOT NULL CHECK (states_read IN (0, 1)),
    counties_read INTEGER NOT NULL CHECK (counties_read IN (0, 1)),
    label_date TEXT,
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    UNIQUE (season, name)
) STRICT, WITHOUT ROWID;

CREATE TABLE product_state (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    product    TEXT    NOT NULL,
    state      TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, product) REFERENCES product (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE product_excluded_county (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    product    TEXT    NOT NULL,
    county     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, product) REFERENCES product (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

-- The columns from years_behind to lot_acres are filled for saved seed and NULL for bought seed.
CREATE TABLE seed (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    product    TEXT    NOT NULL,
    crop       TEXT    NOT NULL,
    seeds_per_unit REAL,
    seeds_per_lb REAL,
    germination_pct REAL NOT NULL,
    blend_refuge_pct REAL NOT NULL,
    refuge_form TEXT   NOT NULL,
    refuge_required_pct REAL,
    refuge_farthest_ft REAL,
    refuge_fewest_rows INTEGER,
    refuge_source TEXT NOT NULL,
    gain_bu_ac INTEGER NOT NULL,
    stand_pct  INTEGER NOT NULL,
    years_behind REAL,
    bin_price_usd_bu REAL,
    cleaning_usd_bu REAL,
    treatment_usd_bu REAL,
    cleanout_pct REAL,
    tests_usd  REAL,
    lot_acres  REAL,
    contract_forbids TEXT NOT NULL,
    patent_in_force TEXT NOT NULL,
    variety_protected TEXT NOT NULL,
    own_harvest TEXT   NOT NULL,
    hybrid     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    UNIQUE (season, product),
    FOREIGN KEY (season, product) REFERENCES product (season, name) ON DELETE CASCADE,
    FOREIGN KEY (season, gain_bu_ac) REFERENCES law (season, position) ON DELETE CASCADE,
    FOREIGN KEY (season, stand_pct) REFERENCES law (season, position) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE seed_trait (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    seed       TEXT    NOT NULL,
    trait      TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, seed) REFERENCES seed (season, product) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE trait (
    season     INTEGER NOT NULL REFERENCES season ON DELETE CASCADE,
    position   INTEGER NOT NULL,
    name       TEXT    NOT NULL,
    trait_group TEXT   NOT NULL,
    insect     TEXT    NOT NULL,
    control    INTEGER NOT NULL,
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, control) REFERENCES law (season, position) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE active_content (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    product    TEXT    NOT NULL,
    ingredient TEXT    NOT NULL,
    pounds     REAL    NOT NULL,
    per        TEXT    NOT NULL,
    ae_ratio   REAL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, product) REFERENCES product (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE label_use (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    product    TEXT    NOT NULL,
    crop       TEXT    NOT NULL,
    low_rate   REAL,
    low_rate_unit TEXT,
    high_rate  REAL,
    high_rate_unit TEXT,
    less_forbidden TEXT NOT NULL,
    season_max REAL,
    season_max_unit TEXT,
    most_applications INTEGER,
    phi_days   INTEGER,
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, product) REFERENCES product (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE active_limit (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    product    TEXT    NOT NULL,
    crop       TEXT    NOT NULL,
    ingredient TEXT    NOT NULL,
    season_max_lb_ac REAL,
    basis      TEXT    NOT NULL,
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, product) REFERENCES product (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE control (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    product    TEXT    NOT NULL,
    pest       TEXT    NOT NULL,
    rate       REAL    NOT NULL,
    rate_unit  TEXT    NOT NULL,
    share      INTEGER NOT NULL,
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, product) REFERENCES product (season, name) ON DELETE CASCADE,
    FOREIGN KEY (season, share) REFERENCES law (season, position) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE insect_pressure (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    field      TEXT    NOT NULL,
    insect     TEXT    NOT NULL,
    measure    TEXT    NOT NULL,
    pressure   INTEGER NOT NULL,
    loss_pct   INTEGER NOT NULL,
    neighbour_share REAL NOT NULL,
    sample_size INTEGER,
    sample_spread REAL,
    sample_cost_usd REAL,
    scouted    TEXT,
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, field) REFERENCES field (season, name) ON DELETE CASCADE,
    FOREIGN KEY (season, pressure) REFERENCES law (season, position) ON DELETE CASCADE,
    FOREIGN KEY (season, loss_pct) REFERENCES law (season, position) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE trait_doubt (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    field      TEXT    NOT NULL,
    trait_group TEXT   NOT NULL,
    insect     TEXT    NOT NULL,
    chance     REAL    NOT NULL,
    control_if_failed REAL NOT NULL,
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, field) REFERENCES field (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE weed_pressure (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    field      TEXT    NOT NULL,
    weed       TEXT    NOT NULL,
    density_m2 INTEGER NOT NULL,
    first_plant_loss_pct REAL NOT NULL,
    most_loss_pct REAL NOT NULL,
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, field) REFERENCES field (season, name) ON DELETE CASCADE,
    FOREIGN KEY (season, density_m2) REFERENCES law (season, position) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE course (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    field      TEXT    NOT NULL,
    name       TEXT    NOT NULL,
    baseline   INTEGER NOT NULL CHECK (baseline IN (0, 1)),
    refuge_distance_ft REAL,
    refuge_rows INTEGER,
    note       TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    UNIQUE (season, field, name),
    FOREIGN KEY (season, field) REFERENCES field (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE pass (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    field      TEXT    NOT NULL,
    course     TEXT    NOT NULL,
    number     INTEGER NOT NULL,
    kind       TEXT    NOT NULL,
    date       TEXT,
    product    TEXT,
    rate       REAL,
    rate_unit  TEXT,
    share_pct  REAL    NOT NULL,
    charge_usd_ac REAL NOT NULL,
    injury_pct INTEGER NOT NULL,
    delay_days REAL    NOT NULL,
    PRIMARY KEY (season, position),
    UNIQUE (season, field, course, number),
    FOREIGN KEY (season, field, course) REFERENCES course (season, field, name) ON DELETE CASCADE,
    FOREIGN KEY (season, product) REFERENCES product (season, name) ON DELETE CASCADE,
    FOREIGN KEY (season, injury_pct) REFERENCES law (season, position) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE outlook (
    season     INTEGER NOT NULL REFERENCES season ON DELETE CASCADE,
    position   INTEGER NOT NULL,
    crop       TEXT,
    field      TEXT,
    quantity   TEXT    NOT NULL,
    law        INTEGER NOT NULL,
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    CHECK ((crop IS NULL) <> (field IS NULL)),
    FOREIGN KEY (season, field) REFERENCES field (season, name) ON DELETE CASCADE,
    FOREIGN KEY (season, law) REFERENCES law (season, position) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

-- What was decided. No foreign key: a choice outlives the season it was made in when that is entered anew.
CREATE TABLE choice (
    number     INTEGER NOT NULL PRIMARY KEY,
    season     INTEGER NOT NULL,
    field      TEXT    NOT NULL,
    course     TEXT    NOT NULL,
    who        TEXT    NOT NULL,
    chosen_at  TEXT    NOT NULL,
    why        TEXT    NOT NULL,
    chance_beats_baseline REAL,
    mean_margin_usd_ac REAL
) STRICT;

CREATE TRIGGER choice_is_not_changed BEFORE UPDATE ON choice
BEGIN
    SELECT RAISE(ABORT, 'a choice once written down stays as it was');
END;

CREATE TRIGGER choice_is_not_removed BEFORE DELETE ON choice
BEGIN
    SELECT RAISE(ABORT, 'a choice once written down stays as it was');
END;
