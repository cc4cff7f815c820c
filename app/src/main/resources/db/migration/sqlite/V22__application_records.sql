-- What was really done, whole: an application with its products, each of which is a line of the log. Only ever added to; one that was
-- wrong is corrected by a further record, or void, with who and why. Columns after written_at are the items of RecordItem, by their keys.
CREATE TABLE application_record (
    number     INTEGER NOT NULL PRIMARY KEY,
    corrects   INTEGER UNIQUE REFERENCES application_record (number),
    why        TEXT,
    who        TEXT    NOT NULL,
    written_at TEXT    NOT NULL,
    field      TEXT    NOT NULL,
    date       TEXT    NOT NULL,
    start_at   TEXT,
    end_at     TEXT,
    acres      REAL    NOT NULL CHECK (acres > 0),
    share_pct  REAL    NOT NULL CHECK (share_pct > 0 AND share_pct <= 100),
    applicator           TEXT,
    role                 TEXT,
    licence              TEXT,
    licence_state        TEXT,
    licence_category     TEXT,
    supervised           TEXT,
    customer             TEXT,
    customer_address     TEXT,
    state                TEXT,
    county               TEXT,
    place                TEXT,
    part                 TEXT,
    outline              TEXT,
    crop                 TEXT,
    variety              TEXT,
    stage                TEXT,
    pests                TEXT,
    carrier              TEXT,
    carrier_gpa          TEXT,
    spray_gal            TEXT,
    additions            TEXT,
    mixing_place         TEXT,
    wind_start_mph       TEXT,
    wind_from_start      TEXT,
    temperature_start_f  TEXT,
    humidity_start_pct   TEXT,
    wind_end_mph         TEXT,
    wind_from_end        TEXT,
    temperature_end_f    TEXT,
    humidity_end_pct     TEXT,
    weather_where        TEXT,
    method               TEXT,
    equipment            TEXT,
    nozzle               TEXT,
    droplets             TEXT,
    pressure_psi         TEXT,
    speed_mph            TEXT,
    boom_in              TEXT,
    deviations           TEXT,
    bulletin             TEXT,
    rinsate              TEXT,
    note                 TEXT,
    CHECK ((corrects IS NULL) = (why IS NULL)),
    CHECK (corrects IS NULL OR corrects < number)
) STRICT;

CREATE TABLE record_product (
    line         INTEGER NOT NULL PRIMARY KEY REFERENCES log_line (number),
    record       INTEGER NOT NULL REFERENCES application_record (number),
    nth          INTEGER NOT NULL CHECK (nth >= 1),
    registration TEXT,
    total        REAL    NOT NULL,
    total_unit   TEXT    NOT NULL,
    restricted   TEXT    NOT NULL,
    reentry_h    INTEGER,
    preharvest_d INTEGER,
    label_date   TEXT,
    taken        REAL,
    taken_unit   TEXT,
    UNIQUE (record, nth),
    CHECK ((taken IS NULL) = (taken_unit IS NULL))
) STRICT;

-- A record that never was so: who says it, and why. Both stay.
CREATE TABLE record_void (
    record     INTEGER NOT NULL PRIMARY KEY REFERENCES application_record (number),
    who        TEXT    NOT NULL,
    why        TEXT    NOT NULL,
    voided_at  TEXT    NOT NULL
) STRICT;

CREATE INDEX record_product_of_record ON record_product (record);

CREATE TRIGGER application_record_is_not_changed BEFORE UPDATE ON application_record
BEGIN
    SELECT RAISE(ABORT, 'an application record once written down stays as it was');
END;

CREATE TRIGGER application_record_is_not_removed BEFORE DELETE ON application_record
BEGIN
    SELECT RAISE(ABORT, 'an application record once written down stays as it was');
END;

CREATE TRIGGER application_record_is_not_replaced BEFORE INSERT ON application_record
WHEN EXISTS (SELECT 1 FROM application_record WHERE number = NEW.number OR corrects = NEW.corrects)
BEGIN
    SELECT RAISE(ABORT, 'an application record once written down stays as it was');
END;

CREATE TRIGGER record_product_is_not_changed BEFORE UPDATE ON record_product
BEGIN
    SELECT RAISE(ABORT, 'a product of an application record once written down stays as it was');
END;

CREATE TRIGGER record_product_is_not_removed BEFORE DELETE ON record_product
BEGIN
    SELECT RAISE(ABORT, 'a product of an application record once written down stays as it was');
END;

CREATE TRIGGER record_product_is_not_replaced BEFORE INSERT ON record_product
WHEN EXISTS (SELECT 1 FROM record_product WHERE line = NEW.line OR (record = NEW.record AND nth = NEW.nth))
BEGIN
    SELECT RAISE(ABORT, 'a product of an application record once written down stays as it was');
END;

CREATE TRIGGER record_void_is_not_changed BEFORE UPDATE ON record_void
BEGIN
    SELECT RAISE(ABORT, 'the voiding of an application record once written down stays as it was');
END;

CREATE TRIGGER record_void_is_not_removed BEFORE DELETE ON record_void
BEGIN
    SELECT RAISE(ABORT, 'the voiding of an application record once written down stays as it was');
END;

CREATE TRIGGER record_void_is_not_replaced BEFORE INSERT ON record_void
WHEN EXISTS (SELECT 1 FROM record_void WHERE record = NEW.record)
BEGIN
    SELECT RAISE(ABORT, 'the voiding of an application record once written down stays as it was');
END;
