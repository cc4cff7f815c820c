-- A pass that waits for scouting. Blank in an older book: it is made in any case, as before.
ALTER TABLE pass ADD COLUMN trigger_insect TEXT;
ALTER TABLE pass ADD COLUMN trigger_threshold REAL;
ALTER TABLE pass ADD COLUMN trigger_unit TEXT;
ALTER TABLE pass ADD COLUMN trigger_count_per_pressure REAL;
ALTER TABLE pass ADD COLUMN trigger_within_times REAL;
ALTER TABLE pass ADD COLUMN trigger_scouting_usd_ac REAL;

-- Which planned pass a line of the log was, as a person said; blank pass where it was none of them. Of several about one line
-- the last counts.
CREATE TABLE log_pass (
    number     INTEGER NOT NULL PRIMARY KEY,
    line       INTEGER NOT NULL REFERENCES log_line (number),
    program    TEXT,
    pass       INTEGER,
    who        TEXT    NOT NULL,
    said_at    TEXT    NOT NULL,
    CHECK ((program IS NULL) = (pass IS NULL))
) STRICT;

CREATE TRIGGER log_pass_is_not_changed BEFORE UPDATE ON log_pass
BEGIN
    SELECT RAISE(ABORT, 'what was said of a line of the log stays as it was');
END;

CREATE TRIGGER log_pass_is_not_removed BEFORE DELETE ON log_pass
BEGIN
    SELECT RAISE(ABORT, 'what was said of a line of the log stays as it was');
END;

CREATE TRIGGER log_pass_is_not_replaced BEFORE INSERT ON log_pass
WHEN EXISTS (SELECT 1 FROM log_pass WHERE number = NEW.number)
BEGIN
    SELECT RAISE(ABORT, 'what was said of a line of the log stays as it was');
END;
