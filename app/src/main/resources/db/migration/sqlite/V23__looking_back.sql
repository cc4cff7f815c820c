-- What the weighing expected of each program of a field when one was chosen, and what was harvested. Only ever added to: of several
-- harvests of one program the last counts. A choice of an older book has no expectation beside its chance and mean.
CREATE TABLE expectation (
    number     INTEGER NOT NULL PRIMARY KEY,
    choice     INTEGER NOT NULL REFERENCES choice (number),
    program    TEXT    NOT NULL,
    baseline   INTEGER NOT NULL CHECK (baseline IN (0, 1)),
    barred     INTEGER NOT NULL CHECK (barred IN (0, 1)),
    margin     REAL    NOT NULL,
    margin_low REAL    NOT NULL,
    margin_middle REAL NOT NULL,
    margin_high REAL   NOT NULL,
    chosen_ahead REAL  NOT NULL CHECK (chosen_ahead BETWEEN 0 AND 1),
    yield      REAL    NOT NULL,
    yield_low  REAL    NOT NULL,
    yield_middle REAL  NOT NULL,
    yield_high REAL    NOT NULL,
    price      REAL    NOT NULL,
    price_low  REAL    NOT NULL,
    price_middle REAL  NOT NULL,
    price_high REAL    NOT NULL,
    cost       REAL    NOT NULL
) STRICT;

CREATE INDEX expectation_of_choice ON expectation (choice);

CREATE TABLE harvest (
    number     INTEGER NOT NULL PRIMARY KEY,
    season     INTEGER NOT NULL,
    field      TEXT    NOT NULL,
    program    TEXT    NOT NULL,
    strip      INTEGER NOT NULL CHECK (strip IN (0, 1)),
    yield_bu_ac REAL   NOT NULL CHECK (yield_bu_ac >= 0),
    moisture_pct REAL  CHECK (moisture_pct >= 0 AND moisture_pct < 100),
    price_usd_bu REAL  CHECK (price_usd_bu > 0),
    cost_usd_ac REAL   CHECK (cost_usd_ac >= 0),
    who        TEXT    NOT NULL,
    at         TEXT    NOT NULL,
    source     TEXT    NOT NULL
) STRICT;

CREATE TRIGGER expectation_is_not_changed BEFORE UPDATE ON expectation
BEGIN
    SELECT RAISE(ABORT, 'what was expected stays as it was');
END;

CREATE TRIGGER expectation_is_not_removed BEFORE DELETE ON expectation
BEGIN
    SELECT RAISE(ABORT, 'what was expected stays as it was');
END;

CREATE TRIGGER expectation_is_not_replaced BEFORE INSERT ON expectation
WHEN EXISTS (SELECT 1 FROM expectation WHERE number = NEW.number)
BEGIN
    SELECT RAISE(ABORT, 'what was expected stays as it was');
END;

CREATE TRIGGER harvest_is_not_changed BEFORE UPDATE ON harvest
BEGIN
    SELECT RAISE(ABORT, 'a harvest once written down stays as it was');
END;

CREATE TRIGGER harvest_is_not_removed BEFORE DELETE ON harvest
BEGIN
    SELECT RAISE(ABORT, 'a harvest once written down stays as it was');
END;

CREATE TRIGGER harvest_is_not_replaced BEFORE INSERT ON harvest
WHEN EXISTS (SELECT 1 FROM harvest WHERE number = NEW.number)
BEGIN
    SELECT RAISE(ABORT, 'a harvest once written down stays as it was');
END;
