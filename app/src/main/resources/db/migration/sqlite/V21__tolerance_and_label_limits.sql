-- What tags say of herbicides and treatments, and what else labels ask. In an older book nobody has read either: unknown.

ALTER TABLE seed ADD COLUMN herbicide_traits TEXT;
ALTER TABLE seed ADD COLUMN treatments TEXT;
ALTER TABLE seed ADD COLUMN refuge_checked_by TEXT;
ALTER TABLE crop_year ADD COLUMN herbicide_traits TEXT;

CREATE TABLE tolerance (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    product    TEXT    NOT NULL,
    crop       TEXT    NOT NULL,
    trait      TEXT,
    earliest_stage TEXT,
    latest_stage TEXT,
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, product) REFERENCES product (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;

CREATE TABLE label_limit (
    season     INTEGER NOT NULL,
    position   INTEGER NOT NULL,
    product    TEXT    NOT NULL,
    crop       TEXT,
    kind       TEXT    NOT NULL,
    value      TEXT    NOT NULL,
    source     TEXT    NOT NULL,
    PRIMARY KEY (season, position),
    FOREIGN KEY (season, product) REFERENCES product (season, name) ON DELETE CASCADE
) STRICT, WITHOUT ROWID;
